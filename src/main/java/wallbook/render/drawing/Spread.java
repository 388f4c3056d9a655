package wallbook.render.drawing;

import java.util.Comparator;
import java.util.stream.IntStream;

/** Moves positions on a line apart, each as little as possible and none past another. */
final class Spread {
  private Spread() {}

  /** The indices of the values, smallest value first; equal values keep their order. */
  static int[] order(double[] values) {
    return IntStream.range(0, values.length)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> values[i]))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /**
   * Positions at least {@code step} apart whose squared distances from the wanted ones are least in
   * sum: isotonic regression of the wanted positions less their rank times the step, by pooling
   * adjacent violators, then moved between the bounds. When the bounds leave too little room the
   * last positions pass the upper bound.
   */
  static double[] apart(double[] wanted, double step, double lowest, double highest) {
    int n = wanted.length;
    int[] order = order(wanted);
    double[] mean = new double[n];
    int[] size = new int[n];
    int blocks = 0;
    for (int rank = 0; rank < n; rank++) {
      mean[blocks] = wanted[order[rank]] - rank * step;
      size[blocks] = 1;
      blocks++;
      while (blocks > 1 && mean[blocks - 2] > mean[blocks - 1]) {
        int merged = size[blocks - 2] + size[blocks - 1];
        mean[blocks - 2] =
            (mean[blocks - 2] * size[blocks - 2] + mean[blocks - 1] * size[blocks - 1]) / merged;
        size[blocks - 2] = merged;
        blocks--;
      }
    }
    double[] apart = new double[n];
    double ceiling = Math.max(lowest, highest - (n - 1) * step);
    int rank = 0;
    for (int block = 0; block < blocks; block++) {
      double base = Math.max(lowest, Math.min(ceiling, mean[block]));
      for (int last = rank + size[block]; rank < last; rank++) {
        apart[order[rank]] = base + rank * step;
      }
    }
    return apart;
  }
}
