package wallbook.quantity;

/**
 * A data rate of a network application.
 *
 * <p>Held in megabits per second; made by a factory and read by an accessor that name their unit.
 *
 * @param inMegabitsPerSecond the quantity in megabits per second
 */
public record DataRate(double inMegabitsPerSecond) implements Quantity, Comparable<DataRate> {
  private static final double MEGABITS_PER_SECOND_PER_GIGABITS_PER_SECOND = 1e3;

  public DataRate {
    Checks.finite("DataRate", inMegabitsPerSecond);
  }

  /** Makes the quantity from megabits per second. */
  public static DataRate megabitsPerSecond(double megabitsPerSecond) {
    return new DataRate(megabitsPerSecond);
  }

  /** Makes the quantity from gigabits per second. */
  public static DataRate gigabitsPerSecond(double gigabitsPerSecond) {
    return new DataRate(gigabitsPerSecond * MEGABITS_PER_SECOND_PER_GIGABITS_PER_SECOND);
  }

  /** The quantity in gigabits per second. */
  public double inGigabitsPerSecond() {
    return inMegabitsPerSecond / MEGABITS_PER_SECOND_PER_GIGABITS_PER_SECOND;
  }

  @Override
  public int compareTo(DataRate other) {
    return Double.compare(inMegabitsPerSecond, other.inMegabitsPerSecond);
  }
}
