package wallbook.assess.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.assess.conductor.CopperConductor;
import wallbook.assess.conductor.CopperConductors;
import wallbook.quantity.Length;
import wallbook.quantity.LinearResistance;
import wallbook.quantity.Resistance;
import wallbook.record.Cable;
import wallbook.record.Job;
import wallbook.record.LengthMethod;
import wallbook.record.Medium;
import wallbook.record.Run;
import wallbook.record.RunCondition;
import wallbook.record.RunTest;
import wallbook.record.TestResult;
import wallbook.reference.Source;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Reads the {@linkplain Wire conductors} of a run out of the record. */
public final class Wires {
  private final CopperConductors copper;
  private final WireTemperatures temperatures;

  public Wires(Tables tables) {
    copper = new CopperConductors(tables);
    temperatures = new WireTemperatures(tables);
  }

  /**
   * The conductors of a run. A loop resistance that was measured goes before one computed from
   * gauge and length; it is taken as measured at 20 °C.
   */
  public Wire of(Job job, Run run) {
    Cable cable = job.cableOf(run);
    List<Phrase> assumptions = new ArrayList<>();
    List<Phrase> missing = new ArrayList<>();
    boolean stranded = isStranded(cable, assumptions);
    Optional<CopperConductor> conductor =
        cable.gauge().map(awg -> stranded ? copper.stranded(awg) : copper.solid(awg));
    Optional<Length> length = run.length().filter(l -> l.inMetres() > 0);
    WireTemperatures.Taken taken = temperatures.of(job, run);
    taken.assumption().ifPresent(assumptions::add);
    Optional<RunTest> measurement = measurement(job, run);
    Optional<LinearResistance> perLength = conductor.map(c -> c.resistanceAt(taken.temperature()));
    Optional<Resistance> loop = Optional.empty();
    if (conductor.isEmpty()) {
      missing.add(Phrase.of("wire.missing.gauge"));
    }
    if (length.isEmpty() && measurement.isEmpty()) {
      missing.add(Phrase.of("wire.missing.length"));
    }
    if (missing.isEmpty()) {
      CopperConductor copperOfGauge = conductor.orElseThrow();
      loop =
          measurement
              .flatMap(RunTest::loopResistance)
              .map(
                  r ->
                      r.times(
                          copperOfGauge
                              .resistanceAt(taken.temperature())
                              .ratioTo(copperOfGauge.resistance())))
              .or(() -> length.map(l -> copperOfGauge.loopOver(l, taken.temperature())));
    }
    measurement.ifPresent(
        m ->
            assumptions.add(
                Phrase.of(
                    "wire.assume.measured",
                    "loop",
                    m.loopResistance().orElseThrow(),
                    "date",
                    m.date())));
    boolean firm = addDoubts(job, run, measurement.isPresent(), assumptions);
    return new Wire(
        run,
        length,
        loop,
        conductorsOf(cable),
        taken.temperature(),
        firm,
        assumptions,
        missing,
        stranded ? copper.strandedSource() : copper.source());
  }

  /** Resistance per length of one stranded conductor of a gauge, as an extension would have. */
  public LinearResistance stranded(int awg, Wire like) {
    return copper.stranded(awg).resistanceAt(like.temperature());
  }

  /** Where the resistance of stranded conductors comes from. */
  public Source strandedSource() {
    return copper.strandedSource();
  }

  /** Why a run carries nothing, if it is damaged or abandoned. */
  public static Optional<Phrase> unusable(Run run) {
    if (run.condition() == RunCondition.DAMAGED) {
      return Optional.of(Phrase.of("wire.limit.damaged"));
    }
    return run.condition() == RunCondition.ABANDONED
        ? Optional.of(Phrase.of("wire.limit.abandoned"))
        : Optional.empty();
  }

  /** Cable for pairs is solid unless the record says otherwise, all other wire is stranded. */
  private static boolean isStranded(Cable cable, List<Phrase> assumptions) {
    if (cable.stranded().isPresent()) {
      return cable.stranded().get();
    }
    boolean stranded = cable.medium() != Medium.BALANCED_PAIR;
    assumptions.add(Phrase.of(stranded ? "wire.assume.stranded" : "wire.assume.solid"));
    return stranded;
  }

  private static Optional<Integer> conductorsOf(Cable cable) {
    return cable.conductors().or(() -> cable.pairs().map(pairs -> 2 * pairs));
  }

  private static Optional<RunTest> measurement(Job job, Run run) {
    return latest(
        job.testsOf(run).stream()
            .filter(t -> t.result() != TestResult.FAIL)
            .filter(t -> t.loopResistance().filter(r -> r.inOhms() > 0).isPresent()));
  }

  private static boolean addDoubts(Job job, Run run, boolean measured, List<Phrase> assumptions) {
    boolean firm = true;
    if (!measured && run.lengthBy().filter(m -> m == LengthMethod.ESTIMATE).isPresent()) {
      assumptions.add(Phrase.of("wire.assume.estimate"));
      firm = false;
    }
    Optional<RunTest> failed =
        latest(job.testsOf(run).stream()).filter(t -> t.result() == TestResult.FAIL);
    if (failed.isPresent()) {
      assumptions.add(Phrase.of("wire.assume.failed-test", "date", failed.get().date()));
      firm = false;
    }
    return firm;
  }

  /** The latest test; of those of one day the last in the record. */
  private static Optional<RunTest> latest(Stream<RunTest> tests) {
    return tests.reduce((a, b) -> b.date().isBefore(a.date()) ? a : b);
  }
}
