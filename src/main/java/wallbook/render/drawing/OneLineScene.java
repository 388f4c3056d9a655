package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wallbook.compose.drawing.OneLine;

/**
 * Lays out the house in layers: a band for each floor, its heads side by side, a gutter under them
 * for the lines that leave, and one channel at the right where lines pass from floor to floor, on
 * tracks that never hold two lines side by side. Lines carry numbers, a table beneath names them.
 */
final class OneLineScene {
  private static final double NAME_MM = 24;
  private static final double TRACK_MM = 4.4;
  private static final double GAP_MM = 4;
  private static final double DISC_MM = 1.9;
  private static final int NODES_IN_ROW = 3;
  private static final double PAD_MM = 1.2;

  /** Distances of lines side by side under a row, the most legible first. */
  private static final double[] PITCHES_MM = {2.2, 1.8, 1.4};

  private final OneLine house;
  private final double pitch;
  private final double width;
  private final Canvas canvas = new Canvas();
  private final Map<String, Stand> stands = new LinkedHashMap<>();
  private final List<Double> gutterTop = new ArrayList<>();
  private final Map<String, Integer> portsUsed = new LinkedHashMap<>();
  private final List<Integer> tracksUsed = new ArrayList<>();
  private final OneLineTracks tracks;

  private OneLineScene(OneLine house, double pitch) {
    this.house = house;
    this.pitch = pitch;
    this.width = house.frame().widthMm();
    this.tracks = OneLineTracks.of(house, NODES_IN_ROW);
  }

  /** Lines closer together the higher the diagram; where nothing fits, it is printed smaller. */
  static Scene draw(OneLine house) {
    Scene scene = null;
    for (double pitch : PITCHES_MM) {
      scene = new OneLineScene(house, pitch).draw();
      if (scene.heightMm() <= house.frame().maxHeightMm()) {
        return scene;
      }
    }
    return scene;
  }

  /** Where a node stands: its box and its row of nodes. */
  private record Stand(Box box, int row) {}

  private Scene draw() {
    double channel = width - 1 - TRACK_MM * tracks.count();
    double y = 0.5;
    for (OneLine.Band band : house.bands()) {
      y = band(band, y, channel);
    }
    for (int i = 0; i < house.links().size(); i++) {
      link(i, channel + TRACK_MM * (tracks.of(i) + 0.5));
    }
    double bottom = y + 3;
    if (!house.links().isEmpty()) {
      List<List<String>> names = house.links().stream().map(link -> List.of(link.label())).toList();
      KeyTable table = KeyTable.of(names, width, house.frame().maxHeightMm() / 3);
      table.draw(canvas, bottom);
      bottom += table.heightMm();
    }
    return canvas.scene(width, bottom);
  }

  private double band(OneLine.Band band, double top, double channel) {
    TextBlock name = TextBlock.wrapped(List.of(band.name()), Item.Type.NAME, NAME_MM - 3);
    double y = top + 3;
    Box nameBox = new Box(2, y, 2 + name.widthMm(), y + name.heightMm());
    List<List<OneLine.Node>> rows = new ArrayList<>();
    for (int i = 0; i < band.nodes().size(); i += NODES_IN_ROW) {
      rows.add(band.nodes().subList(i, Math.min(band.nodes().size(), i + NODES_IN_ROW)));
    }
    for (List<OneLine.Node> row : rows) {
      double below = y;
      double each = (channel - NAME_MM - GAP_MM * NODES_IN_ROW) / NODES_IN_ROW;
      for (int i = 0; i < row.size(); i++) {
        double left = NAME_MM + i * (each + GAP_MM);
        below = Math.max(below, node(row.get(i), new Pt(left, y), each));
      }
      gutterTop.add(below);
      tracksUsed.add(0);
      y = below + gutter(row) + 2;
    }
    y = Math.max(y, nameBox.bottom() + 2);
    canvas.line(Ink.line(0.35), new Pt(0.5, top), new Pt(width - 0.5, top));
    canvas.line(Ink.line(0.35), new Pt(0.5, y), new Pt(width - 0.5, y));
    canvas.block(name, nameBox, Item.Align.LEFT);
    return y;
  }

  /** Height of the gutter under a row: a track for each line that starts or ends in it. */
  private double gutter(List<OneLine.Node> row) {
    List<String> ids = row.stream().map(OneLine.Node::id).toList();
    long touching =
        house.links().stream()
            .filter(link -> ids.contains(link.from()) || ids.contains(link.to()))
            .count();
    return 1.5 + touching * pitch;
  }

