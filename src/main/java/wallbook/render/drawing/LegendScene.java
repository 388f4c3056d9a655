package wallbook.render.drawing;

import java.util.List;
import wallbook.compose.drawing.Legend;

/** Lays out a legend: symbols with their meaning in columns read downwards, the note beneath. */
final class LegendScene {
  private static final double COLUMN_MM = 44;
  private static final double TEXT_FROM_MM = 6;
  private static final double ROW_GAP_MM = 1.4;

  private LegendScene() {}

  static Scene draw(Legend legend) {
    Canvas canvas = new Canvas();
    double width = legend.frame().widthMm();
    int columns = Math.max(1, (int) (width / COLUMN_MM));
    int rows = (legend.entries().size() + columns - 1) / columns;
    double columnMm = width / columns;
    double bottom = 0;
    for (int column = 0; column * rows < legend.entries().size(); column++) {
      double y = 1;
      int last = Math.min(legend.entries().size(), (column + 1) * rows);
      for (Legend.Entry entry : legend.entries().subList(column * rows, last)) {
        y = entry(canvas, entry, column * columnMm, y, columnMm) + ROW_GAP_MM;
      }
      bottom = Math.max(bottom, y);
    }
    if (!legend.note().isBlank()) {
      TextBlock note = TextBlock.wrapped(List.of(legend.note()), Item.Type.SMALL, width);
      bottom += 0.6;
      Box box = new Box(0, bottom, note.widthMm(), bottom + note.heightMm());
      canvas.block(note, box, Item.Align.LEFT);
      bottom = box.bottom();
    }
    return canvas.scene(width, bottom + 0.5);
  }

  /** Returns the lower edge of the entry. */
  private static double entry(
      Canvas canvas, Legend.Entry entry, double left, double top, double columnMm) {
    double textMm = columnMm - TEXT_FROM_MM - 2;
    TextBlock text = TextBlock.wrapped(List.of(entry.meaning()), Item.Type.LABEL, textMm);
    double height = Math.max(Symbols.SIZE_MM, text.heightMm());
    canvas.symbol(entry.symbol(), new Pt(left + 2.4, top + Symbols.SIZE_MM / 2));
    double from = top + Math.max(0, (Symbols.SIZE_MM - text.heightMm()) / 2);
    double textLeft = left + TEXT_FROM_MM;
    canvas.block(
        text,
        new Box(textLeft, from, textLeft + text.widthMm(), from + text.heightMm()),
        Item.Align.LEFT);
    return top + height;
  }
}
