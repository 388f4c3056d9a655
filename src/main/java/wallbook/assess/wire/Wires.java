package wallbook.assess.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.assess.conductor.CopperConductor;
import wallbook.assess.conductor.CopperConductors;
import wallbook.quantity.Length;
import wallbook.quantity.LinearResistance;
import wallbook.quantity.Ratio;
import wallbook.quantity.Resistance;
import wallbook.quantity.Temperature;
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
  /** Stranding and heat add the same share at every gauge. */
  private static final int ANY_AWG = 16;

  private final CopperConductors copper;
  private final WireTemperatures temperatures;

  public Wires(Tables tables) {
    copper = new CopperConductors(tables);
    temperatures = new WireTemperatures(tables);
  }

  /**
   * The conductors of a run. A loop resistance that was measured goes before one computed from
   * gauge and length; it is taken as measured at the temperature that copper is tabulated at.
   */
  public Wire of(Job job, Run run) {
    Optional<RunTest> measurement = measurement(job, run);
    WireTemperatures.Taken taken = temperatures.of(job, run);
    List<Phrase> assumptions = new ArrayList<>();
    taken.assumption().ifPresent(assumptions::add);
    List<Phrase> failed = failed(job, run).stream().toList();
    assumptions.addAll(failed);
    return measurement.isPresent()
        ? measured(job, run, taken.temperature(), measurement.get(), assumptions, failed)
        : computed(job, run, taken.temperature(), assumptions, failed);
  }

  private Wire measured(
      Job job,
      Run run,
      Temperature temperature,
      RunTest measurement,
      List<Phrase> assumptions,
      List<Phrase> failed) {
    CopperConductor any = copper.solid(ANY_AWG);
    Resistance read = measurement.loopResistance().orElseThrow();
    assumptions.add(
        Phrase.of(
            "wire.assume.measured",
            "loop",
            read,
            "date",
            measurement.date(),
            "reference",
            any.reference()));
    double hotter = any.resistanceAt(temperature).ratioTo(any.resistance());
    return new Wire(
        run,
        lengthOf(run),
        Optional.of(read.times(hotter)),
        conductorsOf(job.cableOf(run)),
        temperature,
        assumptions,
        failed,
        List.of(),
        copper.source());
  }

  private Wire computed(
      Job job, Run run, Temperature temperature, List<Phrase> assumptions, List<Phrase> failed) {
    Cable cable = job.cableOf(run);
    boolean stranded = cable.stranded().orElse(cable.medium() != Medium.BALANCED_PAIR);
    Optional<CopperConductor> conductor =
        cable
            .gauge()
            .filter(CopperConductors::isGauge)
            .map(awg -> stranded ? copper.stranded(awg) : copper.solid(awg));
    Optional<Length> length = lengthOf(run);
    strandingSaid(cable, stranded).ifPresent(assumptions::add);
    List<Phrase> missing = new ArrayList<>();
    if (conductor.isEmpty()) {
      missing.add(Phrase.of("wire.missing.gauge"));
    }
    if (length.isEmpty()) {
      missing.add(Phrase.of("wire.missing.length"));
    }
    List<Phrase> conditions = new ArrayList<>(failed);
    if (run.lengthBy().filter(m -> m == LengthMethod.ESTIMATE).isPresent()) {
      Phrase estimate = Phrase.of("wire.assume.estimate");
      assumptions.add(estimate);
      conditions.add(estimate);
    }
    return new Wire(
        run,
        length,
        conductor.flatMap(c -> length.map(l -> c.loopOver(l, temperature))),
        conductorsOf(cable),
        temperature,
        assumptions,
        conditions,
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

  /**
   * What is to be said of the stranding. Pairs are taken as solid unless the record says otherwise,
   * all other wire as stranded; the allowance for stranded wire is always named.
   */
  private Optional<Phrase> strandingSaid(Cable cable, boolean stranded) {
    if (!stranded) {
      return cable.stranded().isPresent()
          ? Optional.empty()
          : Optional.of(Phrase.of("wire.assume.solid"));
    }
    double times =
        copper.stranded(ANY_AWG).resistance().ratioTo(copper.solid(ANY_AWG).resistance());
    return Optional.of(
        Phrase.of(
            cable.stranded().isPresent() ? "wire.assume.stranded" : "wire.assume.stranded-unsaid",
            "more",
            Ratio.fraction(times - 1)));
  }

  private static Optional<Length> lengthOf(Run run) {
    return run.length().filter(l -> l.inMetres() > 0);
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

  private static Optional<Phrase> failed(Job job, Run run) {
    return latest(job.testsOf(run).stream())
        .filter(t -> t.result() == TestResult.FAIL)
        .map(t -> Phrase.of("wire.assume.failed-test", "date", t.date()));
  }

  /** The latest test; of those of one day the last in the record. */
  private static Optional<RunTest> latest(Stream<RunTest> tests) {
    return tests.reduce((a, b) -> b.date().isBefore(a.date()) ? a : b);
  }
}
