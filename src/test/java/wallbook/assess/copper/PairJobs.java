package wallbook.assess.copper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.quantity.Frequency;
import wallbook.record.Job;
import wallbook.record.LossDirection;
import wallbook.record.PairParameter;
import wallbook.record.SweepPoint;

/** Jobs of one balanced-pair run, for tests, and what comes of assessing them. */
final class PairJobs {
  static final String RUN = "r1";
  static final String LIMIT_SIX =
      "limit: {standard: tia_568_2_d, category: cat6, configuration: permanent_link}";

  private PairJobs() {}

  /** A run of a catalogue cable, terminated at both ends, with further keys and tests as YAML. */
  static Job job(String cable, String runKeys, String... tests) {
    return Jobs.job(yaml(cable, runKeys, tests));
  }

  static String yaml(String cable, String runKeys, String... tests) {
    StringBuilder yaml =
        new StringBuilder(
            """
            floors: [{id: ground, name: Ground floor, level: 0, elevation: 0 ft}]
            spaces: [{id: den, name: Den, floor: ground, kind: living, ceiling_height: 9 ft}]
            heads:
              - {id: rack, name: Rack, kind: rack, space: den,
                 panels: [{id: P1, name: Patch panel, kind: patch_panel, ports: 24}]}
            places: [{id: p1, name: Plate, space: den, kind: wall_plate, use: data}]
            cables:
              - {id: plain, name: Unknown pairs, medium: balanced_pair}
              - {id: two-pair, name: Two pairs, medium: balanced_pair, category: cat5e, pairs: 2}
              - {id: cat6-screened, name: Screened, medium: balanced_pair, category: cat6, pairs: 4,
                 screened: yes, gauge: 23}
              - {id: cat6-stranded, name: Stranded, medium: balanced_pair, category: cat6, pairs: 4,
                 screened: no, gauge: 24, stranded: yes}
            runs:
              - id: r1
                label: DEN-01
                cable: %s
                from: {head: rack, panel: P1, port: 1, finish: terminated}
                to: {place: p1, jack: "1", finish: terminated}
            """
                .formatted(cable));
    for (String key : runKeys.split("\n")) {
      if (!key.isBlank()) {
        yaml.append("    ").append(key.strip()).append("\n");
      }
    }
    if (!runKeys.contains("condition:")) {
      yaml.append("    condition: in_service\n");
    }
    if (tests.length > 0) {
      yaml.append("tests:\n");
    }
    for (int i = 0; i < tests.length; i++) {
      yaml.append("  - {id: t%d, run: r1, %s}\n".formatted(i + 1, tests[i].replace("\n", " ")));
    }
    return yaml.toString();
  }

  /** The same job with a sweep for one of its tests. */
  static Job withSweep(Job job, String test, List<SweepPoint> sweep) {
    return new Job(job.record(), List.copyOf(job.cables()), Map.of(test, sweep), Map.of());
  }

  static List<Assessment> assess(Job job) {
    return new CopperAssessor(Jobs.TABLES).assess(job);
  }

  /** The one assessment of a topic. */
  static Assessment only(Job job, String topic) {
    List<Assessment> found = all(job, topic);
    if (found.size() != 1) {
      throw new AssertionError(found.size() + " assessments of " + topic);
    }
    return found.get(0);
  }

  static List<Assessment> all(Job job, String topic) {
    return assess(job).stream().filter(a -> a.topic().equals(topic)).toList();
  }

  static Optional<Assessment> any(Job job, String topic) {
    return all(job, topic).stream().findFirst();
  }

  static SweepPoint point(PairParameter parameter, String pair, double megahertz, double db) {
    return point(parameter, pair, megahertz, db, LossDirection.FROM_TO);
  }

  static SweepPoint point(
      PairParameter parameter, String pair, double megahertz, double db, LossDirection from) {
    return new SweepPoint(Frequency.megahertz(megahertz), parameter, pair, db, from);
  }

  /**
   * A whole sweep, every pair and both ends, that keeps a distance from the lines of a category.
   */
  static List<SweepPoint> wholeSweep(List<LimitLine> lines, double marginDb, double... megahertz) {
    List<SweepPoint> points = new ArrayList<>();
    for (LimitLine line : lines) {
      for (String pair : pairs(line.parameter())) {
        for (LossDirection direction : LossDirection.values()) {
          for (double f : megahertz) {
            double limit = line.at(Frequency.megahertz(f)).orElseThrow().value().inDecibels();
            boolean loss = line.parameter() == PairParameter.INSERTION_LOSS;
            double value = loss ? limit - marginDb : limit + marginDb;
            points.add(point(line.parameter(), pair, f, value, direction));
          }
        }
      }
    }
    return points;
  }

  static List<String> pairs(PairParameter parameter) {
    return parameter == PairParameter.NEXT || parameter == PairParameter.ACRF
        ? List.of("12-36", "12-45", "12-78", "36-45", "36-78", "45-78")
        : List.of("12", "36", "45", "78");
  }
}
