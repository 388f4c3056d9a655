package wallbook.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import wallbook.quantity.Angle;
import wallbook.quantity.Area;
import wallbook.quantity.Count;
import wallbook.quantity.Current;
import wallbook.quantity.DataRate;
import wallbook.quantity.Decibels;
import wallbook.quantity.Delay;
import wallbook.quantity.Diameter;
import wallbook.quantity.Factor;
import wallbook.quantity.Force;
import wallbook.quantity.Frequency;
import wallbook.quantity.Length;
import wallbook.quantity.LinearAttenuation;
import wallbook.quantity.LinearForce;
import wallbook.quantity.LinearMass;
import wallbook.quantity.LinearResistance;
import wallbook.quantity.Power;
import wallbook.quantity.PowerLevel;
import wallbook.quantity.Quantity;
import wallbook.quantity.Ratio;
import wallbook.quantity.Resistance;
import wallbook.quantity.SignalLevel;
import wallbook.quantity.TapedLength;
import wallbook.quantity.Temperature;
import wallbook.quantity.Voltage;
import wallbook.quantity.Wavelength;

/**
 * Prints quantities in the reader's units with the rounding that suits their use. The only place
 * where a quantity is rounded.
 */
public final class QuantityPrinter {
  private static final String NO_BREAK_SPACE = "\u00a0";

  private static final BigDecimal FIVE_DIGITS = BigDecimal.valueOf(10_000);

  /** Copied at each use: a format is not for several threads, and long in the making. */
  private final DecimalFormat grouped;

  private final boolean inEnglish;
  private final UnitSystem units;

  public QuantityPrinter(Locale locale, UnitSystem units) {
    this.grouped = new DecimalFormat("#,##0", DecimalFormatSymbols.getInstance(locale));
    this.inEnglish = locale.getLanguage().equals("en");
    this.units = units;
  }

  /** The units this reader is given. */
  public UnitSystem units() {
    return units;
  }

  /**
   * Prints a quantity with its unit, for instance {@code 118 ft}, {@code 1.77 dB}, {@code 39.8 %}.
   */
  public String print(Quantity quantity) {
    boolean metric = units == UnitSystem.METRIC;
    if (quantity instanceof Length q) {
      return run(q);
    } else if (quantity instanceof TapedLength q) {
      return position(q.asLength());
    } else if (quantity instanceof Diameter q) {
      return dimension(q.asLength());
    } else if (quantity instanceof Factor q) {
      return number(q.value(), 2);
    } else if (quantity instanceof Area q) {
      return metric
          ? with(q.inSquareMillimetres(), 0, "mm²")
          : with(q.inSquareInches(), 3, square("in"));
    } else if (quantity instanceof Angle q) {
      return number(q.inDegrees(), 0) + "°";
    } else if (quantity instanceof Resistance q) {
      return with(q.inOhms(), q.inOhms() < 10 ? 2 : 1, "Ω");
    } else if (quantity instanceof LinearResistance q) {
      return metric
          ? with(q.inOhmsPerKilometre(), 1, "Ω/km")
          : with(q.inOhmsPerThousandFeet(), 2, "Ω/1000" + NO_BREAK_SPACE + "ft");
    } else if (quantity instanceof Decibels q) {
      return with(q.inDecibels(), Math.abs(q.inDecibels()) < 10 ? 2 : 1, "dB");
    } else if (quantity instanceof LinearAttenuation q) {
      return with(q.inDecibelsPerKilometre(), 1, "dB/km");
    } else if (quantity instanceof PowerLevel q) {
      return with(q.inDbm(), 1, "dBm");
    } else if (quantity instanceof SignalLevel q) {
      return with(q.inDbmv(), 1, "dBmV");
    } else if (quantity instanceof Power q) {
      return with(q.inWatts(), q.inWatts() < 100 ? 1 : 0, "W");
    } else if (quantity instanceof Voltage q) {
      return with(q.inVolts(), q.inVolts() < 1 ? 2 : 1, "V");
    } else if (quantity instanceof Current q) {
      return q.inAmperes() < 1 ? with(q.inMilliamperes(), 0, "mA") : with(q.inAmperes(), 2, "A");
    } else if (quantity instanceof Force q) {
      return metric ? with(q.inNewtons(), 0, "N") : with(q.inPoundsForce(), 1, "lbf");
    } else if (quantity instanceof LinearForce q) {
      return metric
          ? with(q.inNewtonsPerMetre(), 0, "N/m")
          : with(q.inPoundsForcePerFoot(), 1, "lbf/ft");
    } else if (quantity instanceof LinearMass q) {
      return metric
          ? with(q.inKilogramsPerKilometre(), 0, "kg/km")
          : with(q.inPoundsPerThousandFeet(), 0, "lb/1000" + NO_BREAK_SPACE + "ft");
    } else if (quantity instanceof Frequency q) {
      return with(q.inMegahertz(), q.inMegahertz() < 100 ? decimals(q.inMegahertz(), 2) : 0, "MHz");
    } else if (quantity instanceof Delay q) {
      return with(q.inNanoseconds(), 0, "ns");
    } else if (quantity instanceof Ratio q) {
      return with(q.inPercent(), 1, "%");
    } else if (quantity instanceof Wavelength q) {
      return Math.round(q.inNanometres()) + NO_BREAK_SPACE + "nm"; // a name: 1310, not 1,310
    } else if (quantity instanceof DataRate q) {
      return q.inGigabitsPerSecond() >= 1
          ? with(q.inGigabitsPerSecond(), decimals(q.inGigabitsPerSecond(), 1), "Gb/s")
          : with(q.inMegabitsPerSecond(), 0, "Mb/s");
    } else if (quantity instanceof Temperature q) {
      return metric
          ? number(q.inCelsius(), 0) + NO_BREAK_SPACE + "°C"
          : number(q.inFahrenheit(), 0) + NO_BREAK_SPACE + "°F";
    } else {
      return number(((Count) quantity).number(), 0);
    }
  }

