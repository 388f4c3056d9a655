package wallbook.compose.drawing;

/** Checks that the view records share. */
final class Values {
  private Values() {}

  static void finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " is not a finite number: " + value);
    }
  }

  static void positive(String name, double value) {
    finite(name, value);
    if (value <= 0) {
      throw new IllegalArgumentException(name + " must be more than 0: " + value);
    }
  }

  static void notNegative(String name, double value) {
    finite(name, value);
    if (value < 0) {
      throw new IllegalArgumentException(name + " must not be negative: " + value);
    }
  }
}
