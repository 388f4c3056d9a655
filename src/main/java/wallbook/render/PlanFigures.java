package wallbook.render;

import java.util.Optional;
import wallbook.compose.figure.Photograph;
import wallbook.render.drawing.DrawingSvg;

/** Shows the pictures of the view models: plans, elevations, diagrams, photographs. */
public final class PlanFigures implements FigureRenderer {
  private final DrawingSvg drawings = new DrawingSvg();

  @Override
  public Optional<Figure> figure(Object drawing) {
    if (drawing instanceof Photograph photograph) {
      return Optional.of(
          new Figure.Photograph(photograph.picture().file(), photograph.alternative()));
    }
    return drawings.figure(drawing);
  }
}
