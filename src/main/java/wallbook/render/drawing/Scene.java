package wallbook.render.drawing;

import java.util.List;
import wallbook.compose.drawing.Target;

/**
 * A drawing laid out on its sheet, before any file format: shapes and words in millimetres from the
 * upper left corner, in painting order.
 *
 * @param labels the rectangle of every piece of text that must stay clear of the others
 * @param symbols the rectangle of every symbol
 * @param leaders the line from each symbol to a label that stands apart
 * @param touches the areas that lead somewhere, in painting order
 */
record Scene(
    double widthMm,
    double heightMm,
    List<Item> items,
    List<Label> labels,
    List<Box> symbols,
    List<Seg> leaders,
    List<Touch> touches) {
  Scene {
    items = List.copyOf(items);
    labels = List.copyOf(labels);
    symbols = List.copyOf(symbols);
    leaders = List.copyOf(leaders);
    touches = List.copyOf(touches);
  }

  /** A rectangle that holds text. */
  record Label(Box box, List<String> lines) {
    Label {
      lines = List.copyOf(lines);
    }
  }

  /** The areas that lead to one target, each with its corners in order. */
  record Touch(Target target, List<List<Pt>> areas) {
    Touch {
      areas = areas.stream().map(List::copyOf).toList();
    }
  }

  Box sheet() {
    return new Box(0, 0, widthMm, heightMm);
  }
}
