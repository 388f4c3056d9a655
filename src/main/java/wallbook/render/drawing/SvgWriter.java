package wallbook.render.drawing;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import wallbook.compose.drawing.Frame;

/**
 * Writes a scene as one SVG element: presentation attributes only, so that all browsers draw the
 * same. One user unit is a tenth of a millimetre, because browsers round the advance of glyphs
 * whose size is only a few units.
 */
final class SvgWriter {
  private static final double UNITS_PER_MM = 10;
  private static final String FONT = "Noto Sans, sans-serif";

  private final StringBuilder out = new StringBuilder();

  /**
   * Whether to be brief, since a page holds many drawings: points to the tenth of a millimetre, and
   * nothing that the root says already.
   */
  private final boolean brief;

  private SvgWriter(boolean brief) {
    this.brief = brief;
  }

  /**
   * @param size printed size of a millimetre of the scene; 1 for all that is true to scale
   */
  static String write(Scene scene, Frame frame, double size) {
    SvgWriter writer = new SvgWriter(false);
    String alt = PlainText.xml(frame.altText());
    writer.out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" role=\"img\"");
    // The print layout takes a figure's text from 'alt', browsers and screen readers from
    // 'aria-label'.
    writer.attribute("alt", alt);
    writer.attribute("aria-label", alt);
    writer.size(scene, size);
    writer.out.append(">\n<title>").append(PlainText.xml(frame.title()));
    writer.out.append("</title>\n<desc>").append(alt).append("</desc>\n");
    scene.items().forEach(writer::item);
    return writer.out.append("</svg>\n").toString();
  }

  /**
   * The same drawing for a screen: what leads somewhere is covered by a link. The picture itself is
   * hidden from screen readers, which meet the links by their names instead.
   *
   * @param named references of those that have an anchor of their own, {@code plan/} and the
   *     reference, by which an address leads to them
   */
  static String touchable(Scene scene, Frame frame, Set<String> named) {
    SvgWriter writer = new SvgWriter(true);
    boolean leads = !scene.touches().isEmpty();
    writer.out.append("<svg xmlns=\"http://www.w3.org/2000/svg\"");
    writer.attribute("role", leads ? "group" : "img");
    writer.attribute("aria-label", PlainText.xml(frame.altText()));
    writer.size(scene, 1);
    writer.out.append("><g aria-hidden=\"true\">\n");
    scene.items().forEach(writer::item);
    writer.out.append("</g>\n");
    scene.touches().forEach(touch -> writer.touch(touch, named));
    return writer.out.append("</svg>\n").toString();
  }

  private void touch(Scene.Touch touch, Set<String> named) {
    String reference = PlainText.xml(touch.target().reference());
    out.append("<a");
    if (named.contains(touch.target().reference())) {
      attribute("id", "plan/" + reference);
    }
    attribute("href", "#" + reference);
    attribute("aria-label", PlainText.xml(touch.target().name()));
    // An area without ink is touched only if it says so.
    attribute("pointer-events", "all");
    out.append('>');
    touch.areas().forEach(this::area);
    out.append("</a>\n");
  }

  private void area(List<Pt> corners) {
    out.append("<polygon");
    attribute("points", points(corners));
    out.append("/>");
  }

  private void size(Scene scene, double size) {
    // Rounded up to whole units, so that nothing is cut off.
    long width = (long) Math.ceil(scene.widthMm() * UNITS_PER_MM - 1e-6);
    long height = (long) Math.ceil(scene.heightMm() * UNITS_PER_MM - 1e-6);
    attribute("width", number(size * width / UNITS_PER_MM) + "mm");
    attribute("height", number(size * height / UNITS_PER_MM) + "mm");
    attribute("viewBox", "0 0 " + width + " " + height);
    attribute("font-family", FONT);
    attribute("fill", "none");
    attribute("stroke-linejoin", "round");
    attribute("stroke-linecap", "butt");
  }

  private void item(Item item) {
    if (item instanceof Item.Path path) {
      path(path);
    } else if (item instanceof Item.Oval oval) {
      oval(oval);
    } else if (item instanceof Item.Words words) {
      words(words);
    }
  }

  private void path(Item.Path path) {
    out.append(path.closed() ? "<polygon" : "<polyline");
    attribute("points", points(path.points()));
    ink(path.ink());
    out.append("/>\n");
  }

  private void oval(Item.Oval oval) {
    boolean circle = oval.radiusX() == oval.radiusY();
    out.append(circle ? "<circle" : "<ellipse");
    attribute("cx", at(oval.centre().x()));
    attribute("cy", at(oval.centre().y()));
    if (circle) {
      attribute("r", units(oval.radiusX()));
    } else {
      attribute("rx", units(oval.radiusX()));
      attribute("ry", units(oval.radiusY()));
      turn(oval.turnDeg(), oval.centre());
    }
    ink(oval.ink());
    out.append("/>\n");
  }

  private void words(Item.Words words) {
    out.append("<text");
    attribute("x", at(words.at().x()));
    attribute("y", at(words.at().y()));
    attribute("font-size", units(words.type().sizePt() * TextMeasure.MM_PER_PT));
    if (words.type().bold()) {
      attribute("font-weight", "bold");
    }
    switch (words.align()) {
      case LEFT -> {}
      case CENTRE -> attribute("text-anchor", "middle");
      case RIGHT -> attribute("text-anchor", "end");
    }
    turn(words.turnDeg(), words.at());
    attribute("fill", tone(Ink.Tone.BLACK));
    out.append('>').append(PlainText.xml(words.text())).append("</text>\n");
  }

  private void turn(double degrees, Pt about) {
    if (degrees != 0) {
      attribute(
          "transform",
          "rotate(" + number(degrees) + " " + at(about.x()) + " " + at(about.y()) + ")");
    }
  }

  private void ink(Ink ink) {
    if (!brief || ink.fill() != Ink.Tone.NONE) {
      attribute("fill", tone(ink.fill()));
    }
    if (ink.lineMm() > 0) {
      attribute("stroke", tone(ink.line()));
      attribute("stroke-width", units(ink.lineMm()));
      if (ink.dash() != Ink.Dash.SOLID) {
        StringBuilder lengths = new StringBuilder();
        for (double length : ink.dash().lengthsMm) {
          lengths.append(lengths.isEmpty() ? "" : " ").append(units(length));
        }
        attribute("stroke-dasharray", lengths.toString());
      }
    }
  }

  private void attribute(String name, String value) {
    out.append(' ').append(name).append("=\"").append(value).append('"');
  }

  private String points(List<Pt> points) {
    return points.stream()
        .map(point -> at(point.x()) + "," + at(point.y()))
        .collect(Collectors.joining(" "));
  }

  private String at(double millimetres) {
    return brief
        ? Long.toString(Math.round(millimetres * UNITS_PER_MM))
        : number(millimetres * UNITS_PER_MM);
  }

  private String tone(Ink.Tone tone) {
    return brief ? tone.shortCode : tone.code;
  }

  private static String units(double millimetres) {
    return number(millimetres * UNITS_PER_MM);
  }

  /** At most two decimals, a whole number without any, always with a point. */
  private static String number(double value) {
    long hundredths = Math.round(Math.abs(value) * 100);
    if (hundredths == 0) {
      return "0";
    }
    String sign = value < 0 ? "-" : "";
    long fraction = hundredths % 100;
    return fraction == 0
        ? sign + hundredths / 100
        : sign + hundredths / 100 + (fraction < 10 ? ".0" : ".") + fraction;
  }
}
