package wallbook.assess.copper;

import wallbook.reference.Row;

/** A formula that a limit follows over frequency. */
sealed interface LineShape {

  /** The limit in dB; f in MHz, above zero. */
  double decibelsAt(double megahertz);

  /**
   * Insertion loss: {@code k·(a·√f + b·f + c/√f) + n·w·√f + d·f^1.5}, but never a limit below the
   * floor. k scales 100 m of cable to the link or channel, n counts connections of loss w·√f, the
   * last term is the insertion loss deviation.
   */
  record InsertionLoss(
      double factor,
      double aSqrt,
      double bLinear,
      double cInverse,
      double connections,
      double wSqrt,
      double deviation,
      double floor)
      implements LineShape {

    static InsertionLoss of(Row row) {
      return new InsertionLoss(
          row.number("factor"),
          row.number("a_sqrt"),
          row.number("b_linear"),
          row.number("c_inverse"),
          row.number("connections"),
          row.number("w_sqrt"),
          row.number("d_deviation"),
          row.number("floor_db"));
    }

    @Override
    public double decibelsAt(double megahertz) {
      double root = Math.sqrt(megahertz);
      double cable = aSqrt * root + bLinear * megahertz + cInverse / root;
      double loss = factor * cable + connections * wSqrt * root + deviation * megahertz * root;
      return Math.max(floor, loss);
    }
  }

  /**
   * Crosstalk of cable and connections added as voltages: {@code −20·log10(10^(−a/20) +
   * n·10^(−b/20))} with {@code a = a100 + sa·log10(f/100)} and b alike, but never a limit above the
   * cap.
   */
  record VoltageSum(
      double cable,
      double cableSlope,
      double connection,
      double connectionSlope,
      double connections,
      double cap)
      implements LineShape {

    static VoltageSum of(Row row) {
      return new VoltageSum(
          row.number("cable_db"),
          row.number("cable_slope"),
          row.number("connection_db"),
          row.number("connection_slope"),
          row.number("connections"),
          row.numberIfAny("cap_db").orElse(Double.POSITIVE_INFINITY));
    }

    @Override
    public double decibelsAt(double megahertz) {
      double decades = Math.log10(megahertz / 100);
      double sum =
          voltage(cable + cableSlope * decades)
              + connections * voltage(connection + connectionSlope * decades);
      return Math.min(cap, -20 * Math.log10(sum));
    }

    private static double voltage(double lossDb) {
      return Math.pow(10, -lossDb / 20);
    }
  }

  /** A straight line over the logarithm of frequency: {@code d + s·log10(f/f0)}. */
  record LogLine(double decibels, double slope, double referenceMegahertz) implements LineShape {

    static LogLine of(Row row) {
      return new LogLine(row.number("db"), row.number("slope"), row.number("reference_mhz"));
    }

    @Override
    public double decibelsAt(double megahertz) {
      return decibels + slope * Math.log10(megahertz / referenceMegahertz);
    }
  }
}
