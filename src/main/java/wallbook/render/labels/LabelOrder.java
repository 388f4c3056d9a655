package wallbook.render.labels;

import java.util.List;
import wallbook.compose.labels.Label;
import wallbook.stock.LabelSheet;

/**
 * Labels to be printed.
 *
 * @param start position of the first label on the first sheet, from 1, row by row; those before it
 *     stay white, for a sheet of which they are used up
 */
public record LabelOrder(LabelSheet sheet, int start, List<Label> labels) {
  public LabelOrder {
    labels = List.copyOf(labels);
    if (start < 1 || start > sheet.labels()) {
      throw new IllegalArgumentException("sheet " + sheet.name() + " has no position " + start);
    }
  }
}
