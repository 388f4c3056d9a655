package wallbook.assess.copper;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.DoubleBinaryOperator;
import wallbook.record.PairParameter;
import wallbook.record.SweepPoint;

/** Insertion loss measured in a sweep, by pair and frequency. */
final class LossCurves {
  private final Map<String, NavigableMap<Double, Double>> decibelsByMegahertz = new HashMap<>();
  private final Map<String, String[]> pairs = new HashMap<>();

  LossCurves(List<SweepPoint> sweep) {
    for (SweepPoint point : sweep) {
      if (point.parameter() == PairParameter.INSERTION_LOSS) {
        decibelsByMegahertz
            .computeIfAbsent(point.pair(), pair -> new TreeMap<>())
            .merge(point.frequency().inMegahertz(), point.valueInDecibels(), Math::max);
      }
    }
  }

  /** Greatest loss in dB of the pairs that a point names; empty if one of them was not measured. */
  OptionalDouble greatest(SweepPoint point) {
    return joined(point, Math::max);
  }

  /** Least loss in dB of the pairs that a point names; empty if one of them was not measured. */
  OptionalDouble least(SweepPoint point) {
    return joined(point, Math::min);
  }

  private OptionalDouble joined(SweepPoint point, DoubleBinaryOperator join) {
    OptionalDouble joined = OptionalDouble.empty();
    for (String pair : pairs.computeIfAbsent(point.pair(), text -> text.split("-"))) {
      OptionalDouble loss = lossOf(pair, point);
      if (loss.isEmpty()) {
        return loss;
      }
      joined =
          joined.isEmpty()
              ? loss
              : OptionalDouble.of(join.applyAsDouble(joined.getAsDouble(), loss.getAsDouble()));
    }
    return joined;
  }

  /** Loss at the point's frequency, on a straight line between the swept ones beside it. */
  private OptionalDouble lossOf(String pair, SweepPoint point) {
    NavigableMap<Double, Double> curve = decibelsByMegahertz.get(pair);
    if (curve == null) {
      return OptionalDouble.empty();
    }
    double megahertz = point.frequency().inMegahertz();
    Map.Entry<Double, Double> below = curve.floorEntry(megahertz);
    Map.Entry<Double, Double> above = curve.ceilingEntry(megahertz);
    if (below == null || above == null) {
      return OptionalDouble.empty();
    }
    double span = above.getKey() - below.getKey();
    double share = span == 0 ? 0 : (megahertz - below.getKey()) / span;
    return OptionalDouble.of(below.getValue() + share * (above.getValue() - below.getValue()));
  }
}
