package wallbook.quantity;

/**
 * The nominal wavelength of an optical source.
 *
 * <p>Held in nanometres; made by a factory and read by an accessor that name their unit.
 *
 * @param inNanometres the quantity in nanometres
 */
public record Wavelength(double inNanometres) implements Quantity, Comparable<Wavelength> {

  public Wavelength {
    Checks.finite("Wavelength", inNanometres);
  }

  /** Makes the quantity from nanometres. */
  public static Wavelength nanometres(double nanometres) {
    return new Wavelength(nanometres);
  }

  @Override
  public int compareTo(Wavelength other) {
    return Double.compare(inNanometres, other.inNanometres);
  }
}
