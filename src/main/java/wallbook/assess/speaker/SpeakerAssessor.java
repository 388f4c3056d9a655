package wallbook.assess.speaker;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.assess.wire.WireUse;
import wallbook.assess.wire.Wires;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.Speaker;
import wallbook.record.Zone;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Assesses every loudspeaker line of a job: those of its zones at the load they have, speaker wire
 * that serves no zone at usual loads, and how far a stub-out can be extended.
 *
 * <p>Topics, all beginning with {@code speaker.}; {@code .8-ohm} and {@code .4-ohm} mark loads that
 * are supposed, {@code .doubled} the same with the cable's other conductors joined:
 *
 * <ul>
 *   <li>{@code loss.half-db}, {@code share.5-percent}, {@code share.10-percent}: against each limit
 *   <li>{@code longest.<limit>}: the run against the longest that keeps within the limit
 *   <li>{@code loop}, {@code power-lost}: for information
 *   <li>{@code damping}: at the speaker
 *   <li>{@code load}: against what the amplifier takes
 *   <li>{@code extend.<limit>.awg-<gauge>}: how much further; {@code extend.<limit>}: no further
 *   <li>{@code channel.most}, {@code volume-control}, {@code taps}: of a zone
 *   <li>{@code loss} without more: nothing can be said of the line, and why
 * </ul>
 */
public final class SpeakerAssessor {
  private final SpeakerPaths paths;
  private final LineAssessor lines;
  private final ExtensionAssessor extensions;
  private final ZoneAssessor zones;
  private final SpeakerPractice practice;

  public SpeakerAssessor(Tables tables) {
    Wires wires = new Wires(tables);
    practice = new SpeakerPractice(tables);
    paths = new SpeakerPaths(wires, practice);
    lines = new LineAssessor(practice);
    extensions = new ExtensionAssessor(wires, practice);
    zones = new ZoneAssessor(practice);
  }

  /** What is to be said of the speaker lines of a job, by zone and then by run. */
  public List<Assessment> assess(Job job) {
    List<Assessment> all = new ArrayList<>();
    Map<String, Run> broken = new LinkedHashMap<>();
    for (Zone zone : job.zones()) {
      Map<Run, List<Speaker>> byRun = paths.speakersByRun(job, zone);
      all.addAll(zones.assess(zone, byRun));
      byRun.keySet().forEach(run -> broken.put(run.id(), run));
    }
    List<SpeakerPath> ways = new ArrayList<>(paths.ofZones(job));
    Set<String> assessed = new LinkedHashSet<>();
    ways.forEach(way -> assessed.add(way.subject()));
    broken.keySet().removeAll(assessed);
    for (Run run : job.runs()) {
      if (!assessed.contains(run.id()) && WireUse.forSpeakers(job, run)) {
        if (Wires.unusable(run).isPresent()) {
          broken.put(run.id(), run);
        } else {
          ways.addAll(paths.unused(job, run));
        }
      }
    }
    broken.values().forEach(run -> all.add(broken(run)));
    Set<String> extendable = ExtensionAssessor.extendable(job);
    for (SpeakerPath way : ways) {
      all.addAll(lines.assess(way));
      if (extendable.contains(way.subject())) {
        all.addAll(extensions.assess(way));
      }
    }
    return List.copyOf(all);
  }

  private Assessment broken(Run run) {
    return Assessment.of(run.id(), "speaker.loss", Phrase.of("speaker.asked.any"))
        .limitedBy(Wires.unusable(run).orElseThrow())
        .verdict(Verdict.BEYOND, practice.limits().get(0).source());
  }
}
