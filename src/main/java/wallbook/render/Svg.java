package wallbook.render;

import java.util.Set;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;

/** Reads the SVG text of a drawing and keeps out what acts or loads from elsewhere. */
final class Svg {
  private static final String NAMESPACE = "http://www.w3.org/2000/svg";
  private static final Pattern VIEW_BOX = Pattern.compile("-?\\d+(\\.\\d+)?( -?\\d+(\\.\\d+)?){3}");
  private static final Pattern MILLIMETRES = Pattern.compile("\\d+(\\.\\d+)?mm");
  private static final Set<String> REFUSED =
      Set.of(
          "script",
          "style",
          "foreignobject",
          "a",
          "animate",
          "set",
          "animatemotion",
          "animatetransform",
          "iframe");

  private Svg() {}

  /**
   * @param template where the drawing was asked for
   * @return the {@code svg} element
   */
  static Element read(String template, String text) throws TemplateProblem {
    Document document = Jsoup.parse(text, "", Parser.xmlParser());
    Element svg = document.firstElementChild();
    if (svg == null || !svg.tagName().equals("svg") || !svg.attr("xmlns").equals(NAMESPACE)) {
      throw new TemplateProblem(template, "a drawing is no SVG of the namespace " + NAMESPACE);
    }
    if (!VIEW_BOX.matcher(svg.attr("viewBox")).matches()) {
      throw new TemplateProblem(template, "a drawing has no viewBox of four numbers");
    }
    for (Element element : svg.getAllElements()) {
      if (REFUSED.contains(element.normalName())) {
        throw new TemplateProblem(template, "a drawing can't hold <" + element.tagName() + ">");
      }
      for (Attribute attribute : element.attributes()) {
        boolean loads =
            attribute.getKey().endsWith("href")
                && !attribute.getValue().startsWith("#")
                && !attribute.getValue().startsWith("data:image/");
        if (loads || attribute.getKey().startsWith("on")) {
          throw new TemplateProblem(
              template, "a drawing can't have " + attribute.getKey() + "=" + attribute.getValue());
        }
      }
    }
    size(template, svg);
    svg.remove();
    return svg;
  }

  /** Makes the size a style, which browsers follow to the fraction. */
  private static void size(String template, Element svg) throws TemplateProblem {
    String width = svg.attr("width");
    String height = svg.attr("height");
    svg.removeAttr("width").removeAttr("height");
    if (width.isEmpty() && height.isEmpty()) {
      return;
    }
    if (!MILLIMETRES.matcher(width).matches() || !MILLIMETRES.matcher(height).matches()) {
      throw new TemplateProblem(template, "a drawing has a size that is not in mm");
    }
    svg.attr("style", "width: " + width + "; height: " + height);
  }
}
