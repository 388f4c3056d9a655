package wallbook.render;

import java.util.Optional;

/** Draws what a view model holds as a drawing or photograph. */
@FunctionalInterface
public interface FigureRenderer {
  /** Knows no drawings. */
  FigureRenderer NONE = drawing -> Optional.empty();

  /**
   * @param drawing the value that a template gave to {@code figure(...)}
   * @return its picture, or empty if it is nothing this renderer can draw
   */
  Optional<Figure> figure(Object drawing);
}