  /** Prints a length of run: whole feet or tenths of a metre; short ones in feet and inches. */
  public String run(Length length) {
    if (units == UnitSystem.METRIC) {
      return Math.abs(length.inMetres()) < 1
          ? with(length.inMillimetres(), 0, "mm")
          : with(length.inMetres(), 1, "m");
    }
    return Math.abs(length.inFeet()) < 20 ? position(length) : with(length.inFeet(), 0, "ft");
  }

  /** Prints a position or height to the half inch or the centimetre: {@code 6 ft 2 in}. */
  public String position(Length length) {
    if (units == UnitSystem.METRIC) {
      return with(length.inMetres(), 2, "m");
    }
    long halves = Math.round(length.inInches() * 2);
    String sign = halves < 0 ? "−" : "";
    halves = Math.abs(halves);
    long feet = halves / 24;
    long rest = halves % 24;
    String inches = (rest % 2 == 0) ? Long.toString(rest / 2) : half(rest / 2);
    if (feet == 0) {
      return sign + inches + NO_BREAK_SPACE + "in";
    }
    String whole = sign + feet + NO_BREAK_SPACE + "ft";
    return rest == 0 ? whole : whole + NO_BREAK_SPACE + inches + NO_BREAK_SPACE + "in";
  }

  /** Prints the floor area of rooms or a house. */
  public String floorArea(Area area) {
    return units == UnitSystem.METRIC
        ? with(area.inSquareMetres(), 0, "m²")
        : with(area.inSquareFeet(), 0, square("ft"));
  }

  /**
   * Prints a small dimension, such as a cable's diameter or a bore: hundredths of an inch or tenths
   * of a millimetre.
   */
  public String dimension(Length length) {
    return units == UnitSystem.METRIC
        ? with(length.inMillimetres(), 1, "mm")
        : with(length.inInches(), 2, "in");
  }

  /**
   * Prints a bare number in the reader's locale with at most the given decimals, trailing zeros
   * kept.
   */
  public String number(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    boolean fourDigits = rounded.abs().compareTo(FIVE_DIGITS) < 0;
    DecimalFormat format = (DecimalFormat) grouped.clone();
    format.setMinimumFractionDigits(decimals);
    format.setMaximumFractionDigits(decimals);
    // Outside English a number of four digits is seldom grouped; common practice, no source.
    format.setGroupingUsed(inEnglish || !fourDigits);
    if (rounded.signum() == 0) {
      rounded = rounded.abs();
    }
    return format.format(rounded).replace('-', '−');
  }

  /** The given decimals, or none for a whole number: 31.25 MHz and 2.5 Gb/s, but 5 and 10. */
  private static int decimals(double value, int decimals) {
    return value == Math.rint(value) ? 0 : decimals;
  }

  /** English says a square unit in words; elsewhere it has the sign that all languages share. */
  private String square(String unit) {
    return inEnglish ? "sq" + NO_BREAK_SPACE + unit : unit + "²";
  }

  private static String half(long whole) {
    return whole == 0 ? "½" : whole + "½";
  }

  private String with(double value, int decimals, String unit) {
    return number(value, decimals) + NO_BREAK_SPACE + unit;
  }
}
