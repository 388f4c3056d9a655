package wallbook.check;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.record.Run;
import wallbook.record.RunCondition;
import wallbook.record.Speaker;
import wallbook.record.Zone;

/** Audio zones: their speakers and the runs that feed them. */
final class ZoneChecks implements Check {
  @Override
  public void look(Job job, Findings findings) {
    Map<String, Zone> zoneOfRun = new HashMap<>();
    for (Zone zone : job.zones()) {
      for (Speaker speaker : zone.speakers()) {
        Optional<Run> run = speaker.run().map(job::run);
        if (run.isPresent()) {
          checkRun(job, zone, speaker, run.get(), findings);
          Zone other = zoneOfRun.putIfAbsent(run.get().id(), zone);
          if (other != null && !other.id().equals(zone.id())) {
            findings.add(
                Finding.of(
                        Severity.WARNING,
                        "run-in-two-zones",
                        speaker.origin().position("run"),
                        "run",
                        run.get().label(),
                        "zone",
                        zone.name(),
                        "other",
                        other.name())
                    .found(run.get().id()));
          }
        } else {
          findings.add(
              Finding.of(
                  Severity.WARNING,
                  "speaker-without-run",
                  speaker.origin().position(),
                  "zone",
                  zone.name()));
        }
        checkTap(zone, speaker, findings);
      }
    }
  }

  private static void checkRun(Job job, Zone zone, Speaker speaker, Run run, Findings findings) {
    Medium medium = job.cableOf(run).medium();
    if (medium != Medium.SPEAKER) {
      findings.add(
          RunFinding.of(
                  Severity.WARNING,
                  "speaker-on-other-cable",
                  speaker.origin().position("run"),
                  run,
                  "zone",
                  zone.name(),
                  "medium",
                  Words.of("medium", medium))
              .found(run.id()));
    }
    if (run.condition() == RunCondition.DAMAGED || run.condition() == RunCondition.ABANDONED) {
      findings.add(
          RunFinding.of(
                  Severity.WARNING,
                  "speaker-on-dead-run",
                  speaker.origin().position("run"),
                  run,
                  "zone",
                  zone.name(),
                  "condition",
                  Words.of("run-condition", run.condition()))
              .found(run.id()));
    }
    boolean elsewhere =
        speaker.place().isPresent()
            && Stream.of(run.from(), run.to())
                .noneMatch(end -> end.place().equals(speaker.place()));
    if (elsewhere && speaker.count().orElse(1) == 1) {
      findings.add(
          RunFinding.of(
                  Severity.WARNING,
                  "speaker-run-ends-elsewhere",
                  speaker.origin().position("run"),
                  run,
                  "place",
                  job.place(speaker.place().get()).name())
              .found(run.id()));
    }
    Conductors.check(
        run, job.cableOf(run), speaker.conductorsInParallel(), speaker.origin(), findings);
  }

  private static void checkTap(Zone zone, Speaker speaker, Findings findings) {
    if (zone.lineVoltage().isPresent() && speaker.power().isEmpty()) {
      findings.add(
          Finding.of(
              Severity.WARNING,
              "tap-not-recorded",
              speaker.origin().position(),
              "zone",
              zone.name(),
              "voltage",
              zone.lineVoltage().get()));
    }
  }
}
