package wallbook.assess.copper;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import wallbook.quantity.Decibels;
import wallbook.quantity.Frequency;
import wallbook.record.LinkConfiguration;
import wallbook.record.LossDirection;
import wallbook.record.SweepPoint;
import wallbook.reference.Tables;

/** Compares a sweep with a limit line point by point. */
final class SweepJudge {
  private final SmallLossRules rules;

  SweepJudge(Tables tables) {
    rules = new SmallLossRules(tables);
  }

  /** Judges the points of the line's quantity; the others serve for their insertion loss. */
  SweepOutcome judge(List<SweepPoint> sweep, LimitLine line, LinkConfiguration configuration) {
    LossCurves losses = new LossCurves(sweep);
    int judged = 0;
    int free = 0;
    int outside = 0;
    Optional<SweepOutcome.Worst> worst = Optional.empty();
    Frequency top = Frequency.megahertz(0);
    Set<String> named = new HashSet<>();
    Set<LossDirection> ends = EnumSet.noneOf(LossDirection.class);
    for (SweepPoint point : sweep) {
      if (point.parameter() != line.parameter()) {
        continue;
      }
      Optional<Limit> limit = line.at(point.frequency());
      if (limit.isEmpty()) {
        outside++;
        continue;
      }
      named.add(point.pair());
      ends.add(point.direction());
      top = top.compareTo(point.frequency()) < 0 ? point.frequency() : top;
      if (rules.free(point, configuration, losses)) {
        free++;
        continue;
      }
      judged++;
      Decibels margin = line.margin(limit.get(), Decibels.decibels(point.valueInDecibels()));
      if (worst.isEmpty() || margin.compareTo(worst.get().margin()) < 0) {
        worst = Optional.of(new SweepOutcome.Worst(point, limit.get(), margin));
      }
    }
    return new SweepOutcome(judged, free, outside, worst, top, pairs(named), ends.size() == 2);
  }

  /** How many pairs, or pairs of pairs whichever comes first, are named. */
  private static int pairs(Set<String> named) {
    return (int)
        named.stream().map(text -> new TreeSet<>(List.of(text.split("-")))).distinct().count();
  }
}