  private double node(OneLine.Node node, Pt corner, double boxWidth) {
    double textLeft = corner.x() + PAD_MM + Symbols.SIZE_MM + 1;
    TextBlock name =
        TextBlock.wrapped(
            List.of(node.name()),
            Item.Type.LABEL_BOLD,
            boxWidth - 2 * PAD_MM - Symbols.SIZE_MM - 1);
    double y = corner.y() + PAD_MM;
    canvas.block(
        name,
        new Box(textLeft, y + 0.4, textLeft + name.widthMm(), y + 0.4 + name.heightMm()),
        Item.Align.LEFT);
    canvas.symbol(
        node.symbol(), new Pt(corner.x() + PAD_MM + Symbols.SIZE_MM / 2, y + Symbols.SIZE_MM / 2));
    y += Math.max(Symbols.SIZE_MM, name.heightMm() + 0.4) + 1;
    double countMm =
        node.groups().stream()
            .mapToDouble(group -> TextMeasure.widthMm(group.count(), Item.Type.LABEL_BOLD))
            .max()
            .orElse(0);
    for (OneLine.Group group : node.groups()) {
      double countRight = corner.x() + PAD_MM + countMm;
      canvas.words(
          new Pt(countRight, y + TextMeasure.ascentMm(Item.Type.LABEL_BOLD)),
          group.count(),
          Item.Type.LABEL_BOLD,
          Item.Align.RIGHT);
      TextBlock what =
          TextBlock.wrapped(
              List.of(group.what()), Item.Type.LABEL, boxWidth - countMm - 2 * PAD_MM - 1.2);
      double left = countRight + 1.2;
      canvas.block(
          what, new Box(left, y, left + what.widthMm(), y + what.heightMm()), Item.Align.LEFT);
      y += what.heightMm() + 0.3;
    }
    Box box = new Box(corner.x(), corner.y(), corner.x() + boxWidth, y + PAD_MM - 0.3);
    canvas.box(Ink.SYMBOL, box);
    stands.put(node.id(), new Stand(box, gutterTop.size()));
    return box.bottom();
  }

  private void link(int index, double trackX) {
    OneLine.Link link = house.links().get(index);
    Pt from = port(link.from());
    Pt to = port(link.to());
    int fromRow = stands.get(link.from()).row();
    int toRow = stands.get(link.to()).row();
    double fromY = track(fromRow);
    Ink ink =
        switch (link.kind()) {
          case TRUNK -> Ink.line(0.5);
          case CONDUIT -> Ink.MEDIUM.dashed(Ink.Dash.DASHED);
          case SERVICE -> Ink.MEDIUM.dashed(Ink.Dash.CHAIN);
        };
    Pt disc;
    if (fromRow == toRow) {
      canvas.line(ink, from, new Pt(from.x(), fromY), new Pt(to.x(), fromY), to);
      disc = new Pt((from.x() + to.x()) / 2, fromY);
    } else {
      double toY = track(toRow);
      canvas.line(
          ink,
          List.of(
              from,
              new Pt(from.x(), fromY),
              new Pt(trackX, fromY),
              new Pt(trackX, toY),
              new Pt(to.x(), toY),
              to));
      disc = new Pt(trackX, Math.min(fromY, toY) + Math.min(6, Math.abs(toY - fromY) / 2));
    }
    disc(disc, index + 1);
  }

  private void disc(Pt centre, int number) {
    canvas.circle(Ink.THIN.filled(Ink.Tone.WHITE), centre, DISC_MM);
    canvas.plainWords(
        new Item.Words(
            centre.plus(new Pt(0, TextMeasure.midMm(Item.Type.SMALL_BOLD))),
            String.valueOf(number),
            Item.Type.SMALL_BOLD,
            Item.Align.CENTRE,
            0));
  }

  /** The next free point on the lower edge of a node. */
  private Pt port(String id) {
    Box box = stands.get(id).box();
    long all =
        house.links().stream()
            .mapToLong(link -> (link.from().equals(id) ? 1 : 0) + (link.to().equals(id) ? 1 : 0))
            .sum();
    int used = portsUsed.merge(id, 1, Integer::sum);
    return new Pt(box.left() + box.width() * used / (all + 1.0), box.bottom());
  }

  private double track(int row) {
    int used = tracksUsed.get(row) + 1;
    tracksUsed.set(row, used);
    return gutterTop.get(row) + 0.5 + pitch * used;
  }
}
