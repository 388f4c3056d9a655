package wallbook.quantity;

/**
 * A temperature.
 *
 * @param inCelsius the temperature in degrees Celsius, not below absolute zero
 */
public record Temperature(double inCelsius) implements Quantity, Comparable<Temperature> {
  private static final double ABSOLUTE_ZERO_CELSIUS = -273.15;

  public Temperature {
    Checks.finite("Temperature", inCelsius);
    if (inCelsius < ABSOLUTE_ZERO_CELSIUS) {
      throw new IllegalArgumentException("below absolute zero: " + inCelsius + " °C");
    }
  }

  /** Makes the temperature from degrees Celsius. */
  public static Temperature celsius(double celsius) {
    return new Temperature(celsius);
  }

  /** Makes the temperature from degrees Fahrenheit. */
  public static Temperature fahrenheit(double fahrenheit) {
    return new Temperature((fahrenheit - 32) * 5 / 9);
  }

  /** The temperature in degrees Fahrenheit. */
  public double inFahrenheit() {
    return inCelsius * 9 / 5 + 32;
  }

  /** Difference to another temperature in kelvins, positive if this one is hotter. */
  public double kelvinsAbove(Temperature other) {
    return inCelsius - other.inCelsius;
  }

  @Override
  public int compareTo(Temperature other) {
    return Double.compare(inCelsius, other.inCelsius);
  }
}
