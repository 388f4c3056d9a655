package wallbook.assess.coax;

import java.util.List;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.record.Job;

/** Small jobs with coaxial runs, and their assessments, for tests. */
final class CoaxJobs {
  private static final String HOUSE =
      """
      floors: [{id: ground, name: Ground floor, level: 0, elevation: 0 ft}]
      spaces:
        - {id: den, name: Den, floor: ground, kind: living}
        - {id: util, name: Utility, floor: ground, kind: utility}
        - {id: yard, name: Yard, floor: ground, kind: garden}
      heads:
        - id: rack
          name: Rack
          kind: rack
          space: util
          panels:
            - {id: C1, name: Coax panel, kind: coax_panel, ports: 8}
            - {id: S4, name: Four-way splitter, kind: coax_splitter, ports: 4}
            - {id: S5, name: Odd splitter, kind: coax_splitter, ports: 5}
            - {id: S8, name: Eight-way splitter, kind: coax_splitter, ports: 8, splitter_loss: 12 dB}
        - {id: demarc, name: Demarcation, kind: demarcation, space: util, panels: []}
      places:
        - {id: den-tv, name: Plate, space: den, kind: wall_plate, use: television}
        - {id: yard-tv, name: Outdoor plate, space: yard, kind: wall_plate, use: television}
        - {id: dish, name: Dish, space: den, kind: device, use: satellite_antenna}
        - {id: mast, name: Mast, space: den, kind: device, use: off_air_antenna}
        - {id: roof-cell, name: Roof antenna, space: den, kind: device, use: cellular_antenna}
      cables:
        - {id: series-59, name: Series 59, medium: coax, coax: series_59}
        - {id: plain, name: Coax, medium: coax}
      """;

  private CoaxJobs() {}

  /** A terminated run from the rack's coax panel to the den, with more keys if given. */
  static String run(String cable, String more) {
    return run(cable, "{head: rack, panel: C1, port: 1, finish: terminated}", "den-tv", more);
  }

  static String run(String cable, String from, String place, String more) {
    return "runs: [{id: r, label: R, cable: %s, from: %s, to: {place: %s, finish: terminated}%s}]\n"
        .formatted(
            cable,
            from,
            place,
            (more.contains("condition:") ? "" : ", condition: in_service")
                + (more.isEmpty() ? "" : ", " + more));
  }

  static Job job(String runs) {
    return Jobs.job(HOUSE + runs);
  }

  static List<Assessment> assess(String runs) {
    return new CoaxAssessor(Jobs.TABLES).assess(job(runs));
  }

  /** As {@link #assess}, in a house whose attic reaches 50 °C. */
  static List<Assessment> assessWithAtticAt50(String runs) {
    String head = "format: 1\njob: {id: small, title: Small job, revision: 1, attic_high: 50 °C}\n";
    return new CoaxAssessor(Jobs.TABLES).assess(Jobs.read(head + HOUSE + runs).job().orElseThrow());
  }

  static Assessment only(List<Assessment> all, String topic) {
    List<Assessment> found = all.stream().filter(a -> a.topic().equals(topic)).toList();
    if (found.size() != 1) {
      throw new AssertionError(
          found.size() + " of " + topic + " in " + all.stream().map(Assessment::topic).toList());
    }
    return found.get(0);
  }
}
