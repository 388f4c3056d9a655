package wallbook.bench;

import java.util.List;
import java.util.stream.Collectors;

/** Cables and what is told of them, as the record writes it. */
final class RunLines {
  private RunLines() {}

  static String run(WiredRun run) {
    RunSort sort = run.sort();
    StringBuilder out = new StringBuilder();
    line(out, "  - id: ", run.id());
    line(out, "    label: ", run.label());
    line(out, "    cable: ", sort.cable());
    line(
        out,
        "    from: ",
        "{head: rack-%d, panel: %s, port: %d, %s, slack: 3 m}"
            .formatted(run.storey(), run.panel(), run.port(), finish(sort, sort.nearConnector())));
    line(
        out,
        "    to: ",
        "{place: %s,%s %s, slack: %s}"
            .formatted(
                run.place(),
                sort.farConnector().isEmpty() ? "" : " jack: " + run.jack() + ",",
                finish(sort, sort.farConnector()),
                sort == RunSort.GARDEN_MUSIC ? "4.5 m" : "0.5 m"));
    line(out, "    length: ", Decimals.of(run.lengthMetres(), 1) + " m");
    line(out, "    length_by: ", sort.isPairs() ? "tester" : "foot_marks");
    line(out, "    condition: ", sort.darkReason().isEmpty() ? "in_service" : "dark");
    if (!sort.darkReason().isEmpty()) {
      line(out, "    dark_reason: ", sort.darkReason());
    }
    line(out, "    system: ", sort.system());
    line(out, "    serves: ", '"' + run.serves() + '"');
    if (!run.conduit().isEmpty()) {
      line(out, "    conduits: ", "[" + run.conduit() + "]");
    }
    line(out, "    environments: ", environments(sort));
    feed(sort, out);
    return out.substring(0, out.length() - 1);
  }

  private static String environments(RunSort sort) {
    return sort == RunSort.GARDEN_MUSIC ? "[in_wall, buried, outdoor_conduit]" : "[in_wall]";
  }

  private static void feed(RunSort sort, StringBuilder out) {
    if (sort == RunSort.SHADE) {
      line(out, "    feed: ", "{voltage: 24 V, current: 1.5 A, conductors_in_parallel: 2}");
    } else if (sort == RunSort.KEYPAD) {
      line(out, "    feed: ", "{voltage: 12 V, current: 150 mA}");
    }
  }

  private static void line(StringBuilder out, String key, String value) {
    out.append(key).append(value).append('\n');
  }

  private static String finish(RunSort sort, String connector) {
    if (connector.isEmpty()) {
      return "finish: coiled";
    }
    return "finish: terminated, connector: "
        + connector
        + (sort.isPairs() ? ", wiring: t568b" : "");
  }

  static String fibre(WiredRun run) {
    return "  - {id: f-%s, run: %s, connectors_made: %d, connectors_planned: 2, splices_made: 0,"
            .formatted(run.id(), run.id(), run.sort() == RunSort.LIT_FIBRE ? 2 : 0)
        + " splices_planned: 0, where_found: \"behind the plate, yellow tape\"}";
  }

  static String stubOut(WiredRun run) {
    return """
      - id: so-%s
        place: %s
        conduit: %s
        cover: 0.45 m
        coiled: [{run: %s, length: 4.5 m}]
        zone: z-%s
        obstacles: [edge of the terrace 2 m towards the house]
        line_still_to_lay: about 15 m of direct-burial cable to two loudspeakers
        line_by: landscaper\
    """
        .formatted(run.id(), run.place(), run.conduit(), run.id(), run.id());
  }

  static String zone(String room, List<WiredRun> runs) {
    return """
      - id: z-%s
        name: Music of %s
        kind: audio
        spaces: [s-%s]
        speakers:
    %s
        amplifier_minimum: 4 ohm
        amplifier_damping: 100
    """
        .formatted(
            room,
            room,
            room,
            runs.stream()
                .map(
                    r ->
                        "      - {place: %s, run: %s, impedance: 8 ohm, power: 40 W}"
                            .formatted(r.place(), r.id()))
                .collect(Collectors.joining("\n")));
  }

  static String gardenZone(WiredRun run) {
    return """
      - id: z-%s
        name: Garden, %s
        kind: landscape
        spaces: [garden]
        speakers:
          - {place: %s, run: %s, impedance: 8 ohm, count: 2, power: 40 W, conductors_in_parallel: 2}
        amplifier_minimum: 4 ohm
    """
        .formatted(run.id(), run.label(), run.place(), run.id());
  }
}
