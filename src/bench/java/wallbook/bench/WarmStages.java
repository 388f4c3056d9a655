package wallbook.bench;

import java.util.Arrays;

/**
 * Reads, checks and assesses invented records of growing size in a warm process, and prints the
 * median of each: {@code RUNS...}.
 */
public final class WarmStages {
  private static final long WARM_NANOSECONDS = 30_000_000_000L;
  private static final int TIMES = 11;

  private WarmStages() {}

  /**
   * @param args numbers of cables
   */
  public static void main(String[] args) {
    for (String size : args) {
      MeasuredHouse house = MeasuredHouse.invented(Integer.parseInt(size));
      long begin = System.nanoTime();
      do {
        house.composition();
      } while (System.nanoTime() - begin < WARM_NANOSECONDS);
      double[] seconds = new double[TIMES];
      for (int i = 0; i < TIMES; i++) {
        long start = System.nanoTime();
        house.composition();
        seconds[i] = (System.nanoTime() - start) / 1e9;
      }
      Arrays.sort(seconds);
      System.out.println(
          size + " " + Decimals.of(seconds[0], 4) + " " + Decimals.of(seconds[TIMES / 2], 4));
    }
  }
}
