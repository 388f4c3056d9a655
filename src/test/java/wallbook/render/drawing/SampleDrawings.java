package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wallbook.compose.drawing.ConduitSection;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.drawing.ElevationMark;
import wallbook.compose.drawing.FloorPlan;
import wallbook.compose.drawing.Frame;
import wallbook.compose.drawing.Legend;
import wallbook.compose.drawing.Mark;
import wallbook.compose.drawing.NamedOutline;
import wallbook.compose.drawing.NorthArrow;
import wallbook.compose.drawing.OneLine;
import wallbook.compose.drawing.Opening;
import wallbook.compose.drawing.Outline;
import wallbook.compose.drawing.PanelMap;
import wallbook.compose.drawing.PointM;
import wallbook.compose.drawing.RoomPlan;
import wallbook.compose.drawing.ScaleUnit;
import wallbook.compose.drawing.SitePlan;
import wallbook.compose.drawing.Spot;
import wallbook.compose.drawing.SweepPlot;
import wallbook.compose.drawing.SymbolKind;
import wallbook.compose.drawing.WallElevation;

/** Invented drawings for tests. */
final class SampleDrawings {
  private SampleDrawings() {}

  static List<Drawing> all() {
    return List.of(
        familyRoom(),
        crowded(25, RoomPlan.LabelStyle.AS_FITS),
        televisionWall(),
        floor(),
        site(),
        panel(24),
        panel(8),
        conduit(),
        legend(),
        house(),
        sweep());
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

  static WallElevation televisionWall() {
    return new WallElevation(
        frame("Wall B of the family room"),
        List.of(
            new PointM(0, 2.7), new PointM(4.2, 2.7), new PointM(4.2, 2.4), new PointM(5.5, 2.4)),
        "18 ft 1 in",
        "8 ft 10 in",
        List.of(new Opening(0.4, 0.9, 0, 2.1), new Opening(4.3, 1.0, 0.9, 2.1)),
        List.of(
            elevated(SymbolKind.TELEVISION, 2.7, 1.5, "8 ft 10 in", "59 in", "FR-01 television"),
            elevated(SymbolKind.PLATE, 2.7, 0.4, "8 ft 10 in", "16 in", "FR-02 cabinet", "4 data"),
            elevated(SymbolKind.PLATE, 2.85, 0.4, "9 ft 4 in", "16 in", "FR-15 cabinet", "2 coax"),
            elevated(SymbolKind.WALL_SPEAKER, 1.6, 1.9, "5 ft 3 in", "75 in", "FR-08 left"),
            elevated(SymbolKind.WALL_SPEAKER, 3.8, 1.9, "12 ft 6 in", "75 in", "FR-09 right"),
            elevated(SymbolKind.KEYPAD, 1.45, 1.2, "4 ft 9 in", "47 in", "FR-16 keypad"),
            elevated(SymbolKind.BLANK_PLATE, 5.2, 0.4, "17 ft 1 in", "16 in", "FR-17 blank plate")),
        ScaleUnit.FOOT);
  }

  static ElevationMark elevated(
      SymbolKind kind,
      double offsetM,
      double heightM,
      String offset,
      String height,
      String... label) {
    return new ElevationMark(kind, offsetM, heightM, offset, height, List.of(label));
  }

  static FloorPlan floor() {
    return new FloorPlan(
        frame("Ground floor"),
        List.of(
            new NamedOutline("Family room", familyRoom().outline()),
            new NamedOutline("Kitchen", Outline.rectangle(5.65, 0, 4, 6.1)),
            new NamedOutline("Hall", Outline.rectangle(0, -2.2, 3.6, 2.05)),
            new NamedOutline("Powder room", Outline.rectangle(3.75, -2.2, 1.0, 2.05)),
            new NamedOutline("Mechanical and laundry room", Outline.rectangle(3.75, 0, 1.75, 2.25)),
            new NamedOutline("Dining room", Outline.rectangle(4.9, -4.6, 4.75, 4.45)),
            new NamedOutline("Study", Outline.rectangle(0, -6, 4.75, 3.65)),
            new NamedOutline("Garage", Outline.rectangle(9.8, -4.6, 6.2, 6.6))),
        List.of(
            new FloorPlan.FloorMark(SymbolKind.RACK, new PointM(4.1, 1.9), List.of("R1 main rack")),
            new FloorPlan.FloorMark(
                SymbolKind.PANEL, new PointM(4.4, 1.2), List.of("P1 structured panel")),
            new FloorPlan.FloorMark(
                SymbolKind.DEMARCATION, new PointM(15.8, -4.2), List.of("D1 service entrance"))),
        Optional.of(new NorthArrow(24, "N")),
        ScaleUnit.FOOT);
  }

  static SitePlan site() {
    return new SitePlan(
        frame("Grounds"),
        List.of(new NamedOutline("House", Outline.rectangle(0, 0, 16, 11))),
        List.of(
            new NamedOutline("Terrace", Outline.rectangle(2, 11.1, 9, 5)),
            new NamedOutline("Pool garden", Outline.rectangle(-6, 11.1, 7.8, 11)),
            new NamedOutline("Drive", Outline.rectangle(16.1, -6, 6, 12))),
        List.of(
            new SitePlan.FixedCorner("C1", new PointM(0, 11)),
            new SitePlan.FixedCorner("C2", new PointM(16, 11)),
            new SitePlan.FixedCorner("C3", new PointM(16, 0))),
        List.of(
            siteMark(SymbolKind.STUB_OUT, 6.5, 15.4, "SO-1 terrace speakers", "C1 C2"),
            siteMark(SymbolKind.STUB_OUT, -3.1, 18.2, "SO-2 pool speakers", "C1 C2"),
            siteMark(SymbolKind.STUB_OUT, 19.0, 4.5, "SO-3 gate intercom", "C2 C3"),
            siteMark(SymbolKind.CAMERA, 16.0, 5.5, "CAM-2 drive", "")),
        Optional.of(new NorthArrow(-15, "N")),
        ScaleUnit.FOOT);
  }

  private static SitePlan.SiteMark siteMark(
      SymbolKind kind, double xM, double yM, String label, String corners) {
    return new SitePlan.SiteMark(
        kind,
        new PointM(xM, yM),
        List.of(label),
        corners.isEmpty()
            ? List.of()
            : Arrays.stream(corners.split(" "))
                .map(corner -> new SitePlan.Tie(corner, "23 ft 4 in"))
                .toList(),
        corners.isEmpty()
            ? Optional.empty()
            : Optional.of(new SitePlan.ErrorEllipse(0.9, 0.4, 30)));
  }

  static PanelMap panel(int perRow) {
    PanelMap.PortState[] states = PanelMap.PortState.values();
    List<List<PanelMap.Port>> rows = new ArrayList<>();
    for (int row = 0; row < 2; row++) {
      List<PanelMap.Port> ports = new ArrayList<>();
      for (int i = 1; i <= perRow; i++) {
        PanelMap.PortState state = states[(i * 5 + row) % 7 % 4];
        List<String> label =
            state == PanelMap.PortState.FREE
                ? List.of()
                : List.of("D-%03d".formatted(row * perRow + i), "bedroom " + i);
        ports.add(new PanelMap.Port(String.valueOf(row * perRow + i), label, state));
      }
      rows.add(ports);
    }
    return new PanelMap(
        frame("Panel PP-1"),
        "PP-1 data, main rack, unit 12",
        rows,
        Map.of(
            PanelMap.PortState.IN_SERVICE, new PanelMap.StateWord("S", "in service"),
            PanelMap.PortState.DARK, new PanelMap.StateWord("D", "dark"),
            PanelMap.PortState.DAMAGED, new PanelMap.StateWord("X", "damaged"),
            PanelMap.PortState.FREE, new PanelMap.StateWord("F", "free")));
  }

  static ConduitSection conduit() {
    ConduitSection.Cable data = new ConduitSection.Cable("Category 6, 6.1 mm", 6.1);
    ConduitSection.Cable coax = new ConduitSection.Cable("coax series 6, 6.9 mm", 6.9);
    return new ConduitSection(
        frame("Conduit K-3"),
        26.6,
        List.of(data, data, data, data, coax, coax),
        "Filled 34.4 %",
        "Bore 26.6 mm",
        "These cables cannot be drawn side by side inside the bore.");
  }

  static Legend legend() {
    return Legend.of(
        frame("Symbols"),
        List.of(SymbolKind.values()),
        kind -> kind.name().toLowerCase(Locale.ROOT).replace('_', ' '),
        "Symbols of this handover package's own; they follow no standard.");
  }

  static OneLine house() {
    List<OneLine.Group> groups =
        List.of(
            new OneLine.Group("48", "data, ground floor"),
            new OneLine.Group("12", "coax, ground floor"),
            new OneLine.Group("112", "speaker, control and sensor wires, all floors"));
    return new OneLine(
        frame("One-line diagram"),
        List.of(
            new OneLine.Band(
                "Attic",
                List.of(new OneLine.Node("A1", SymbolKind.ANTENNA, "A1 aerials", List.of()))),
            new OneLine.Band(
                "Second floor",
                List.of(
                    new OneLine.Node("P2", SymbolKind.PANEL, "P2 bedroom wing panel", groups),
                    new OneLine.Node("P3", SymbolKind.PANEL, "P3 study", groups.subList(0, 2)))),
            new OneLine.Band(
                "Ground floor",
                List.of(
                    new OneLine.Node("R1", SymbolKind.RACK, "R1 main rack", groups),
                    new OneLine.Node(
                        "R2", SymbolKind.RACK, "R2 theatre rack", groups.subList(1, 3)),
                    new OneLine.Node(
                        "K1", SymbolKind.PANEL, "K1 keypad panel", groups.subList(2, 3)))),
            new OneLine.Band(
                "Outside",
                List.of(
                    new OneLine.Node(
                        "D1", SymbolKind.DEMARCATION, "D1 service entrance", List.of()),
                    new OneLine.Node(
                        "O1", SymbolKind.STUB_OUT, "O1 pool house", groups.subList(0, 1))))),
        List.of(
            new OneLine.Link("R1", "P2", OneLine.LinkKind.TRUNK, "T1 12 data, 6 fibre"),
            new OneLine.Link("R1", "P3", OneLine.LinkKind.TRUNK, "T2 6 data"),
            new OneLine.Link("R1", "R2", OneLine.LinkKind.TRUNK, "T3 12 data, 12 fibre"),
            new OneLine.Link("A1", "R1", OneLine.LinkKind.CONDUIT, "K-1 conduit, 53 mm"),
            new OneLine.Link("D1", "R1", OneLine.LinkKind.SERVICE, "S1 fibre service"),
            new OneLine.Link("R1", "O1", OneLine.LinkKind.CONDUIT, "K-2 conduit, 27 mm")));
  }

  static SweepPlot sweep() {
    List<SweepPlot.Sample> limit = new ArrayList<>();
    List<SweepPlot.Sample> measured = new ArrayList<>();
    for (int i = 0; i <= 400; i++) {
      double f = Math.pow(250, i / 400.0);
      limit.add(new SweepPlot.Sample(f, 74.3 - 15 * Math.log10(f)));
      measured.add(
          new SweepPlot.Sample(
              f, 80 - 15 * Math.log10(f) + 4 * Math.sin(i / 6.0) * Math.sin(i / 47.0)));
    }
    return new SweepPlot(
        frame("Near-end crosstalk"),
        "Frequency, MHz",
        "Loss, dB",
        List.of(
            new SweepPlot.Curve("limit", SweepPlot.CurveKind.LIMIT, limit),
            new SweepPlot.Curve("measured, worst pair", SweepPlot.CurveKind.MEASURED, measured)),
        Optional.of(new SweepPlot.Callout(measured.get(178), "a point of the curve")));
  }
}
