package wallbook.render.press;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import wallbook.render.Figure;

/** What the setting of one document needs at every turn: styles, tags and pictures. */
final class Workshop {
  private static final String DATA = "data:image/";

  private final Stylist stylist;
  private final Tagger tagger = new Tagger();
  private final Map<Element, Figure> figures;
  private final Locale language;

  /**
   * @param figures what the picture elements of the page stand for
   */
  Workshop(StyleSheet sheet, Map<Element, Figure> figures, Locale language) {
    this.stylist = new Stylist(sheet);
    this.figures = figures;
    this.language = language;
  }

  Stylist stylist() {
    return stylist;
  }

  Tagger tagger() {
    return tagger;
  }

  Locale language() {
    return language;
  }

  /** The children of an element: text nodes, and branches with their styles. */
  List<Object> nodes(Branch parent) throws StyleProblem {
    int count = parent.element().childNodeSize();
    List<Object> nodes = new ArrayList<>(count);
    int number = 0;
    for (int i = 0; i < count; i++) {
      Node node = parent.element().childNode(i);
      if (node instanceof TextNode) {
        nodes.add(node);
      } else if (node instanceof Element child) {
        Branch branch = new Branch(parent, child, ++number);
        stylist.style(branch);
        nodes.add(branch);
      }
    }
    return nodes;
  }

  /** Whether the stylesheet writes anything at the begin or the end of an element. */
  boolean writes(Branch branch, boolean begins, boolean ends) throws StyleProblem {
    return begins && stylist.pseudo(branch, Selector.Pseudo.BEFORE).isPresent()
        || ends && stylist.pseudo(branch, Selector.Pseudo.AFTER).isPresent();
  }

  /** The picture that an element stands for, if it stands for one. */
  Optional<Image> image(Element element) throws StyleProblem {
    String name = element.normalName();
    if (!name.equals("svg") && !name.equals("img")) {
      return Optional.empty();
    }
    Figure figure = figures.get(element);
    if (figure instanceof Figure.Drawing drawing) {
      return Optional.of(new Image.Drawn(drawing.painting()));
    } else if (figure instanceof Figure.Photograph photograph) {
      return Optional.of(Pictures.read(photograph.bytes()));
    } else if (element.attr("src").startsWith(DATA) && element.attr("src").contains(";base64,")) {
      String data = element.attr("src").replaceFirst("^[^,]*,", "");
      return Optional.of(Pictures.read(Base64.getDecoder().decode(data)));
    }
    throw StyleProblem.ofPage("a <" + name + "> of a template can't be printed", "<" + name);
  }
}
