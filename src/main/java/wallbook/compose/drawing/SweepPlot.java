package wallbook.compose.drawing;

import java.util.List;
import java.util.Optional;

/**
 * Measured values over frequency beside their limit.
 *
 * @param frequencyAxis name of the horizontal axis with its unit, megahertz
 * @param valueAxis name of the vertical axis with its unit, decibels
 * @param worst the point of the smallest margin
 */
public record SweepPlot(
    Frame frame,
    String frequencyAxis,
    String valueAxis,
    List<Curve> curves,
    Optional<Callout> worst)
    implements Drawing {
  public SweepPlot {
    curves = List.copyOf(curves);
    if (curves.isEmpty()) {
      throw new IllegalArgumentException("a plot needs a curve");
    }
  }

  /** How a curve is drawn. */
  public enum CurveKind {
    LIMIT,
    MEASURED
  }

  /** One value at one frequency. */
  public record Sample(double frequencyMHz, double valueDb) {
    public Sample {
      Values.positive("frequencyMHz", frequencyMHz);
      Values.finite("valueDb", valueDb);
    }
  }

  /** Samples in ascending frequency. */
  public record Curve(String name, CurveKind kind, List<Sample> samples) {
    public Curve {
      samples = List.copyOf(samples);
      if (samples.isEmpty()) {
        throw new IllegalArgumentException("a curve needs a sample");
      }
      for (int i = 1; i < samples.size(); i++) {
        if (samples.get(i).frequencyMHz() <= samples.get(i - 1).frequencyMHz()) {
          throw new IllegalArgumentException("the samples of a curve ascend in frequency");
        }
      }
    }
  }

  /** A point with words beside it. */
  public record Callout(Sample at, String text) {}
}
