package wallbook.render;

import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import java.util.ArrayList;
import java.util.List;

/**
 * The template function {@code figure(drawing)}, for one document: keeps the pictures aside and
 * gives the template a place-holder, so that Markdown never sees the drawing.
 */
final class Figures implements TemplateMethodModelEx {
  /** Attribute of the place-holder, holding the figure's number in {@link #drawn}. */
  static final String PLACE = "data-figure";

  private final FigureRenderer renderer;
  private final List<Figure> drawn = new ArrayList<>();

  Figures(FigureRenderer renderer) {
    this.renderer = renderer;
  }

  /** The pictures so far, in the order of their numbers. */
  List<Figure> drawn() {
    return drawn;
  }

  @Override
  @SuppressWarnings("rawtypes") // the engine's interface has a raw list
  public Object exec(List arguments) throws TemplateModelException {
    if (arguments.size() != 1 || !(arguments.get(0) instanceof ViewValues.Holder holder)) {
      throw new TemplateModelException("figure takes one drawing of the view model");
    }
    Object drawing = holder.held();
    Figure figure = drawing instanceof Figure ready ? ready : drawn(drawing);
    drawn.add(figure);
    String place = "<span %s=\"%d\"></span>".formatted(PLACE, drawn.size() - 1);
    return MarkupFormat.MARKDOWN.ready(place);
  }

  private Figure drawn(Object drawing) throws TemplateModelException {
    return renderer
        .figure(drawing)
        .orElseThrow(
            () ->
                new TemplateModelException(
                    "a " + drawing.getClass().getSimpleName() + " is nothing that can be drawn"));
  }
}
