package wallbook.assess.fibre;

import java.util.List;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.record.Job;

/** Small jobs with fibre runs, and their assessments, for tests. */
final class FibreJobs {
  private static final String HOUSE =
      """
      floors: [{id: ground, name: Ground floor, level: 0, elevation: 0 ft}]
      spaces:
        - {id: den, name: Den, floor: ground, kind: living}
        - {id: util, name: Utility, floor: ground, kind: utility}
      heads:
        - {id: rack, name: Rack, kind: rack, space: util, panels: [{id: F1, name: Tray, kind: fibre_tray, ports: 12}]}
        - {id: demarc, name: Demarcation, kind: demarcation, space: util, panels: []}
      places: [{id: den-1, name: Plate, space: den, kind: wall_plate, use: data}]
      """;

  private static final String CABLES =
      """
      cables:
        - {id: om1-2, name: OM1 pair, medium: fibre, fibre_class: om1, fibres: 2}
        - {id: om2-2, name: OM2 pair, medium: fibre, fibre_class: om2, fibres: 2}
        - {id: om3-4, name: OM3 four fibres, medium: fibre, fibre_class: om3, fibres: 4, diameter: 5 mm}
        - {id: om3-8, name: OM3 eight fibres, medium: fibre, fibre_class: om3, fibres: 8, diameter: 5 mm}
        - {id: om4-8, name: OM4 eight fibres, medium: fibre, fibre_class: om4, fibres: 8}
        - {id: om4-20, name: OM4 twenty fibres, medium: fibre, fibre_class: om4, fibres: 20}
        - {id: om5-2, name: OM5 pair, medium: fibre, fibre_class: om5, fibres: 2}
        - {id: os1a-2, name: OS1a pair, medium: fibre, fibre_class: os1a, fibres: 2}
        - {id: plain, name: Fibre cable, medium: fibre}
        - {id: om3-uncounted, name: OM3 cable, medium: fibre, fibre_class: om3}
      """;

  private FibreJobs() {}

  /** A run from the rack to the den, terminated at both ends and in service. */
  static String run(String id, String cable, String length) {
    return run(id, cable, length, "terminated", "in_service");
  }

  /** A run from the rack to the den that is coiled in the den and dark. */
  static String coiled(String id, String cable, String length) {
    return run(id, cable, length, "coiled", "dark");
  }

  static String run(String id, String cable, String length, String finish, String condition) {
    return "  - {id: %s, label: %s, cable: %s, from: {head: rack, finish: terminated}, to: {place: den-1, finish: %s}, condition: %s%s}\n"
        .formatted(id, id, cable, finish, condition, length.isEmpty() ? "" : ", length: " + length);
  }

  static Job job(String runs, String rest) {
    return house(CABLES, runs, rest);
  }

  /** As {@link #job}, with cable types of its own. */
  static Job house(String cables, String runs, String rest) {
    return Jobs.job(HOUSE + cables + "runs:\n" + runs + rest);
  }

  static List<Assessment> assess(Job job) {
    return new FibreAssessor(Jobs.TABLES).assess(job);
  }

  static List<Assessment> assess(String runs) {
    return assess(job(runs, ""));
  }

  static Assessment only(List<Assessment> all, String topic) {
    List<Assessment> found = all.stream().filter(a -> a.topic().equals(topic)).toList();
    if (found.size() != 1) {
      throw new AssertionError(
          found.size() + " of " + topic + " in " + all.stream().map(Assessment::topic).toList());
    }
    return found.get(0);
  }

  /** A fibre entry of run {@code r} with connectors and splices as made and as planned. */
  static String joints(int connectors, int splices) {
    return "fibres: [{id: f, run: r, connectors_made: %d, connectors_planned: %d, splices_made: %d, splices_planned: %d}]\n"
        .formatted(connectors, connectors, splices, splices);
  }
}
