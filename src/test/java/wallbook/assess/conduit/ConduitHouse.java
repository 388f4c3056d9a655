package wallbook.assess.conduit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.record.Cable;
import wallbook.record.Conduit;
import wallbook.record.Job;

/**
 * An invented house with one conduit {@code c} from a rack to an attic, for tests. What lies in it
 * is given by cable types; each becomes a run of its own.
 */
final class ConduitHouse {
  /** Fields of a conduit of 1 in ENT that was proved with a mandrel as wide as its bore. */
  static final String PROVED_ENT_1 =
      "type: ent, trade_size: '1', pull_string: both_ends, condition: clear,"
          + " proved: {date: 2026-02-11, by: mandrel, size: 1 in}";

  private static final String FRAME =
      """
      floors:
        - {id: ground, name: Ground floor, level: 0, elevation: 0 ft}
      spaces:
        - {id: util, name: Utility, floor: ground, kind: utility}
        - {id: attic, name: Attic, floor: ground, kind: attic}
      heads:
        - {id: rack, name: Rack, kind: rack, space: util, panels: []}
      """;

  private final String conduit;
  private final List<String> contents = new ArrayList<>();
  private String cables = "";
  private String places = "";
  private String runExtra = "";

  private ConduitHouse(String conduit) {
    this.conduit = conduit;
  }

  /** A house whose conduit has these fields, beside id, label, name and ends. */
  static ConduitHouse with(String fields) {
    return new ConduitHouse(fields);
  }

  /** A 1 in ENT, proved, with further fields. */
  static ConduitHouse ent1(String further) {
    return with(PROVED_ENT_1 + (further.isEmpty() ? "" : ", " + further));
  }

  ConduitHouse holding(String... cableTypes) {
    contents.addAll(List.of(cableTypes));
    return this;
  }

  /** Adds a cable type of the job's own, given by its fields beside id and name. */
  ConduitHouse cable(String id, String fields) {
    cables += "  - {id: " + id + ", name: " + id + ", " + fields + "}\n";
    return this;
  }

  ConduitHouse place(String id, String kind) {
    places += "  - {id: " + id + ", name: Box, space: util, kind: " + kind + ", use: conduit}\n";
    return this;
  }

  /** Adds fields to every run. */
  ConduitHouse runsAlso(String fields) {
    runExtra = ", " + fields;
    return this;
  }

  Job job() {
    StringBuilder yaml = new StringBuilder(FRAME);
    yaml.append("places:\n  - {id: p, name: Plate, space: util, kind: box, use: data}\n");
    yaml.append(places);
    yaml.append(cables.isEmpty() ? "" : "cables:\n" + cables);
    yaml.append(contents.isEmpty() ? "" : "runs:\n");
    for (int i = 1; i <= contents.size(); i++) {
      yaml.append("  - {id: r").append(i).append(", label: R").append(i);
      yaml.append(", cable: ").append(contents.get(i - 1)).append(", condition: dark");
      yaml.append(", from: {head: rack, finish: coiled}, to: {place: p, finish: coiled}");
      yaml.append(", conduits: [c]").append(runExtra).append("}\n");
    }
    yaml.append("conduits:\n  - {id: c, label: C, name: Conduit, ");
    yaml.append(conduit.contains("from:") ? "" : "from: {head: rack}, to: {space: attic}, ");
    yaml.append(conduit).append("}\n");
    return Jobs.job(yaml.toString());
  }

  Conduit conduit() {
    return job().conduit("c");
  }

  /** Every answer about the conduit and the boxes. */
  List<Assessment> answers() {
    return ConduitAssessor.of(Jobs.TABLES).assess(job());
  }

  /** The one answer to a question. */
  Assessment answer(String topic) {
    List<Assessment> found =
        answers().stream().filter(a -> a.topic().equals(topic)).collect(Collectors.toList());
    if (found.size() != 1) {
      throw new AssertionError(found.size() + " answers to " + topic);
    }
    return found.get(0);
  }

  /** Whether the question is asked at all. */
  boolean asks(String topic) {
    return answers().stream().anyMatch(a -> a.topic().equals(topic));
  }

  /** A cable type described by its fields. */
  static Cable cableOf(String fields) {
    return ent1("").cable("x", fields).job().cable("x");
  }
}
