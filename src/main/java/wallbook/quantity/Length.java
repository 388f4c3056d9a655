package wallbook.quantity;

/**
 * A length or distance.
 *
 * <p>Held in metres; made by a factory and read by an accessor that name their unit.
 *
 * @param inMetres the quantity in metres
 */
public record Length(double inMetres) implements Quantity, Comparable<Length> {
  private static final double METRES_PER_MILLIMETRES = 1e-3;
  private static final double METRES_PER_KILOMETRES = 1000.0;
  private static final double METRES_PER_FEET = 0.3048;
  private static final double METRES_PER_INCHES = 0.0254;

  public Length {
    Checks.finite("Length", inMetres);
  }

  /** Makes the quantity from metres. */
  public static Length metres(double metres) {
    return new Length(metres);
  }

  /** Makes the quantity from millimetres. */
  public static Length millimetres(double millimetres) {
    return new Length(millimetres * METRES_PER_MILLIMETRES);
  }

  /** Makes the quantity from kilometres. */
  public static Length kilometres(double kilometres) {
    return new Length(kilometres * METRES_PER_KILOMETRES);
  }

  /** Makes the quantity from feet (international foot, exactly 0.3048 m). */
  public static Length feet(double feet) {
    return new Length(feet * METRES_PER_FEET);
  }

  /** Makes the quantity from inches (exactly 25.4 mm). */
  public static Length inches(double inches) {
    return new Length(inches * METRES_PER_INCHES);
  }

  /** The quantity in millimetres. */
  public double inMillimetres() {
    return inMetres / METRES_PER_MILLIMETRES;
  }

  /** The quantity in kilometres. */
  public double inKilometres() {
    return inMetres / METRES_PER_KILOMETRES;
  }

  /** The quantity in feet (international foot, exactly 0.3048 m). */
  public double inFeet() {
    return inMetres / METRES_PER_FEET;
  }

  /** The quantity in inches (exactly 25.4 mm). */
  public double inInches() {
    return inMetres / METRES_PER_INCHES;
  }

  public Length plus(Length other) {
    return new Length(inMetres + other.inMetres);
  }

  public Length minus(Length other) {
    return new Length(inMetres - other.inMetres);
  }

  public Length times(double factor) {
    return new Length(inMetres * factor);
  }

  /** This quantity as a multiple of another of its kind. */
  public double ratioTo(Length other) {
    return inMetres / other.inMetres;
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(inMetres, other.inMetres);
  }
}
