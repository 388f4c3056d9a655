package wallbook.render;

import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.ParseError;
import org.jsoup.parser.Parser;

/**
 * The HTML page of one document: checked, with anchors for all headings, its drawings in place and
 * nothing in it that acts or loads from elsewhere.
 */
final class Page {
  private static final Set<String> HEADINGS = Set.of("h1", "h2", "h3", "h4", "h5", "h6");
  private static final Set<String> KEPT = Set.of("table", "ul", "ol");
  private static final List<String> KEPT_CLASSES = List.of("compact", "figure", "keep", "form");
  private static final String COLUMNS = "data-columns";
  private static final Pattern LINK = Pattern.compile("(?i)(#|https?:|mailto:|tel:).*");
  private static final Set<String> REFUSED =
      Set.of(
          "script", "style", "link", "iframe", "object", "embed", "form", "input", "button", "base",
          "meta", "img", "svg");

  private final String template;
  private final Element body;
  private final Map<Element, Figure> pictures = new HashMap<>();
  private final List<Element> headings = new ArrayList<>();
  private final List<Element> named = new ArrayList<>();
  private final List<Element> links = new ArrayList<>();
  private final List<Element> places = new ArrayList<>();
  private final List<Element> columnsGiven = new ArrayList<>();
  private final List<Element> headerCells = new ArrayList<>();
  private final List<Element> kept = new ArrayList<>();

  /**
   * @param template whom to blame
   * @param html a fragment
   */
  Page(String template, String html) throws TemplateProblem {
    this.template = template;
    this.body = parseBody(template, html);
    readElements();
    addAnchors();
    checkLinks();
    Words.mark(body);
    setColumns();
    // A sentence that leads to a table, a figure or a kept piece stays on its page; CSS alone can't
    // tell.
    for (Element block : kept) {
      Element before = block.previousElementSibling();
      if (before != null && before.normalName().equals("p")) {
        before.addClass("lead");
      }
    }
  }

  /** The headings in order. */
  List<Heading> headings() {
    List<Heading> told = new ArrayList<>();
    for (Element heading : headings) {
      int level = heading.normalName().charAt(1) - '0';
      told.add(new Heading(level, heading.id(), heading.text()));
    }
    return told;
  }

  /** Puts the pictures where the template asked for them. */
  void place(List<Figure> figures) {
    for (Element place : places) {
      Figure figure = figures.get(Integer.parseInt(place.attr(Figures.PLACE)));
      Element element = element(figure);
      pictures.put(element, figure);
      place.replaceWith(element);
    }
  }

  /** What the picture elements of the page stand for, each told by itself. */
  Map<Element, Figure> pictures() {
    return pictures;
  }

  /** The whole page: a filled frame with this body in it. */
  Document in(String frameTemplate, String frame) throws TemplateProblem {
    Document page = parseWhole(frameTemplate, frame);
    Element slot = page.selectFirst("[data-slot=body]");
    if (slot == null) {
      throw new TemplateProblem(frameTemplate, "there is no element with data-slot=\"body\"");
    }
    slot.removeAttr("data-slot");
    page.select("a[href]").forEach(Page::addTitle);
    page.select("th").forEach(Page::addScope);
    links.stream().filter(link -> link.normalName().equals("a")).forEach(Page::addTitle);
    headerCells.forEach(Page::addScope);
    slot.appendChildren(List.copyOf(body.childNodes()));
    page.outputSettings().prettyPrint(false);
    return page;
  }

  private static void addTitle(Element link) {
    if (!link.hasAttr("title")) {
      link.attr("title", link.text());
    }
  }

  private static void addScope(Element cell) {
    if (!cell.hasAttr("scope")) {
      cell.attr("scope", "col");
    }
  }

  /**
   * Gives the columns of a table inside an element with {@code data-columns} their widths, in per
   * cent of the table's.
   */
  private void setColumns() throws TemplateProblem {
    for (Element around : columnsGiven) {
      String[] widths = around.attr(COLUMNS).trim().split("\\s+");
      around.removeAttr(COLUMNS);
      for (Element table : around.select("table")) {
        int cells = table.select("tr").first().childrenSize();
        if (cells != widths.length) {
          throw new TemplateProblem(
              template, widths.length + " column widths for a table of " + cells + " columns");
        }
        Element group = new Element("colgroup");
        for (String width : widths) {
          if (!width.matches("\\d{1,2}")) {
            throw new TemplateProblem(template, "not a column width: " + width);
          }
          group.appendElement("col").attr("style", "width: " + width + "%");
        }
        table.prependChild(group);
        table.addClass("columns-set");
      }
    }
  }

