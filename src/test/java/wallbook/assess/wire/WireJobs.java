package wallbook.assess.wire;

import java.util.List;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.assess.lowvoltage.LowVoltageAssessor;
import wallbook.assess.outdoor.OutdoorAssessor;
import wallbook.assess.speaker.SpeakerAssessor;
import wallbook.record.Job;

/** Small jobs with speaker, control and power wire, and their assessments, for tests. */
public final class WireJobs {
  private static final String HOUSE =
      """
      floors: [{id: ground, name: Ground floor, level: 0, elevation: 0 ft}]
      spaces:
        - {id: den, name: Den, floor: ground, kind: living}
        - {id: util, name: Utility, floor: ground, kind: utility}
        - {id: yard, name: Garden, floor: ground, kind: garden}
        - {id: drive, name: Drive, floor: ground, kind: driveway}
      corners: [{id: ne, name: North-east corner, at: [20 ft, 0 ft]}, {id: nw, name: North-west corner, at: [0 ft, 0 ft]}]
      heads: [{id: rack, name: Rack, kind: rack, space: util, panels: []}]
      places:
        - {id: left, name: Left speaker, space: den, kind: ceiling_point, use: speaker}
        - {id: right, name: Right speaker, space: den, kind: ceiling_point, use: speaker}
        - {id: knob, name: Volume control, space: den, kind: wall_plate, use: volume_control}
        - {id: shade, name: Shade pocket, space: den, kind: in_wall_coil, use: shade}
        - {id: coil, name: Coil in the wall, space: den, kind: in_wall_coil, use: speaker}
        - {id: keypad, name: Keypad, space: den, kind: wall_plate, use: keypad}
        - {id: plate, name: Spare plate, space: den, kind: blank_plate, use: other}
        - {id: stub, name: Garden stub-out, space: yard, kind: stub_out, use: landscape_audio, ties: [{from: ne, distance: 6 ft}, {from: nw, distance: 18 ft}]}
        - {id: gate, name: Drive stub-out, space: drive, kind: stub_out, use: other, ties: [{from: ne, distance: 6 ft}, {from: nw, distance: 18 ft}]}
      cables:
        - {id: s16-2, name: Solid 16-2, medium: speaker, gauge: 16, conductors: 2, stranded: no}
        - {id: s16-4, name: Solid 16-4, medium: speaker, gauge: 16, conductors: 4, stranded: no}
        - {id: s16-6, name: Solid 16-6, medium: speaker, gauge: 16, conductors: 6, stranded: no}
        - {id: s16-8, name: Solid 16-8, medium: speaker, gauge: 16, conductors: 8, stranded: no}
        - {id: s14-2, name: Solid 14-2, medium: speaker, gauge: 14, conductors: 2, stranded: no}
        - {id: s22-4, name: Solid 22-4, medium: control, gauge: 22, conductors: 4, stranded: no}
        - {id: s22-2, name: Solid 22-2, medium: control, gauge: 22, conductors: 2, stranded: no}
        - {id: unsaid, name: Speaker wire, medium: speaker, gauge: 16}
        - {id: odd, name: Speaker wire, medium: speaker, gauge: 99, conductors: 2, stranded: no}
        - {id: gaugeless, name: Speaker wire, medium: speaker, conductors: 2, stranded: no}
        - {id: pair-unsaid, name: Pair, medium: balanced_pair, category: cat6, pairs: 4, gauge: 23}
        - {id: buriable, name: Buriable, medium: speaker, gauge: 16, conductors: 4, stranded: no, outdoor: [direct_burial]}
        - {id: wettable, name: Wettable, medium: speaker, gauge: 16, conductors: 4, stranded: no, outdoor: [wet_location]}
        - {id: sunproof, name: Sunproof, medium: speaker, gauge: 16, conductors: 4, stranded: no, outdoor: [sunlight_resistant]}
      """;

  private WireJobs() {}

  /**
   * A run from the rack to a place, in service.
   *
   * @param more further keys, each with a comma before it
   */
  public static String run(String id, String cable, String place, String more) {
    return run(id, cable, place, "in_service", more);
  }

  public static String run(String id, String cable, String place, String condition, String more) {
    return "  - {id: %s, label: %s, cable: %s, from: {head: rack, finish: terminated}, to: {place: %s, finish: coiled}, condition: %s%s}\n"
        .formatted(id, id, cable, place, condition, more);
  }

  /** A run between two places, in service. */
  public static String between(String id, String cable, String from, String to, String more) {
    return "  - {id: %s, label: %s, cable: %s, from: {place: %s, finish: terminated}, to: {place: %s, finish: terminated}, condition: in_service%s}\n"
        .formatted(id, id, cable, from, to, more);
  }

  /**
   * A zone.
   *
   * @param more further keys, each with a comma before it
   * @param speakers entries between braces, separated by commas
   */
  public static String zone(String kind, String more, String speakers) {
    return "zones: [{id: z, name: Zone, kind: %s%s, speakers: [%s]}]\n"
        .formatted(kind, more, speakers);
  }

  public static Job job(String runs, String rest) {
    return Jobs.job(HOUSE + "runs:\n" + runs + rest);
  }

  public static List<Assessment> speakers(String runs, String rest) {
    return new SpeakerAssessor(Jobs.TABLES).assess(job(runs, rest));
  }

  public static List<Assessment> supplies(String runs, String rest) {
    return new LowVoltageAssessor(Jobs.TABLES).assess(job(runs, rest));
  }

  public static List<Assessment> outdoors(String runs, String rest) {
    return new OutdoorAssessor(Jobs.TABLES).assess(job(runs, rest));
  }

  /** The one assessment of a subject and topic. */
  public static Assessment only(List<Assessment> all, String subject, String topic) {
    List<Assessment> found =
        all.stream().filter(a -> a.topic().equals(topic) && a.subject().equals(subject)).toList();
    if (found.size() != 1) {
      throw new AssertionError(
          found.size()
              + " of "
              + subject
              + " "
              + topic
              + " in "
              + all.stream().map(a -> a.subject() + " " + a.topic()).toList());
    }
    return found.get(0);
  }

  /** A test that measured the loop of run {@code r} and passed. */
  public static String measured(double ohms) {
    return "tests: [{id: t, run: r, date: 2026-04-20, kind: resistance, result: pass, loop_resistance: %s ohm}]\n"
        .formatted(ohms);
  }

  /** Keys of the assumptions of an assessment. */
  public static List<String> assumed(Assessment assessment) {
    return assessment.assumptions().stream().map(p -> p.key()).toList();
  }

  /** Keys of what an assessment lacks. */
  public static List<String> missing(Assessment assessment) {
    return assessment.missing().stream().map(p -> p.key()).toList();
  }
}
