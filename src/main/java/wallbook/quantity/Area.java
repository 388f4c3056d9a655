package wallbook.quantity;

/**
 * A plane area, for instance the bore of a conduit.
 *
 * <p>Held in square metres; made by a factory and read by an accessor that name their unit.
 *
 * @param inSquareMetres the quantity in square metres
 */
public record Area(double inSquareMetres) implements Quantity, Comparable<Area> {
  private static final double SQUARE_METRES_PER_SQUARE_MILLIMETRES = 1e-6;
  private static final double SQUARE_METRES_PER_SQUARE_INCHES = 0.0254 * 0.0254;
  private static final double SQUARE_METRES_PER_SQUARE_FEET = 0.3048 * 0.3048;

  public Area {
    Checks.finite("Area", inSquareMetres);
  }

  /** Makes the quantity from square metres. */
  public static Area squareMetres(double squareMetres) {
    return new Area(squareMetres);
  }

  /** Makes the quantity from square millimetres. */
  public static Area squareMillimetres(double squareMillimetres) {
    return new Area(squareMillimetres * SQUARE_METRES_PER_SQUARE_MILLIMETRES);
  }

  /** Makes the quantity from square inches. */
  public static Area squareInches(double squareInches) {
    return new Area(squareInches * SQUARE_METRES_PER_SQUARE_INCHES);
  }

  /** Makes the quantity from square feet. */
  public static Area squareFeet(double squareFeet) {
    return new Area(squareFeet * SQUARE_METRES_PER_SQUARE_FEET);
  }

  /** The quantity in square millimetres. */
  public double inSquareMillimetres() {
    return inSquareMetres / SQUARE_METRES_PER_SQUARE_MILLIMETRES;
  }

  /** The quantity in square inches. */
  public double inSquareInches() {
    return inSquareMetres / SQUARE_METRES_PER_SQUARE_INCHES;
  }

  /** The quantity in square feet. */
  public double inSquareFeet() {
    return inSquareMetres / SQUARE_METRES_PER_SQUARE_FEET;
  }

  public Area times(double factor) {
    return new Area(inSquareMetres * factor);
  }

  /** This quantity as a multiple of another of its kind. */
  public double ratioTo(Area other) {
    return inSquareMetres / other.inSquareMetres;
  }

  @Override
  public int compareTo(Area other) {
    return Double.compare(inSquareMetres, other.inSquareMetres);
  }
}
