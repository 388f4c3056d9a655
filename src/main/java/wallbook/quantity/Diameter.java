package wallbook.quantity;

/**
 * A small dimension across: a cable's diameter, a conduit's bore, the diagonal of a connector. A
 * type of its own because readers want it finer than a {@link Length} of run.
 *
 * <p>Held in metres; made by a factory and read by an accessor that name their unit.
 *
 * @param inMetres the quantity in metres
 */
public record Diameter(double inMetres) implements Quantity, Comparable<Diameter> {
  private static final double METRES_PER_MILLIMETRES = 1e-3;
  private static final double METRES_PER_INCHES = 0.0254;

  public Diameter {
    Checks.finite("Diameter", inMetres);
  }

  /** Makes the quantity from metres. */
  public static Diameter metres(double metres) {
    return new Diameter(metres);
  }

  /** Makes the quantity from millimetres. */
  public static Diameter millimetres(double millimetres) {
    return new Diameter(millimetres * METRES_PER_MILLIMETRES);
  }

  /** Makes the quantity from inches (exactly 25.4 mm). */
  public static Diameter inches(double inches) {
    return new Diameter(inches * METRES_PER_INCHES);
  }

  /** Makes the quantity from a length. */
  public static Diameter of(Length length) {
    return new Diameter(length.inMetres());
  }

  /** The quantity in millimetres. */
  public double inMillimetres() {
    return inMetres / METRES_PER_MILLIMETRES;
  }

  /** The quantity in inches (exactly 25.4 mm). */
  public double inInches() {
    return inMetres / METRES_PER_INCHES;
  }

  /** The same dimension as a length. */
  public Length asLength() {
    return Length.metres(inMetres);
  }

  public Diameter plus(Diameter other) {
    return new Diameter(inMetres + other.inMetres);
  }

  public Diameter minus(Diameter other) {
    return new Diameter(inMetres - other.inMetres);
  }

  public Diameter times(double factor) {
    return new Diameter(inMetres * factor);
  }

  /** This quantity as a multiple of another of its kind. */
  public double ratioTo(Diameter other) {
    return inMetres / other.inMetres;
  }

  @Override
  public int compareTo(Diameter other) {
    return Double.compare(inMetres, other.inMetres);
  }
}
