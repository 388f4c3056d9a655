package wallbook.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * An invented building with so many cables: storeys of twelve rooms, a rack on each, stub-outs in
 * the garden. The same number gives the same building.
 */
final class Building {
  private static final List<RoomSort> SORTS =
      List.of(
          RoomSort.LIVING,
          RoomSort.KITCHEN,
          RoomSort.STUDY,
          RoomSort.BEDROOM,
          RoomSort.BEDROOM,
          RoomSort.MEDIA,
          RoomSort.BEDROOM,
          RoomSort.LIVING,
          RoomSort.STUDY,
          RoomSort.BEDROOM,
          RoomSort.KITCHEN,
          RoomSort.BEDROOM);
  private static final int RUNS_FOR_A_STUB_OUT = 100;
  private static final double SLACK_METRES = 3.5;

  private final int wanted;
  private final List<Room> rooms = new ArrayList<>();
  private final List<WiredPlace> places = new ArrayList<>();
  private final List<WiredRun> runs = new ArrayList<>();
  private final List<WiredRun> stubOuts = new ArrayList<>();
  private final Map<Integer, Panels> panels = new LinkedHashMap<>();

  /**
   * @param wanted how many cables
   */
  Building(int wanted) {
    this.wanted = wanted;
    int inGarden = Math.max(1, wanted / RUNS_FOR_A_STUB_OUT);
    for (int i = 0; i < inGarden && i < wanted; i++) {
      wireStubOut(i);
    }
    for (int storey = 1; runs.size() < wanted; storey++) {
      for (int cell = 0; cell < Room.CELLS && runs.size() < wanted; cell++) {
        if (cell != Room.CLOSET) {
          wireRoom(new Room(storey, cell));
        }
      }
    }
  }

  static RoomSort sort(Room room) {
    return SORTS.get(room.cell());
  }

  private void wireRoom(Room room) {
    rooms.add(room);
    char letter = 'A';
    int inRoom = 0;
    for (PlacePlan plan : sort(room).places()) {
      if (runs.size() == wanted) {
        return;
      }
      WiredPlace place =
          new WiredPlace("p-" + room.number() + "-" + places.size(), room, plan, letter);
      places.add(place);
      letter += plan.isPlate() ? 1 : 0;
      int jack = 1;
      for (RunSort sort : plan.runs()) {
        if (runs.size() < wanted) {
          inRoom++;
          runs.add(run(place, sort, jack, inRoom));
          jack += sort.farConnector().isEmpty() ? 0 : 1;
        }
      }
    }
  }

  private WiredRun run(WiredPlace place, RunSort sort, int jack, int inRoom) {
    Room room = place.room();
    Panels.Port port = panels.computeIfAbsent(room.storey(), s -> new Panels()).next(sort.panel());
    double up = 2 * (Room.STOREY_METRES - place.plan().heightMetres());
    double length = Room.rack(room.storey()).wayTo(room.spot(place.plan())) + up + SLACK_METRES;
    boolean inConduit =
        hasConduit(room)
            && place.plan().use().equals("television")
            && (sort.isPairs() || sort == RunSort.OFF_AIR);
    return new WiredRun(
        "r-" + room.number() + "-" + inRoom,
        "%s-%02d".formatted(room.number(), inRoom),
        sort,
        room.storey(),
        port.panel(),
        port.number(),
        place.id(),
        jack,
        Math.ceil(length * 10) / 10,
        inConduit ? "c-" + room.number() : "",
        place.plan().name().toLowerCase(Locale.ROOT) + " of " + room.number());
  }

  /** Whether a conduit leads to the television of a room. */
  static boolean hasConduit(Room room) {
    return sort(room) == RoomSort.LIVING;
  }

  private void wireStubOut(int index) {
    Panels.Port port = panels.computeIfAbsent(1, s -> new Panels()).next("B");
    Spot spot = stubOut(index);
    WiredRun run =
        new WiredRun(
            "r-garden-" + (index + 1),
            "GDN-%02d".formatted(index + 1),
            RunSort.GARDEN_MUSIC,
            1,
            port.panel(),
            port.number(),
            "p-garden-" + (index + 1),
            1,
            Math.ceil(10 * (Room.rack(1).wayTo(spot) + 10)) / 10,
            "c-garden-" + (index + 1),
            "garden music " + (index + 1));
    stubOuts.add(run);
    runs.add(run);
  }

  /** Where a stub-out comes up, south of the building. */
  Spot stubOut(int index) {
    int count = Math.max(1, wanted / RUNS_FOR_A_STUB_OUT);
    return new Spot(3 + index * 24.0 / count, -6.0 - index % 7, 0);
  }

  List<Room> rooms() {
    return rooms;
  }

  List<WiredPlace> places() {
    return places;
  }

  List<WiredRun> runs() {
    return runs;
  }

  /** Cables that end in the garden, which are runs too. */
  List<WiredRun> stubOuts() {
    return stubOuts;
  }

  int storeys() {
    return rooms.stream().mapToInt(Room::storey).max().orElse(1);
  }

  /** The panels of the rack of a storey. */
  Panels panels(int storey) {
    return panels.getOrDefault(storey, new Panels());
  }
}
