package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * The table beneath a drawing whose marks carry numbers: number and text, in columns read
 * downwards.
 */
final class KeyTable {
  private static final Item.Type TEXT = Item.Type.LABEL;
  private static final Item.Type NUMBER = Item.Type.LABEL_BOLD;
  private static final double NUMBER_WIDTH_MM = 6;
  private static final double GAP_MM = 4;
  private static final double ROW_GAP_MM = 0.8;
  private static final int ROWS_IN_TWO_COLUMNS = 20;

  private final List<TextBlock> rows = new ArrayList<>();
  private final int columns;
  private final double columnMm;

  private KeyTable(List<List<String>> labels, double widthMm, boolean shortened) {
    columns = labels.size() > ROWS_IN_TWO_COLUMNS ? 3 : 2;
    columnMm = (widthMm - (columns - 1) * GAP_MM) / columns;
    double textMm = columnMm - NUMBER_WIDTH_MM;
    for (List<String> label : labels) {
      String text = String.join(" \u00b7 ", label);
      rows.add(
          shortened
              ? new TextBlock(List.of(TextMeasure.fit(text, TEXT, textMm - 1)), TEXT)
              : TextBlock.wrapped(List.of(text), TEXT, textMm));
    }
  }

  /**
   * A table no higher than allowed if it can be: the last resort is one shortened line for each
   * label.
   */
  static KeyTable of(List<List<String>> labels, double widthMm, double maxHeightMm) {
    KeyTable whole = new KeyTable(labels, widthMm, false);
    return whole.heightMm() <= maxHeightMm ? whole : new KeyTable(labels, widthMm, true);
  }

  double heightMm() {
    double highest = 0;
    for (int column = 0; column < columns; column++) {
      double height = 0;
      for (int row = first(column); row < first(column + 1); row++) {
        height += rows.get(row).heightMm() + ROW_GAP_MM;
      }
      highest = Math.max(highest, height);
    }
    return highest + 3;
  }

  void draw(Canvas canvas, double top) {
    canvas.line(Ink.THIN, new Pt(0, top), new Pt(columns * (columnMm + GAP_MM) - GAP_MM, top));
    for (int column = 0; column < columns; column++) {
      double left = column * (columnMm + GAP_MM);
      double y = top + 2;
      for (int row = first(column); row < first(column + 1); row++) {
        TextBlock block = rows.get(row);
        canvas.words(
            new Pt(left + NUMBER_WIDTH_MM - 1.5, y + TextMeasure.ascentMm(NUMBER)),
            String.valueOf(row + 1),
            NUMBER,
            Item.Align.RIGHT);
        double textLeft = left + NUMBER_WIDTH_MM;
        Box box = new Box(textLeft, y, textLeft + block.widthMm(), y + block.heightMm());
        canvas.block(block, box, Item.Align.LEFT);
        y += block.heightMm() + ROW_GAP_MM;
      }
    }
  }

  private int first(int column) {
    int perColumn = (rows.size() + columns - 1) / columns;
    return Math.min(rows.size(), column * perColumn);
  }
}
