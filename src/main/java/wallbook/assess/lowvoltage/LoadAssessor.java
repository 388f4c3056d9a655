package wallbook.assess.lowvoltage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Current;
import wallbook.quantity.Power;
import wallbook.quantity.Ratio;
import wallbook.quantity.Voltage;
import wallbook.reference.Source;
import wallbook.wording.Phrase;

/**
 * Finds the largest load that a run brings its voltage to within the drop allowed, never more than
 * a class 2 source may give.
 */
final class LoadAssessor {
  private final List<DropLimit> limits;
  private final ClassTwo classTwo;

  LoadAssessor(List<DropLimit> limits, ClassTwo classTwo) {
    this.limits = limits;
    this.classTwo = classTwo;
  }

  /**
   * @param supply name of a supposed supply with a dot before it, or empty for the record's own
   */
  List<Assessment> assess(SupplyPath path, Voltage voltage, String supply) {
    List<Assessment> all = new ArrayList<>();
    for (DropLimit limit : limits) {
      all.add(largest(path, voltage, supply, limit));
    }
    return all;
  }

  private Assessment largest(SupplyPath path, Voltage voltage, String supply, DropLimit limit) {
    DcLine line = path.at(voltage);
    Current byDrop = line.largestCurrent(limit.share());
    Optional<Current> ceiling =
        classTwo.largestCurrent(voltage).filter(most -> most.compareTo(byDrop) < 0);
    Current load = ceiling.orElse(byDrop);
    Source source = limit.source().and(path.wire().source());
    Assessment.Builder builder =
        path.begin(
            "load." + limit.name() + supply,
            Phrase.of("dc.asked.load", "supply", voltage, "limit", limit.share()));
    Ratio lost = line.shareLost(line.atLoad(load).orElseThrow());
    Power power = line.powerAtLoad(load).orElseThrow();
    return builder
        .value(load)
        .limitedBy(
            ceiling.isPresent()
                ? Phrase.of("dc.limit.class-2", "current", load, "power", power, "lost", lost)
                : Phrase.of("dc.limit.wire", "loop", line.loop(), "power", power))
        .verdict(Verdict.INFORMATION, ceiling.isPresent() ? source.and(classTwo.source()) : source);
  }
}
