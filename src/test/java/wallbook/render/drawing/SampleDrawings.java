package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.drawing.Frame;
import wallbook.compose.drawing.Mark;
import wallbook.compose.drawing.NamedOutline;
import wallbook.compose.drawing.NorthArrow;
import wallbook.compose.drawing.Outline;
import wallbook.compose.drawing.PointM;
import wallbook.compose.drawing.RoomPlan;
import wallbook.compose.drawing.ScaleUnit;
import wallbook.compose.drawing.Spot;
import wallbook.compose.drawing.SymbolKind;

/** Invented drawings for tests. */
final class SampleDrawings {
  private SampleDrawings() {}

  static List<Drawing> all() {
    return List.of(familyRoom(), crowded(25, RoomPlan.LabelStyle.AS_FITS));
  }

  static Frame frame(String title) {
    return Frame.pageWide(title, title + ", invented for a test.", 230);
  }

  static Mark onWall(SymbolKind kind, int wall, double offsetM, String... label) {
    return new Mark(kind, new Spot.OnWall(wall, offsetM), List.of(label));
  }

  static Mark at(SymbolKind kind, double xM, double yM, String... label) {
    return new Mark(kind, new Spot.At(new PointM(xM, yM)), List.of(label));
  }

  static RoomPlan familyRoom() {
    Outline room =
        new Outline(
            List.of(
                new PointM(0, 0),
                new PointM(0, 6.1),
                new PointM(5.5, 6.1),
                new PointM(5.5, 2.4),
                new PointM(3.6, 2.4),
                new PointM(3.6, 0)));
    return new RoomPlan(
        frame("Family room"),
        room,
        List.of("20 ft 0 in", "18 ft 1 in", "12 ft 2 in", "6 ft 3 in", "7 ft 10 in", "11 ft 10 in"),
        List.of(
            onWall(SymbolKind.TELEVISION, 1, 2.7, "FR-01 television", "2 data, 2 coax, 2 fibre"),
            onWall(SymbolKind.PLATE, 1, 2.7, "FR-02 cabinet", "4 data"),
            onWall(SymbolKind.PLATE, 0, 1.2, "FR-03 desk", "2 data"),
            onWall(SymbolKind.BLANK_PLATE, 0, 4.6, "FR-04 blank plate", "1 data coiled"),
            onWall(SymbolKind.KEYPAD, 5, 0.5, "FR-05 keypad"),
            onWall(SymbolKind.VOLUME_CONTROL, 5, 0.5, "FR-06 volume control"),
            onWall(SymbolKind.SHADE, 2, 1.8, "FR-07 shade"),
            onWall(SymbolKind.WALL_SPEAKER, 1, 0.6, "FR-08 left"),
            onWall(SymbolKind.WALL_SPEAKER, 1, 4.9, "FR-09 right"),
            at(SymbolKind.CEILING_SPEAKER, 1.2, 1.4, "FR-10 surround left"),
            at(SymbolKind.CEILING_SPEAKER, 3.0, 1.4, "FR-11 surround right"),
            at(SymbolKind.ACCESS_POINT, 2.4, 3.4, "FR-12 access point"),
            onWall(SymbolKind.CONTACT, 4, 1.0, "FR-13 door contact"),
            onWall(SymbolKind.IN_WALL_COIL, 3, 0.9, "FR-14 in-wall coil", "16/2 speaker, 10 ft")),
        List.of(
            new NamedOutline("Kitchen", Outline.rectangle(5.65, 0, 4, 6.1)),
            new NamedOutline("Hall", Outline.rectangle(0, -2.2, 3.6, 2.05))),
        Optional.of(new NorthArrow(24, "N")),
        ScaleUnit.FOOT,
        RoomPlan.LabelStyle.AS_FITS);
  }

  static RoomPlan crowded(int count, RoomPlan.LabelStyle style) {
    Outline room = Outline.rectangle(0, 0, 4.2, 3.6);
    SymbolKind[] kinds = SymbolKind.values();
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      marks.add(
          onWall(
              kinds[i % kinds.length],
              1,
              4.2 * (i + 0.5) / count,
              "OF-%02d".formatted(i + 1),
              "office run " + (i + 1)));
    }
    return new RoomPlan(
        frame("Office"),
        room,
        List.of("3.60 m", "4.20 m", "3.60 m", "4.20 m"),
        marks,
        List.of(),
        Optional.of(new NorthArrow(-60, "N")),
        ScaleUnit.METRE,
        style);
  }
}
