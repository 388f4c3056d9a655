package wallbook.check;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;
import wallbook.record.Cable;
import wallbook.record.Jacket;
import wallbook.record.Job;
import wallbook.record.OutdoorRating;
import wallbook.record.Place;
import wallbook.record.PlaceKind;
import wallbook.record.PlaceUse;
import wallbook.record.Run;
import wallbook.record.RunEnvironment;
import wallbook.reference.Row;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Whether the jackets of cables suit what they pass through. */
final class EnvironmentChecks implements Check {
  private static final Set<RunEnvironment> OUTDOORS =
      Set.of(
          RunEnvironment.BURIED,
          RunEnvironment.OUTDOOR_EXPOSED,
          RunEnvironment.OUTDOOR_CONDUIT,
          RunEnvironment.SLAB);

  private final Table levels;
  private final Table needs;

  EnvironmentChecks(Tables tables) {
    this.levels = tables.table("jacket-fire-levels");
    this.needs = tables.table("environment-needs");
  }

  @Override
  public boolean findsErrors() {
    return false;
  }

  @Override
  public void look(Job job, Findings findings) {
    for (Run run : job.runs()) {
      Cable cable = job.cableOf(run);
      List<RunEnvironment> environments = run.environments();
      for (int i = 0; i < environments.size(); i++) {
        SourcePosition at = run.origin().position("environments", i);
        checkFireLevel(run, cable, environments.get(i), at, findings);
        checkOutdoorMark(run, cable, environments.get(i), at, findings);
      }
      checkJacketKnown(run, cable, findings);
      checkOutdoorsNamed(job, run, findings);
    }
  }

  private static Optional<Jacket> jacket(Run run, Cable cable) {
    return run.jacket().or(cable::jacket);
  }

  private void checkFireLevel(
      Run run, Cable cable, RunEnvironment environment, SourcePosition at, Findings findings) {
    Row need = needs.row(environment.word());
    Optional<Jacket> jacket = jacket(run, cable);
    if (jacket.isEmpty() || need.numberIfAny("level").isEmpty()) {
      return;
    }
    if (levels.row(jacket.get().word()).number("level") < need.number("level")) {
      findings.add(
          RunFinding.of(
                  Severity.WARNING,
                  "jacket-below-environment",
                  at,
                  run,
                  "jacket",
                  Words.of("jacket", jacket.get()),
                  "environment",
                  Words.of("run-environment", environment))
              .found(jacket.get().word())
              .expecting(Phrase.of("expected.one-of", "choices", suitable(need.number("level")))));
    }
  }

  private String suitable(double level) {
    return String.join(
        ", ",
        levels.rows().stream()
            .filter(row -> row.number("level") >= level)
            .map(row -> row.text("jacket"))
            .toList());
  }

  private void checkOutdoorMark(
      Run run, Cable cable, RunEnvironment environment, SourcePosition at, Findings findings) {
    needs
        .row(environment.word())
        .textIfAny("mark")
        .map(word -> OutdoorRating.valueOf(word.toUpperCase(Locale.ROOT)))
        .filter(mark -> !cable.outdoor().contains(mark))
        .filter(mark -> !inWetConduit(run, cable, mark))
        .ifPresent(
            mark ->
                findings.add(
                    RunFinding.of(
                            Severity.WARNING,
                            "outdoor-cable-not-rated",
                            at,
                            run,
                            "environment",
                            Words.of("run-environment", environment),
                            "mark",
                            Words.of("outdoor-rating", mark))
                        .found(cable.id())));
  }

  /** Below ground a conduit takes the place of the mark for direct burial, but is wet inside. */
  private static boolean inWetConduit(Run run, Cable cable, OutdoorRating mark) {
    return mark == OutdoorRating.DIRECT_BURIAL
        && !run.conduits().isEmpty()
        && cable.outdoor().contains(OutdoorRating.WET_LOCATION);
  }

  private void checkJacketKnown(Run run, Cable cable, Findings findings) {
    if (jacket(run, cable).isEmpty()
        && run.environments().stream()
            .anyMatch(e -> needs.row(e.word()).numberIfAny("level").isPresent())) {
      findings.add(
          RunFinding.of(
              Severity.REMARK, "jacket-not-recorded", run.origin().position("cable"), run));
    }
  }

  private static void checkOutdoorsNamed(Job job, Run run, Findings findings) {
    Optional<Place> outside =
        Stream.of(run.from(), run.to())
            .flatMap(end -> end.place().stream())
            .map(job::place)
            .filter(place -> job.space(place.space()).kind().isOutdoor())
            .filter(EnvironmentChecks::isAwayFromWalls)
            .findFirst();
    if (outside.isPresent() && run.environments().stream().noneMatch(OUTDOORS::contains)) {
      findings.add(
          RunFinding.of(
              Severity.REMARK,
              "outdoor-run-without-environment",
              run.origin().position("environments"),
              run,
              "place",
              outside.get().name()));
    }
  }

  /** A camera or lamp on the house is reached through its wall, a stub-out through the ground. */
  private static boolean isAwayFromWalls(Place place) {
    return place.kind() == PlaceKind.STUB_OUT || place.use() == PlaceUse.LANDSCAPE_AUDIO;
  }
}
