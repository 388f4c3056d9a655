package wallbook.assess.location;

import java.util.List;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.record.Job;

/**
 * An invented house of 40 by 30 ft with a garden to the south of it and fixed corners, for tests.
 * Corners: a (0, 0) and b (14, 0) on the south wall, c (40, 0) the south-east and d (0, 30) the
 * north-west corner of the house; e (60, −40) a corner of the boundary wall.
 */
final class Grounds {
  static final String GARDEN =
      ", outline: [[0 ft, -50 ft], [0 ft, 0 ft], [70 ft, 0 ft], [70 ft, -50 ft]]";
  static final String HOUSE =
      ", outline: [[0 ft, 0 ft], [0 ft, 30 ft], [40 ft, 30 ft], [40 ft, 0 ft]]";

  private final String house;
  private final String garden;
  private String places = "";
  private String runs = "";
  private String tests = "";
  private String gardenFloor = "ground";

  private Grounds(String house, String garden) {
    this.house = house;
    this.garden = garden;
  }

  /** House and garden with their outlines. */
  static Grounds drawn() {
    return new Grounds(HOUSE, GARDEN);
  }

  /** House and garden with these outlines, or none. */
  static Grounds with(String house, String garden) {
    return new Grounds(house, garden);
  }

  /** Puts the garden on another floor, as a roof terrace is. */
  Grounds gardenOn(String floor) {
    gardenFloor = floor;
    return this;
  }

  /** A stub-out in the garden with ties as in {@code a 13 ft, b 15 ft}. */
  Grounds tied(String ties) {
    StringBuilder list = new StringBuilder();
    for (String tie : ties.split(", ")) {
      String[] parts = tie.split(" ", 2);
      list.append(list.isEmpty() ? "" : ", ")
          .append("{from: ")
          .append(parts[0])
          .append(", distance: ")
          .append(parts[1])
          .append("}");
    }
    return place("so", "garden", "kind: stub_out, height: 6 in, ties: [" + list + "]");
  }

  Grounds place(String id, String space, String fields) {
    places +=
        "  - {id: "
            + id
            + ", name: "
            + id
            + ", space: "
            + space
            + ", use: other, "
            + fields
            + "}\n";
    return this;
  }

  /** A run from the rack to a place. */
  Grounds run(String id, String place, String fields) {
    runs +=
        "  - {id: "
            + id
            + ", label: "
            + id
            + ", cable: cat6, condition: dark,"
            + " from: {head: rack, finish: coiled}, to: {place: "
            + place
            + ", finish: coiled}"
            + fields
            + "}\n";
    return this;
  }

  Grounds test(String id, String run, String length) {
    tests +=
        "  - {id: "
            + id
            + ", run: "
            + run
            + ", date: 2026-03-01, kind: length, result: pass"
            + length
            + "}\n";
    return this;
  }

  Job job() {
    String yaml =
        """
        floors:
          - {id: ground, name: Ground floor, level: 0, elevation: 0 ft}
          - {id: upper, name: Upper floor, level: 1, elevation: 10 ft}
        spaces:
          - {id: house, name: House, floor: ground, kind: living, ceiling_height: 9 ft%s}
          - {id: loft, name: Loft, floor: upper, kind: study, outline: [[0 ft, -5 ft], [0 ft, 30 ft], [40 ft, 30 ft], [40 ft, -5 ft]]}
          - {id: garden, name: Garden, floor: %s, kind: garden%s}
        corners:
          - {id: a, name: corner A, at: [0 ft, 0 ft]}
          - {id: b, name: corner B, at: [14 ft, 0 ft]}
          - {id: c, name: corner C, at: [40 ft, 0 ft]}
          - {id: d, name: corner D, at: [0 ft, 30 ft]}
          - {id: e, name: corner E, at: [60 ft, -40 ft]}
        heads:
          - {id: rack, name: Rack, kind: rack, space: house, wall: A, offset: 10 ft, height: 4 ft, panels: []}
        """
            .formatted(house, gardenFloor, garden);
    yaml += places.isEmpty() ? "" : "places:\n" + places;
    yaml += runs.isEmpty() ? "" : "runs:\n" + runs;
    yaml += tests.isEmpty() ? "" : "tests:\n" + tests;
    return Jobs.job(yaml);
  }

  TiedPoint solved() {
    Job job = job();
    return new TieSolver(Jobs.TABLES).solve(job.place("so"), job);
  }

  Position position(String place) {
    Job job = job();
    return new Positions(job, Jobs.TABLES).of(job.place(place));
  }

  List<Assessment> answers() {
    return new LocationAssessor(Jobs.TABLES).assess(job());
  }

  Assessment answer(String subject, String topic) {
    List<Assessment> found =
        answers().stream()
            .filter(a -> a.subject().equals(subject) && a.topic().equals(topic))
            .toList();
    if (found.size() != 1) {
      throw new AssertionError(found.size() + " answers to " + topic + " of " + subject);
    }
    return found.get(0);
  }

  boolean asks(String subject, String topic) {
    return answers().stream().anyMatch(a -> a.subject().equals(subject) && a.topic().equals(topic));
  }
}
