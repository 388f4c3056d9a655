package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wallbook.compose.drawing.PanelMap;
import wallbook.compose.drawing.PanelMap.Port;
import wallbook.compose.drawing.PanelMap.PortState;

/**
 * Lays out a panel: ports in rows of equal cells, number above, label beneath. Labels stand upright
 * in wide cells and are turned in narrow ones; a row longer than twenty-four ports continues on the
 * next line.
 */
final class PanelMapScene {
  private static final int PORTS_IN_LINE = 24;
  private static final double WIDEST_CELL_MM = 22;
  private static final double TURN_BELOW_MM = 13;
  private static final double PORT_WIDTH_MM = 5.4;
  private static final double PORT_HEIGHT_MM = 6;
  private static final double NUMBER_MM = 3.4;
  private static final double LONGEST_TURNED_MM = 34;
  private static final int MOST_LINES = 4;
  private static final Item.Type TEXT = Item.Type.SMALL;

  private final PanelMap panel;
  private final Canvas canvas = new Canvas();
  private final double cell;

  private PanelMapScene(PanelMap panel) {
    this.panel = panel;
    int longest =
        Math.min(PORTS_IN_LINE, panel.rows().stream().mapToInt(List::size).max().orElse(1));
    cell = Math.min(WIDEST_CELL_MM, (panel.frame().widthMm() - 4) / longest);
  }

  static Scene draw(PanelMap panel) {
    return new PanelMapScene(panel).draw();
  }

  private Scene draw() {
    double width = panel.frame().widthMm();
    double y = 1;
    if (!panel.heading().isBlank()) {
      String heading = TextMeasure.fit(panel.heading(), Item.Type.NAME, width - 4);
      canvas.words(
          new Pt(2, y + TextMeasure.ascentMm(Item.Type.NAME)),
          heading,
          Item.Type.NAME,
          Item.Align.LEFT);
      y += 5;
    }
    double top = y;
    y += 1.5;
    double right = 0;
    for (List<Port> row : panel.rows()) {
      for (int from = 0; from < row.size(); from += PORTS_IN_LINE) {
        List<Port> line = row.subList(from, Math.min(row.size(), from + PORTS_IN_LINE));
        right = Math.max(right, 2 + line.size() * cell);
        y = line(line, y) + 2;
      }
    }
    canvas.box(Ink.line(0.35), new Box(0.5, top, right + 1.5, y));
    y = key(y + 3);
    return canvas.scene(width, y);
  }

  private double line(List<Port> line, double top) {
    double bottom = top;
    for (int i = 0; i < line.size(); i++) {
      Port port = line.get(i);
      double x = 2 + (i + 0.5) * cell;
      canvas.words(
          new Pt(x, top + 2.6),
          TextMeasure.fit(port.number(), Item.Type.SMALL_BOLD, cell - 0.4),
          Item.Type.SMALL_BOLD,
          Item.Align.CENTRE);
      port(port.state(), new Pt(x, top + NUMBER_MM + PORT_HEIGHT_MM / 2));
      double under = top + NUMBER_MM + PORT_HEIGHT_MM + 0.8;
      bottom = Math.max(bottom, label(port.label(), x, under));
    }
    return bottom;
  }

  private double label(List<String> label, double x, double top) {
    if (label.isEmpty()) {
      return top;
    }
    return cell >= TURN_BELOW_MM ? upright(label, x, top) : turned(label, x, top);
  }

  private double upright(List<String> label, double x, double top) {
    TextBlock whole = TextBlock.wrapped(label, TEXT, cell - 1);
    List<String> lines = whole.lines();
    if (lines.size() > MOST_LINES) {
      lines =
          label.stream()
              .limit(MOST_LINES)
              .map(line -> TextMeasure.fit(line, TEXT, cell - 1.6))
              .toList();
    }
    TextBlock block = new TextBlock(lines, TEXT);
    Box box =
        new Box(x - block.widthMm() / 2, top, x + block.widthMm() / 2, top + block.heightMm());
    canvas.block(block, box, Item.Align.CENTRE);
    return box.bottom();
  }

  private double turned(List<String> label, double x, double top) {
    double leading = TextMeasure.ascentMm(TEXT) + TextMeasure.descentMm(TEXT) + 0.05;
    int room = Math.max(1, (int) Math.floor((cell - 0.2) / leading));
    List<String> lines = new ArrayList<>(label);
    if (lines.size() > room) {
      lines = List.of(String.join(" ", label));
    }
    double middle =
        x
            + (TextMeasure.ascentMm(TEXT) - TextMeasure.descentMm(TEXT)) / 2
            - (lines.size() - 1) * leading / 2;
    double bottom = top;
    for (int i = 0; i < lines.size(); i++) {
      Box box =
          canvas.words(
              new Item.Words(
                  new Pt(middle + i * leading, top),
                  TextMeasure.fit(lines.get(i), TEXT, LONGEST_TURNED_MM),
                  TEXT,
                  Item.Align.RIGHT,
                  -90));
      bottom = Math.max(bottom, box.bottom());
    }
    return bottom;
  }

  /** A port: its letter above, a patterned strip beneath. */
  private void port(PortState state, Pt centre) {
    Box box = Box.around(centre, Math.min(PORT_WIDTH_MM, cell - 0.8), PORT_HEIGHT_MM);
    canvas.box(Ink.SYMBOL.filled(Ink.Tone.WHITE), box);
    double strip = box.bottom() - 2;
    Box low = new Box(box.left(), strip, box.right(), box.bottom());
    switch (state) {
      case IN_SERVICE -> canvas.box(Ink.SYMBOL.filled(Ink.Tone.BLACK), low);
      case DARK -> {
        canvas.box(Ink.SYMBOL, low);
        hatch(low, 1);
      }
      case DAMAGED -> {
        canvas.box(Ink.SYMBOL, low);
        hatch(low, 1);
        hatch(low, -1);
      }
      case FREE -> {}
    }
    canvas.plainWords(
        new Item.Words(
            new Pt(centre.x(), strip - 0.8),
            PlainText.clean(panel.stateWords().get(state).letter()),
            Item.Type.LABEL_BOLD,
            Item.Align.CENTRE,
            0));
  }

  private void hatch(Box box, int lean) {
    double rise = box.height();
    for (double x = box.left(); x + rise <= box.right() + 0.01; x += 0.85) {
      double low = lean > 0 ? x : x + rise;
      double high = lean > 0 ? x + rise : x;
      canvas.line(Ink.THIN, new Pt(low, box.bottom()), new Pt(high, box.top()));
    }
  }

  private double key(double top) {
    List<PortState> used =
        panel.rows().stream()
            .flatMap(List::stream)
            .map(Port::state)
            .distinct()
            .sorted()
            .collect(Collectors.toList());
    double x = 4;
    for (PortState state : used) {
      port(state, new Pt(x, top + PORT_HEIGHT_MM / 2));
      Box word =
          canvas.words(
              new Pt(x + PORT_WIDTH_MM / 2 + 1.2, top + 3.9),
              panel.stateWords().get(state).word(),
              Item.Type.LABEL,
              Item.Align.LEFT);
      x = word.right() + 9;
    }
    return top + PORT_HEIGHT_MM + 1;
  }
}