  private static Element parseBody(String template, String html) throws TemplateProblem {
    Element body = Document.createShell("").body();
    Parser parser = Parser.htmlParser().setTrackErrors(1);
    body.appendChildren(parser.parseFragmentInput(html, body, ""));
    checkParsed(template, html, parser);
    return body;
  }

  private static Document parseWhole(String template, String html) throws TemplateProblem {
    Parser parser = Parser.htmlParser().setTrackErrors(1);
    Document document = parser.parseInput(html, "");
    checkParsed(template, html, parser);
    return document;
  }

  private static void checkParsed(String template, String html, Parser parser)
      throws TemplateProblem {
    if (!parser.getErrors().isEmpty()) {
      ParseError error = parser.getErrors().get(0);
      throw new TemplateProblem(
          template,
          "its HTML is broken: %s near: %s"
              .formatted(error.getErrorMessage(), excerpt(html, error.getPosition())));
    }
  }

  private static String excerpt(String html, int position) {
    int start = Math.max(0, Math.min(position, html.length()) - 60);
    return html.substring(start, Math.min(html.length(), position + 20)).replaceAll("\\s+", " ");
  }

  /** Refuses what acts, and notes what the steps after it are about: one walk for all of them. */
  private void readElements() throws TemplateProblem {
    for (Element element : body.getAllElements()) {
      note(element);
      if (REFUSED.contains(element.normalName())) {
        throw new TemplateProblem(template, "a document can't hold <" + element.normalName() + ">");
      }
      for (Attribute attribute : element.attributes()) {
        if (attribute.getKey().startsWith("on")) {
          throw new TemplateProblem(
              template, "<" + element.normalName() + "> has an attribute that acts");
        }
      }
    }
  }

  private void note(Element element) {
    String tag = element.normalName();
    if (HEADINGS.contains(tag)) {
      headings.add(element);
    } else if (tag.equals("th")) {
      headerCells.add(element);
    }
    if (KEPT.contains(tag) || KEPT_CLASSES.stream().anyMatch(element::hasClass)) {
      kept.add(element);
    }
    if (element.attributesSize() > 0) {
      addIf(element, "id", named);
      addIf(element, "href", links);
      addIf(element, Figures.PLACE, places);
      addIf(element, COLUMNS, columnsGiven);
    }
  }

  private static void addIf(Element element, String attribute, List<Element> list) {
    if (element.hasAttr(attribute)) {
      list.add(element);
    }
  }

  /** Every heading gets an anchor of its own, numbered in order where the template gives none. */
  private void addAnchors() throws TemplateProblem {
    Set<String> taken = new HashSet<>();
    for (Element element : named) {
      if (element.id().isBlank() || !taken.add(element.id())) {
        throw new TemplateProblem(
            template, "the anchor '" + element.id() + "' is blank or used twice");
      }
    }
    int number = 0;
    for (Element heading : headings) {
      number++;
      if (!heading.hasAttr("id")) {
        heading.attr("id", "heading-" + number);
      }
    }
  }

  private void checkLinks() throws TemplateProblem {
    Set<String> anchors = new HashSet<>();
    named.forEach(element -> anchors.add(element.id()));
    headings.forEach(heading -> anchors.add(heading.id()));
    for (Element link : links) {
      String target = link.attr("href");
      if (!LINK.matcher(target).matches()) {
        throw new TemplateProblem(template, "a link can't lead to '" + target + "'");
      }
      if (target.startsWith("#") && !anchors.contains(target.substring(1))) {
        throw new TemplateProblem(template, "a link leads to '" + target + "', which is not there");
      }
    }
  }

  /** What stands for a picture until somebody wants to see the page. */
  private static Element element(Figure figure) {
    boolean drawn = figure instanceof Figure.Drawing;
    Element element = new Element(drawn ? "svg" : "img").attr("alt", figure.alternative());
    // A drawing is true to scale: a stylesheet that fills the width with pictures does not bend it.
    return drawn ? element.attr("style", "width: auto").attr("role", "img") : element;
  }

  /**
   * Puts a picture itself where {@link #place} put what stands for it.
   *
   * @throws TemplateProblem if a drawing holds what acts or loads from elsewhere
   */
  static void show(String template, Element element, Figure figure) throws TemplateProblem {
    if (figure instanceof Figure.Photograph photograph) {
      String data = Base64.getEncoder().encodeToString(photograph.bytes());
      element.attr("src", "data:" + photograph.mediaType() + ";base64," + data);
    } else if (figure instanceof Figure.Drawing drawing) {
      Element svg = Svg.read(template, drawing.svg().get());
      element.empty().clearAttributes().appendChildren(svg.childNodes());
      element.attributes().addAll(svg.attributes());
      element.attr("alt", drawing.alternative()).attr("role", "img");
    }
  }
}
