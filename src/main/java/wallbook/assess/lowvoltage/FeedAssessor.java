package wallbook.assess.lowvoltage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Current;
import wallbook.quantity.Length;
import wallbook.quantity.Ratio;
import wallbook.quantity.Voltage;
import wallbook.reference.Source;
import wallbook.wording.Phrase;

/** Assesses a feed whose load the record states: drop, voltage at the far end, longest run. */
final class FeedAssessor {
  private final List<DropLimit> limits;

  FeedAssessor(List<DropLimit> limits) {
    this.limits = limits;
  }

  /**
   * @param supply voltage at the source, above 0 V
   */
  List<Assessment> assess(SupplyPath path, Voltage supply, Demand demand) {
    List<Assessment> all = new ArrayList<>();
    DcLine line = path.at(supply);
    Optional<Voltage> end = demand.leaves(line);
    for (DropLimit limit : limits) {
      Source source = limit.source().and(path.wire().source());
      all.add(drop(path, line, end, limit, source));
      longest(path, supply, demand, limit, source).ifPresent(all::add);
    }
    end.ifPresent(
        volts ->
            all.add(
                path.begin("end-voltage", Phrase.of("dc.asked.end-voltage"))
                    .value(volts)
                    .verdict(Verdict.INFORMATION, path.wire().source())));
    return all;
  }

  private static Assessment drop(
      SupplyPath path, DcLine line, Optional<Voltage> end, DropLimit limit, Source source) {
    Assessment.Builder builder =
        path.begin("drop." + limit.name(), Phrase.of("dc.asked.drop", "limit", limit.share()));
    if (end.isEmpty()) {
      return builder
          .limitedBy(Phrase.of("dc.limit.not-carried", "loop", line.loop()))
          .verdict(Verdict.BEYOND, source);
    }
    Ratio lost = line.shareLost(end.get());
    Ratio left = limit.share().minus(lost);
    return builder
        .value(lost)
        .limit(limit.share(), left)
        .limitedBy(
            Phrase.of(
                "dc.limit.drop", "loop", line.loop(), "supply", line.supply(), "end", end.get()))
        .verdict(path.verdict(left.inFraction() >= 0), source);
  }

  private static Optional<Assessment> longest(
      SupplyPath path, Voltage supply, Demand demand, DropLimit limit, Source source) {
    return path.wire()
        .ofPole(path.perPole())
        .map(
            pole -> {
              Current load = demand.whenLost(supply, limit.share());
              Length run = path.wire().length().orElseThrow();
              Length longest = DcLine.longest(supply, load, limit.share(), pole);
              return path.begin(
                      "longest." + limit.name(),
                      Phrase.of("dc.asked.longest", "limit", limit.share()))
                  .value(run)
                  .limit(longest, longest.minus(run))
                  .limitedBy(Phrase.of("dc.limit.load", "current", load))
                  .verdict(path.verdict(run.compareTo(longest) <= 0), source);
            });
  }
}
