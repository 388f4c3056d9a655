package wallbook.assess.copper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Count;
import wallbook.record.PairParameter;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.record.RunTest;
import wallbook.record.SweepPoint;
import wallbook.record.WiringScheme;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Assesses wire maps, and whether both ends of a run are wired alike. */
final class WireMapAssessor {
  private final WireMap wireMap;

  WireMapAssessor(Tables tables) {
    wireMap = new WireMap(tables);
  }

  /** The wire map of a test; empty if it has none. */
  Optional<Assessment> assess(RunTest test, List<SweepPoint> sweep) {
    if (!WireMap.isIn(test)) {
      return Optional.empty();
    }
    Assessment.Builder builder =
        Assessment.of(
            test.run(),
            "pairs.test.wire-map",
            Phrase.of("pairs.test.wire-map", "date", test.date()));
    Optional<List<WireFault>> faults = wireMap.faults(test);
    if (faults.isEmpty()) {
      return Optional.of(
          builder.notStated(List.of(Phrase.of("pairs.missing.wire-map")), wireMap.source()));
    }
    int count = faults.get().size();
    builder.value(new Count(count)).limit(new Count(0), new Count(-count));
    if (test.wireMap().isEmpty()) {
      builder.assuming(Phrase.of("pairs.wire.pins-not-recorded"));
    }
    if (test.splitPairs().isEmpty() && !hasCrosstalk(test, sweep)) {
      builder.assuming(Phrase.of("pairs.wire.split-not-ruled-out"));
    }
    Phrase found =
        PairWords.list(faults.get().stream().map(WireFault::phrase).toList())
            .orElse(Phrase.of("pairs.wire.straight"));
    return Optional.of(
        builder
            .limitedBy(found)
            .verdict(count == 0 ? Verdict.WITHIN : Verdict.BEYOND, wireMap.source()));
  }

  /** Faults of a test; none if it has no wire map or an unreadable one. */
  List<WireFault> faults(RunTest test) {
    return wireMap.faults(test).orElse(List.of());
  }

  /** Whether both jacks take the pairs in the same order; empty for a run without two schemes. */
  Optional<Assessment> wiring(Run run) {
    List<WiringScheme> schemes = new ArrayList<>();
    for (RunEnd end : List.of(run.from(), run.to())) {
      end.wiring().filter(w -> end.isTerminated()).ifPresent(schemes::add);
    }
    if (schemes.size() < 2) {
      return Optional.empty();
    }
    String from = schemes.get(0).name();
    String to = schemes.get(1).name();
    boolean alike = from.equals(to);
    Phrase found =
        alike
            ? Phrase.of("pairs.wiring.alike", "scheme", from)
            : Phrase.of("pairs.wiring.crossed", "from", from, "to", to);
    return Optional.of(
        Assessment.of(run.id(), "pairs.wiring", Phrase.of("pairs.wiring"))
            .limitedBy(found)
            .verdict(alike ? Verdict.WITHIN : Verdict.BEYOND, wireMap.source()));
  }

  private static boolean hasCrosstalk(RunTest test, List<SweepPoint> sweep) {
    return sweep.stream().anyMatch(p -> p.parameter() == PairParameter.NEXT)
        || test.worst().stream().anyMatch(w -> w.parameter() == PairParameter.NEXT);
  }
}
