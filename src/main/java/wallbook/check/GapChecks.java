package wallbook.check;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.record.ConduitEnd;
import wallbook.record.ExceptionItem;
import wallbook.record.Head;
import wallbook.record.HouseSystem;
import wallbook.record.Job;
import wallbook.record.Origin;
import wallbook.record.PartyRole;
import wallbook.record.Place;
import wallbook.record.PlaceKind;
import wallbook.record.Run;
import wallbook.record.RunCondition;
import wallbook.record.RunEnd;
import wallbook.record.Speaker;
import wallbook.record.SystemKind;
import wallbook.record.Zone;

/** Things that nothing else in the record speaks of: places, heads, zones, systems. */
final class GapChecks implements Check {
  private static final Set<SystemKind> BETWEEN_HEADS =
      Set.of(SystemKind.DEMARCATION, SystemKind.FIBRE, SystemKind.CONDUIT);
  private static final Set<PlaceKind> WITHOUT_RUNS =
      Set.of(PlaceKind.CONDUIT_END, PlaceKind.PULL_BOX);

  @Override
  public boolean needsWholeRecord() {
    return true;
  }

  @Override
  public boolean findsErrors() {
    return false;
  }

  @Override
  public void look(Job job, Findings findings) {
    checkPlaces(job, findings);
    for (Head head : job.heads()) {
      if (job.runsAt(head).isEmpty()
          && ends(job).noneMatch(e -> e.head().filter(head.id()::equals).isPresent())) {
        add(Severity.REMARK, "head-without-runs", head.origin(), "head", head.name(), findings);
      }
    }
    for (Zone zone : job.zones()) {
      if (zone.speakers().isEmpty()) {
        add(
            Severity.WARNING,
            "zone-without-speakers",
            zone.origin(),
            "zone",
            zone.name(),
            findings);
      }
    }
    job.systems().forEach(system -> checkSystem(job, system, findings));
    if (job.facts().parties().stream().noneMatch(p -> p.role() == PartyRole.INTEGRATOR)) {
      add(
          Severity.WARNING,
          "integrator-not-named",
          job.facts().origin(),
          "job",
          job.facts().title(),
          findings);
    }
  }

  private static Stream<ConduitEnd> ends(Job job) {
    return job.conduits().stream().flatMap(c -> Stream.of(c.from(), c.to()));
  }

  private static void checkPlaces(Job job, Findings findings) {
    Set<String> spokenOf = new HashSet<>();
    ends(job).forEach(end -> end.place().ifPresent(spokenOf::add));
    job.stubOuts().forEach(stubOut -> spokenOf.add(stubOut.place()));
    job.exceptions().stream().map(ExceptionItem::place).forEach(p -> p.ifPresent(spokenOf::add));
    for (Zone zone : job.zones()) {
      zone.volumeControl().ifPresent(spokenOf::add);
      zone.speakers().stream().map(Speaker::place).forEach(p -> p.ifPresent(spokenOf::add));
    }
    for (Place place : job.places()) {
      if (job.runsAt(place).isEmpty()
          && !spokenOf.contains(place.id())
          && !WITHOUT_RUNS.contains(place.kind())) {
        add(Severity.REMARK, "place-without-runs", place.origin(), "place", place.name(), findings);
      }
    }
  }

  private static void checkSystem(Job job, HouseSystem system, Findings findings) {
    List<Run> runs =
        job.runs().stream()
            .filter(run -> run.system().filter(system.id()::equals).isPresent())
            .toList();
    boolean excepted =
        job.exceptions().stream().anyMatch(x -> x.system().filter(system.id()::equals).isPresent());
    if (runs.isEmpty() && !excepted) {
      boolean described = system.works().isPresent() || system.later().isPresent();
      add(
          described ? Severity.REMARK : Severity.WARNING,
          "system-without-runs",
          system.origin(),
          "system",
          system.name(),
          findings);
    }
    boolean somewhere =
        runs.stream()
            .flatMap(run -> Stream.of(run.from(), run.to()))
            .map(RunEnd::place)
            .anyMatch(Optional::isPresent);
    if (!runs.isEmpty() && !somewhere && !BETWEEN_HEADS.contains(system.kind())) {
      add(
          Severity.REMARK,
          "system-without-place",
          system.origin(),
          "system",
          system.name(),
          findings);
    }
    boolean inService = runs.stream().anyMatch(r -> r.condition() == RunCondition.IN_SERVICE);
    if (inService && system.works().isEmpty()) {
      add(
          Severity.REMARK,
          "system-not-described",
          system.origin(),
          "system",
          system.name(),
          findings);
    }
    if (inService && system.demonstrated().isEmpty() && job.facts().handover().isPresent()) {
      add(
          Severity.REMARK,
          "system-not-demonstrated",
          system.origin(),
          "system",
          system.name(),
          findings);
    }
  }

  private static void add(
      Severity severity,
      String name,
      Origin origin,
      String argument,
      String value,
      Findings findings) {
    findings.add(Finding.of(severity, name, origin.position(), argument, value));
  }
}
