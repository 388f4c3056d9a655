package wallbook.render.press;

/** A length as a stylesheet writes it. */
record Measure(float value, Unit unit) {
  static final Measure ZERO = new Measure(0, Unit.POINT);
  static final Measure AUTO = new Measure(0, Unit.AUTO);

  enum Unit {
    POINT,
    EM,
    /** Of the root's size of type. */
    REM,
    PERCENT,
    /** A bare number. */
    FACTOR,
    AUTO
  }

  /** Points, for a length of its own. */
  static Measure ofPoints(float points) {
    return new Measure(points, Unit.POINT);
  }

  /**
   * The length for an element whose type has a size; a share of what lies around stays one.
   *
   * @param emPt size of the element's type
   * @param rootPt size of the root's type
   */
  Length length(float emPt, float rootPt) {
    return switch (unit) {
      case POINT, FACTOR -> new Length(value, 0, false);
      case EM -> new Length(value * emPt, 0, false);
      case REM -> new Length(value * rootPt, 0, false);
      case PERCENT -> new Length(0, value / 100, false);
      case AUTO -> Length.AUTO;
    };
  }
}
