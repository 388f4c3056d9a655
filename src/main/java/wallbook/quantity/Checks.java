package wallbook.quantity;

/** Conditions that every quantity keeps. */
final class Checks {
  private Checks() {}

  static void finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " is not a finite number: " + value);
    }
  }
}
