package wallbook.render.labels;

import java.util.List;
import wallbook.compose.labels.Label;
import wallbook.stock.LabelArea;

/** One printed page and the labels on it. */
record SheetPage(List<Placed> labels) {
  SheetPage {
    labels = List.copyOf(labels);
  }

  /**
   * A label at its place.
   *
   * @param area its rectangle on the page
   * @param face what is printed on it, in millimetres of the page
   */
  record Placed(Label label, LabelArea area, LabelFace face) {}
}
