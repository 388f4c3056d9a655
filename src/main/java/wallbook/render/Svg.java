package wallbook.render;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;

/** Reads the SVG text of a drawing and keeps out what acts or loads from elsewhere. */
final class Svg {
  private static final String NAMESPACE = "http://www.w3.org/2000/svg";
  private static final String REFUSED =
      "script, style, foreignObject, a, animate, set, animateMotion, animateTransform, iframe";

  private Svg() {}

  /**
   * @param template where the drawing was asked for
   * @return the {@code svg} element, sized by its view box only
   */
  static Element read(String template, String text) throws TemplateProblem {
    Document document = Jsoup.parse(text, "", Parser.xmlParser());
    Element svg = document.firstElementChild();
    if (svg == null || !svg.tagName().equals("svg") || !svg.attr("xmlns").equals(NAMESPACE)) {
      throw new TemplateProblem(template, "a drawing is no SVG of the namespace " + NAMESPACE);
    }
    if (!svg.attr("viewBox").matches("-?\\d+ -?\\d+ \\d+ \\d+")) {
      throw new TemplateProblem(template, "a drawing has no viewBox of four whole numbers");
    }
    Element refused = svg.selectFirst(REFUSED);
    if (refused != null) {
      throw new TemplateProblem(template, "a drawing can't hold <" + refused.tagName() + ">");
    }
    for (Element element : svg.getAllElements()) {
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
    svg.removeAttr("width").removeAttr("height");
    svg.remove();
    return svg;
  }
}
