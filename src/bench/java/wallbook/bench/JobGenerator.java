package wallbook.bench;

import static wallbook.bench.Room.metres;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Writes the record of an invented building that passes the checks without an error.
 *
 * <pre>{@code String yaml = new JobGenerator("big-house", 2000).yaml();}</pre>
 */
public final class JobGenerator {
  private final String id;
  private final Building building;
  private final StringBuilder out = new StringBuilder();

  /**
   * @param id id of the job
   * @param runs how many cables it has
   */
  public JobGenerator(String id, int runs) {
    this.id = id;
    this.building = new Building(runs);
  }

  /** The record. */
  public String yaml() {
    out.setLength(0);
    writeJob();
    writeSpaces();
    writeHeads();
    writePlaces();
    list("runs", building.runs().stream().map(RunLines::run).toList());
    list(
        "fibres",
        building.runs().stream().filter(r -> r.sort().isFibre()).map(RunLines::fibre).toList());
    writeConduits();
    list("stub_outs", building.stubOuts().stream().map(RunLines::stubOut).toList());
    list("tests", building.runs().stream().map(TestLines::test).toList());
    writeZones();
    list("systems", Systems.lines());
    return out.toString();
  }

  private void list(String name, List<String> lines) {
    if (!lines.isEmpty()) {
      out.append(name).append(":\n");
      lines.forEach(line -> out.append(line).append('\n'));
    }
  }

  private void writeJob() {
    out.append(
        """
        # An invented building, made to measure the program by. No such job exists.
        format: 1
        job:
          id: %s
          title: Invented building %s
          address: 1 Example Road, Inventown (an invented address)
          handover: 2026-05-14
          revision: 1
          history:
            - {revision: 1, date: 2026-05-14, by: Alder Low Voltage (invented), what: First issue}
          units: metric
          language: en-US
          paper: a4
          house_area: %d m2
          attic_high: 50 °C
          invented: yes
          parties:
            - {role: owner, name: R. and T. Sample (invented), phone: 555-0101}
            - {role: integrator, name: Alder Low Voltage (invented), phone: 555-0102, licence: LV-00000 (invented)}
            - {role: builder, name: Quarry Hill Builders (invented), phone: 555-0103}
            - {role: electrician, name: Plain Wire Electric (invented), phone: 555-0104, licence: EL-00000 (invented)}
            - {role: landscaper, name: Greenbank Gardens (invented), phone: 555-0105}
          jurisdiction: Building department of the (invented) county of Reedmere
          codes:
            - NEC 2023 as adopted by the (invented) county of Reedmere
        floors:
          - {id: outside, name: Grounds, level: 0, elevation: 0 m}
        """
            .formatted(id, id, Math.round(building.storeys() * Room.width() * Room.depth())));
    for (int storey = 1; storey <= building.storeys(); storey++) {
      out.append(
          "  - {id: storey-%d, name: Storey %d, level: %d, elevation: %s}\n"
              .formatted(storey, storey, storey, metres((storey - 1) * Room.STOREY_METRES)));
    }
  }

  private void writeSpaces() {
    out.append("spaces:\n");
    out.append(
        "  - {id: garden, name: Garden, floor: outside, kind: garden, outline: "
            + Room.corners(0, -20, Room.width(), 0)
            + "}\n");
    for (int storey = 1; storey <= building.storeys(); storey++) {
      Room closet = new Room(storey, Room.CLOSET);
      space("hall-" + storey, "Hall of storey " + storey, storey, "hall", Room.hallOutline());
      space("closet-" + storey, "Closet of storey " + storey, storey, "closet", closet.outline());
    }
    for (Room room : building.rooms()) {
      RoomSort sort = Building.sort(room);
      space(
          "s-" + room.number(),
          sort.title() + " " + room.number(),
          room.storey(),
          sort.kind(),
          room.outline());
      out.append("    openings:\n");
      out.append(
          "      - {wall: %s, kind: door, offset: 0.4 m, width: 0.9 m, head: 2.03 m}\n"
              .formatted(room.hallWall()));
      out.append(
          "      - {wall: %s, kind: window, offset: 1.75 m, width: 1.5 m, sill: 0.9 m, head: 2.1 m}\n"
              .formatted(room.outerWall()));
    }
  }

  private void space(String space, String name, int storey, String kind, String outline) {
    out.append("  - id: ").append(space).append('\n');
    out.append("    name: ").append(name).append('\n');
    out.append("    floor: storey-").append(storey).append('\n');
    out.append("    kind: ").append(kind).append('\n');
    out.append("    outline: ").append(outline).append('\n');
    out.append("    ceiling_height: 2.7 m\n");
  }

  private void writeHeads() {
    out.append(
        """
        corners:
          - {id: corner-sw, name: south-west corner of the foundation, at: [0 m, 0 m]}
          - {id: corner-se, name: south-east corner of the foundation, at: [%s, 0 m]}
        heads:
        """
            .formatted(metres(Room.width())));
    for (int storey = 1; storey <= building.storeys(); storey++) {
      out.append(
          """
            - id: rack-%d
              name: Rack of storey %d
              kind: rack
              space: closet-%d
              wall: A
              offset: 3 m
              height: 1.2 m
              panels:
          """
              .formatted(storey, storey, storey));
      building.panels(storey).lines().forEach(line -> out.append(line).append('\n'));
    }
  }

  private void writePlaces() {
    out.append("places:\n");
    building.places().forEach(place -> out.append(PlaceLines.place(place)).append('\n'));
    for (int i = 0; i < building.stubOuts().size(); i++) {
      out.append(PlaceLines.stubOut(i, building.stubOut(i))).append('\n');
    }
  }

  private void writeConduits() {
    out.append("conduits:\n");
    for (int i = 0; i < building.stubOuts().size(); i++) {
      out.append(ConduitLines.toStubOut(building.stubOuts().get(i), i, building.stubOut(i)));
    }
    building.places().stream()
        .filter(p -> Building.hasConduit(p.room()) && p.plan().use().equals("television"))
        .forEach(p -> out.append(ConduitLines.toTelevision(p, contents(p))));
  }

  private List<String> contents(WiredPlace place) {
    return building.runs().stream()
        .filter(r -> r.place().equals(place.id()) && !r.conduit().isEmpty())
        .map(WiredRun::id)
        .toList();
  }

  private void writeZones() {
    out.append("zones:\n");
    building.runs().stream()
        .filter(r -> r.sort() == RunSort.MUSIC)
        .collect(
            Collectors.groupingBy(
                r -> r.label().substring(0, r.label().indexOf('-')),
                LinkedHashMap::new,
                Collectors.toList()))
        .forEach((room, runs) -> out.append(RunLines.zone(room, runs)));
    for (WiredRun run : building.stubOuts()) {
      out.append(RunLines.gardenZone(run));
    }
  }
}
