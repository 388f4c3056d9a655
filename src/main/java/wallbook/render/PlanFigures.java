package wallbook.render;

import java.util.Optional;
import wallbook.compose.drawing.Drawing;
import wallbook.render.drawing.DrawingSvg;

/** Draws the drawings of the view models: plans, elevations, diagrams. */
public final class PlanFigures implements FigureRenderer {
  private final DrawingSvg drawings = new DrawingSvg();

  @Override
  public Optional<Figure> figure(Object drawing) {
    return drawing instanceof Drawing known
        ? Optional.of(new Figure.Drawing(drawings.svg(known), known.frame().altText()))
        : Optional.empty();
  }
}
