package wallbook.render.press;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import wallbook.render.Tag;

/** Reads what stands in lines into a passage: text, links, pictures, pieces. */
final class InlineReader {
  private static final int SOFT_HYPHEN = 0xAD;

  private final Workshop shop;
  private final Passage text;
  private boolean afterSpace = true;

  private InlineReader(Workshop shop, Passage text) {
    this.shop = shop;
    this.text = text;
  }

  /**
   * Reads some neighbouring children of a block.
   *
   * @param nodes text nodes, and branches for elements, which have their styles
   * @param tag what the text belongs to
   * @param begins whether what the stylesheet writes at the block's begin is wanted
   * @param ends the same for its end
   */
  static Passage read(
      Workshop shop, Branch block, List<Object> nodes, Tag tag, boolean begins, boolean ends)
      throws StyleProblem {
    Span own = new Span(block.style().type(), tag, null, null);
    Passage text = new Passage(own);
    InlineReader reader = new InlineReader(shop, text);
    if (begins) {
      reader.pseudo(block, Selector.Pseudo.BEFORE, own);
    }
    for (Object node : nodes) {
      if (node instanceof Branch branch) {
        reader.element(branch, own);
      } else {
        reader.text(((TextNode) node).getWholeText(), own);
      }
    }
    if (ends) {
      reader.pseudo(block, Selector.Pseudo.AFTER, own);
    }
    return text;
  }

  /** Whether some children of a block hold nothing but white space. */
  static boolean isBlank(List<Object> nodes) {
    for (Object node : nodes) {
      if (!(node instanceof TextNode text) || !text.isBlank()) {
        return false;
      }
    }
    return true;
  }

  /** Reads a text by itself. */
  static Passage read(Workshop shop, String words, TypeStyle type, Tag tag) {
    Span own = new Span(type, tag, null, null);
    Passage text = new Passage(own);
    new InlineReader(shop, text).text(words, own);
    return text;
  }

  private void element(Branch branch, Span around) throws StyleProblem {
    Element element = branch.element();
    Style style = branch.style();
    if (style.display() == Keywords.Display.NONE) {
      return;
    }
    if (element.hasAttr("id")) {
      text.anchor(element.id());
    }
    if (element.normalName().equals("br")) {
      text.begin(around);
      text.add(Passage.LINE_END);
      afterSpace = true;
      return;
    }
    Optional<Image> image = shop.image(element);
    if (image.isPresent()) {
      Tag figure = new Tag(around.tag(), "Figure", element.attr("alt"));
      text.begin(new Span(around.type(), figure, around.link(), around.box()));
      text.add(new Atom.Picture(image.get(), style.box(), figure));
      afterSpace = false;
      return;
    }
    if (style.display() == Keywords.Display.INLINE_BLOCK) {
      Passage inner = read(shop, branch, shop.nodes(branch), around.tag(), true, true);
      text.begin(around);
      text.add(new Atom.Piece(inner, style.box(), style.block()));
      afterSpace = false;
      return;
    }
    inline(branch, span(element, style, around), around);
  }

  private void inline(Branch branch, Span own, Span around) throws StyleProblem {
    BoxStyle box = branch.style().box();
    edge(box.margin().get(BoxStyle.LEFT).points(), around);
    edge(box.inset(BoxStyle.LEFT, 0), own);
    pseudo(branch, Selector.Pseudo.BEFORE, own);
    int number = 0;
    int count = branch.element().childNodeSize();
    for (int i = 0; i < count; i++) {
      Node node = branch.element().childNode(i);
      if (node instanceof TextNode words) {
        text(words.getWholeText(), own);
      } else if (node instanceof Element child) {
        Branch inner = new Branch(branch, child, ++number);
        shop.stylist().style(inner);
        element(inner, own);
      }
    }
    pseudo(branch, Selector.Pseudo.AFTER, own);
    edge(box.inset(BoxStyle.RIGHT, 0), own);
    edge(box.margin().get(BoxStyle.RIGHT).points(), around);
  }

  private void edge(float width, Span span) {
    if (width != 0) {
      text.begin(span);
      text.add(new Atom.Edge(width));
    }
  }

  private static Span span(Element element, Style style, Span around) {
    Tag tag = around.tag();
    Link link = around.link();
    if (element.normalName().equals("a") && element.hasAttr("href")) {
      String title = element.hasAttr("title") ? element.attr("title") : element.text();
      Tag parent = tag.type().equals("TOCI") ? new Tag(tag, "Reference") : tag;
      tag = new Tag(parent, "Link");
      link = new Link(element.attr("href"), title, tag);
    }
    Span.InlineBox box =
        style.box().isSeen() ? new Span.InlineBox(style.box(), style.type()) : around.box();
    return new Span(style.type(), tag, link, box);
  }

  private void pseudo(Branch branch, Selector.Pseudo where, Span around) throws StyleProblem {
    Optional<Style> style = shop.stylist().pseudo(branch, where);
    if (style.isPresent() && style.get().display() != Keywords.Display.NONE) {
      Span span = new Span(style.get().type(), around.tag(), around.link(), around.box());
      for (Content part : style.get().content()) {
        part(part, branch.element(), span);
      }
    }
  }

  private void part(Content part, Element element, Span span) {
    if (part instanceof Content.Text words) {
      text(words.text(), span);
    } else if (part instanceof Content.Attribute attribute) {
      text(element.attr(attribute.name()), span);
    } else if (part instanceof Content.Leader) {
      text.begin(span);
      text.add(new Atom.Leader());
    } else if (part instanceof Content.TargetPage target) {
      text.begin(span);
      text.add(new Atom.Folio(element.attr(target.attribute()).replaceFirst("^#", "")));
      afterSpace = false;
    }
  }

  private void text(String words, Span span) {
    if (words.isEmpty()) {
      return;
    }
    Keywords.WhiteSpace spaces = span.type().whiteSpace();
    String shown = transformed(words, span.type().transform());
    text.begin(span);
    for (int i = 0; i < shown.length(); ) {
      int c = shown.codePointAt(i);
      i += Character.charCount(c);
      if (c == '\n' && spaces.keepsLines()) {
        text.add(Passage.LINE_END);
        afterSpace = true;
      } else if (c == ' ' || c == '\n' || c == '\t' || c == '\f') {
        if (spaces.keepsSpaces() || !afterSpace) {
          text.add(' ');
        }
        afterSpace = true;
      } else if (c != '\r' && c != SOFT_HYPHEN) {
        text.add(c);
        afterSpace = false;
      }
    }
  }

  private String transformed(String words, Keywords.Transform transform) {
    return switch (transform) {
      case NONE -> words;
      case UPPERCASE -> words.toUpperCase(shop.language());
      case LOWERCASE -> words.toLowerCase(shop.language());
      case CAPITALIZE -> capitalized(words, shop.language());
    };
  }

  private static String capitalized(String words, Locale language) {
    StringBuilder out = new StringBuilder(words.length());
    boolean begins = true;
    for (int i = 0; i < words.length(); ) {
      int c = words.codePointAt(i);
      String one = Character.toString(c);
      out.append(begins ? one.toUpperCase(language) : one);
      begins = Character.isWhitespace(c);
      i += Character.charCount(c);
    }
    return out.toString();
  }
}
