package wallbook.assess.coax;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wallbook.quantity.Count;
import wallbook.quantity.Decibels;
import wallbook.quantity.Temperature;
import wallbook.record.HeadKind;
import wallbook.record.Job;
import wallbook.record.LengthMethod;
import wallbook.record.Medium;
import wallbook.record.Panel;
import wallbook.record.PanelKind;
import wallbook.record.PlaceUse;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.record.RunEnvironment;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Gathers from a job what is to be known of each coaxial run, and says what had to be assumed. */
final class CoaxRuns {
  private static final Set<PlaceUse> ANTENNAS =
      EnumSet.of(PlaceUse.SATELLITE_ANTENNA, PlaceUse.OFF_AIR_ANTENNA, PlaceUse.CELLULAR_ANTENNA);

  /** Antennas that receive from outside; a repeater has antennas inside as well. */
  private static final Set<PlaceUse> RECEIVING =
      EnumSet.of(PlaceUse.SATELLITE_ANTENNA, PlaceUse.OFF_AIR_ANTENNA);

  private static final Set<RunEnvironment> OUTDOORS =
      EnumSet.of(
          RunEnvironment.BURIED, RunEnvironment.OUTDOOR_EXPOSED, RunEnvironment.OUTDOOR_CONDUIT);

  private final CoaxSplitters splitters;

  CoaxRuns(Tables tables) {
    splitters = new CoaxSplitters(tables);
  }

  /** The coaxial runs of a job in the record's order. */
  List<CoaxRun> of(Job job) {
    return job.runs().stream()
        .filter(run -> job.cableOf(run).medium() == Medium.COAX)
        .map(run -> run(job, run))
        .toList();
  }

  private CoaxRun run(Job job, Run run) {
    List<Phrase> assumptions = new ArrayList<>();
    List<Phrase> missing = new ArrayList<>();
    if (!run.isTerminated()) {
      assumptions.add(Phrase.of("coax.assume.once-terminated"));
    }
    if (run.lengthBy().filter(by -> by == LengthMethod.ESTIMATE).isPresent()) {
      assumptions.add(Phrase.of("coax.assume.length-estimated"));
    }
    if (run.length().isEmpty()) {
      missing.add(Phrase.of("coax.missing.length"));
    }
    Decibels split =
        ends(run)
            .map(end -> splitter(job, end))
            .flatMap(Optional::stream)
            .map(panel -> loss(panel, assumptions, missing))
            .reduce(Decibels.decibels(0), Decibels::plus);
    boolean toAntenna =
        ends(run).anyMatch(end -> use(job, end).filter(ANTENNAS::contains).isPresent());
    if (isExterior(job, run)) {
      assumptions.add(Phrase.of("coax.assume.bonding"));
    }
    return new CoaxRun(
        run,
        job.cableOf(run).coax(),
        run.length(),
        temperature(job, run),
        split,
        missing,
        toAntenna,
        assumptions);
  }

  private Decibels loss(Panel splitter, List<Phrase> assumptions, List<Phrase> missing) {
    Optional<Decibels> loss = splitter.splitterLoss();
    if (loss.isEmpty()) {
      loss = splitters.nominalLoss(Count.of(splitter.ports()));
      loss.ifPresent(
          nominal ->
              assumptions.add(
                  Phrase.of(
                      "coax.assume.splitter-usual", "ways", splitter.ports(), "loss", nominal)));
    } else {
      assumptions.add(Phrase.of("coax.assume.splitter", "loss", loss.get()));
    }
    if (loss.isEmpty()) {
      missing.add(Phrase.of("coax.missing.splitter-loss", "splitter", splitter.name()));
    }
    return loss.orElse(Decibels.decibels(0));
  }

  private static Optional<Panel> splitter(Job job, RunEnd end) {
    return end.head()
        .flatMap(head -> end.panel().flatMap(panel -> job.head(head).panel(panel)))
        .filter(panel -> panel.kind() == PanelKind.COAX_SPLITTER);
  }

  private static Optional<Temperature> temperature(Job job, Run run) {
    return run.hottest()
        .or(
            () ->
                run.environments().contains(RunEnvironment.ATTIC)
                    ? job.facts().atticHigh()
                    : Optional.empty());
  }

  private static boolean isExterior(Job job, Run run) {
    return run.environments().stream().anyMatch(OUTDOORS::contains)
        || ends(run).anyMatch(end -> isExterior(job, end));
  }

  private static boolean isExterior(Job job, RunEnd end) {
    return job.spaceOf(end).kind().isOutdoor()
        || use(job, end).filter(RECEIVING::contains).isPresent()
        || end.head().filter(id -> job.head(id).kind() == HeadKind.DEMARCATION).isPresent();
  }

  private static Optional<PlaceUse> use(Job job, RunEnd end) {
    return end.place().map(id -> job.place(id).use());
  }

  private static Stream<RunEnd> ends(Run run) {
    return Stream.of(run.from(), run.to());
  }
}
