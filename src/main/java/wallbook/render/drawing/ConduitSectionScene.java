package wallbook.render.drawing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallbook.compose.drawing.ConduitSection;
import wallbook.compose.drawing.ConduitSection.Cable;

/**
 * Lays out a conduit cut across, enlarged by a round ratio, with its cables numbered by kind and
 * listed beside it.
 */
final class ConduitSectionScene {
  private static final double WIDEST_MM = 56;
  private static final double WALL_MM = 1.2;
  private static final double[] ENLARGED = {6, 5, 4, 3, 2, 1, 0.5, 0.25, 0.1};
  private static final Item.Type TEXT = Item.Type.LABEL;

  private ConduitSectionScene() {}

  static Scene draw(ConduitSection section) {
    Canvas canvas = new Canvas();
    double room =
        Math.min(
            WIDEST_MM,
            Math.min(section.frame().maxHeightMm() - 8, section.frame().widthMm() * 0.4));
    double ratio = ENLARGED[ENLARGED.length - 1];
    for (double tried : ENLARGED) {
      if (tried * section.boreMm() <= room) {
        ratio = tried;
        break;
      }
    }
    double radius = ratio * section.boreMm() / 2;
    Pt centre = new Pt(radius + WALL_MM + 1, radius + WALL_MM + 1);
    canvas.circle(Ink.SYMBOL.filled(Ink.Tone.LIGHT), centre, radius + WALL_MM);
    canvas.circle(Ink.SYMBOL.filled(Ink.Tone.WHITE), centre, radius);
    Map<Cable, Integer> kinds = new LinkedHashMap<>();
    section.cables().forEach(cable -> kinds.putIfAbsent(cable, kinds.size() + 1));
    Optional<List<ConduitPacking.Circle>> packed =
        ConduitPacking.pack(
            section.boreMm(), section.cables().stream().map(Cable::diameterMm).toList());
    if (packed.isPresent()) {
      for (int i = 0; i < section.cables().size(); i++) {
        ConduitPacking.Circle circle = packed.get().get(i);
        Pt at = centre.plus(new Pt(circle.x(), circle.y()).times(ratio));
        cable(canvas, at, ratio * circle.radius(), kinds.get(section.cables().get(i)));
      }
    }
    double bottom = centre.y() + radius + WALL_MM + 1;
    double listed = list(canvas, section, kinds, packed.isEmpty(), 2 * centre.x() + 6, ratio);
    return canvas.scene(section.frame().widthMm(), Math.max(bottom, listed));
  }

  private static void cable(Canvas canvas, Pt at, double radius, int number) {
    canvas.circle(Ink.SYMBOL.filled(Ink.Tone.PALE), at, radius);
    String text = String.valueOf(number);
    double half = Math.hypot(TextMeasure.widthMm(text, Item.Type.LABEL_BOLD) / 2, 1);
    if (half <= radius) {
      Pt base = at.plus(new Pt(0, TextMeasure.midMm(Item.Type.LABEL_BOLD)));
      canvas.plainWords(new Item.Words(base, text, Item.Type.LABEL_BOLD, Item.Align.CENTRE, 0));
    }
  }

  private static double list(
      Canvas canvas,
      ConduitSection section,
      Map<Cable, Integer> kinds,
      boolean noRoom,
      double left,
      double ratio) {
    double width = section.frame().widthMm() - left;
    double y = 2;
    y = paragraph(canvas, section.boreText(), Item.Type.LABEL_BOLD, left, y, width);
    y = paragraph(canvas, section.fillText(), Item.Type.LABEL_BOLD, left, y, width);
    if (noRoom) {
      y = paragraph(canvas, section.noRoomText(), Item.Type.LABEL_BOLD, left, y, width);
    }
    y += 1.5;
    for (Map.Entry<Cable, Integer> kind : kinds.entrySet()) {
      long count = section.cables().stream().filter(kind.getKey()::equals).count();
      canvas.words(
          new Pt(left + 3, y + TextMeasure.ascentMm(TEXT)),
          String.valueOf(kind.getValue()),
          Item.Type.LABEL_BOLD,
          Item.Align.RIGHT);
      String text = count + " \u00d7 " + kind.getKey().label();
      y = paragraph(canvas, text, TEXT, left + 5, y, width - 5);
    }
    String scale = ratio >= 1 ? Math.round(ratio) + " : 1" : "1 : " + Math.round(1 / ratio);
    return paragraph(canvas, scale, Item.Type.SMALL, left, y + 1.5, width) + 1;
  }

  private static double paragraph(
      Canvas canvas, String text, Item.Type type, double left, double top, double width) {
    if (text.isBlank()) {
      return top;
    }
    TextBlock block = TextBlock.wrapped(List.of(text), type, width);
    canvas.block(
        block, new Box(left, top, left + block.widthMm(), top + block.heightMm()), Item.Align.LEFT);
    return top + block.heightMm() + 0.9;
  }
}
