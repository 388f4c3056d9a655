package wallbook.assess.fibre;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.quantity.Length;
import wallbook.record.Cable;
import wallbook.record.Fibre;
import wallbook.record.Finish;
import wallbook.record.Job;
import wallbook.record.LengthMethod;
import wallbook.record.Medium;
import wallbook.record.Run;
import wallbook.record.RunTest;
import wallbook.reference.Row;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Gathers from a job what is to be known of each fibre run, and says what had to be assumed. */
final class FibreLinks {
  private final Row defaults;

  FibreLinks(Tables tables) {
    defaults = tables.table("fibre-channel").row("premises");
  }

  /** Patch cords taken for a channel in all. */
  Length usualCords() {
    return Length.metres(defaults.number("cords_m"));
  }

  /** The fibre runs of a job in the record's order. */
  List<FibreLink> of(Job job) {
    return job.runs().stream()
        .filter(run -> job.cableOf(run).medium() == Medium.FIBRE)
        .map(run -> link(job, run))
        .toList();
  }

  private FibreLink link(Job job, Run run) {
    Cable cable = job.cableOf(run);
    List<Phrase> lengthNotes = new ArrayList<>();
    Optional<Length> length = length(run, job.testsOf(run), lengthNotes);
    List<Phrase> jointNotes = new ArrayList<>();
    Joints joints = joints(run, job.fibreOf(run), jointNotes);
    return new FibreLink(
        run,
        cable.fibreClass(),
        cable.fibres(),
        length,
        joints,
        unfinished(run),
        lengthNotes,
        jointNotes,
        run.isTerminated() ? readings(job.testsOf(run)) : List.of());
  }

  private static Optional<Phrase> unfinished(Run run) {
    if (run.isTerminated()) {
      return Optional.empty();
    }
    boolean unknown = run.from().finish() == Finish.UNKNOWN || run.to().finish() == Finish.UNKNOWN;
    return Optional.of(
        Phrase.of(unknown ? "fibre.assume.finish-unknown" : "fibre.assume.once-terminated"));
  }

  private static Optional<Length> length(Run run, List<RunTest> tests, List<Phrase> assumptions) {
    if (run.length().isPresent()) {
      if (run.lengthBy().filter(by -> by == LengthMethod.ESTIMATE).isPresent()) {
        assumptions.add(Phrase.of("fibre.assume.length-estimated"));
      }
      return run.length();
    }
    Optional<RunTest> measured =
        tests.stream()
            .filter(test -> test.length().isPresent())
            .reduce((earlier, later) -> later.date().isBefore(earlier.date()) ? earlier : later);
    measured.ifPresent(
        test -> assumptions.add(Phrase.of("fibre.assume.length-by-test", "date", test.date())));
    return measured.flatMap(RunTest::length);
  }

  private Joints joints(Run run, Optional<Fibre> facts, List<Phrase> assumptions) {
    int connectors =
        counted("fibre.assume.connectors", "connectors", connectors(run, facts), assumptions);
    int splices = counted("fibre.assume.splices", "splices", splices(run, facts), assumptions);
    return new Joints(connectors, splices);
  }

  /** The number that the record states, or the usual one, with a phrase that says which. */
  private int counted(
      String key, String column, Optional<Integer> stated, List<Phrase> assumptions) {
    int number = stated.orElse((int) defaults.number(column));
    assumptions.add(Phrase.counted(stated.isPresent() ? key : key + ".usual", number));
    return number;
  }

  /** As made for a terminated run; for any other as planned, for an end that is bare has none. */
  private static Optional<Integer> connectors(Run run, Optional<Fibre> facts) {
    Optional<Integer> planned = facts.flatMap(Fibre::connectorsPlanned);
    return run.isTerminated() ? facts.flatMap(Fibre::connectorsMade).or(() -> planned) : planned;
  }

  /** As for connectors, but splices that are made stay made when the ends are terminated. */
  private static Optional<Integer> splices(Run run, Optional<Fibre> facts) {
    Optional<Integer> made = facts.flatMap(Fibre::splicesMade);
    Optional<Integer> planned = facts.flatMap(Fibre::splicesPlanned);
    return run.isTerminated() ? made.or(() -> planned) : planned.or(() -> made);
  }

  private static List<Reading> readings(List<RunTest> tests) {
    return tests.stream()
        .flatMap(test -> test.losses().stream().map(loss -> new Reading(test, loss)))
        .toList();
  }
}
