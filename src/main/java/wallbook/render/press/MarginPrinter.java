package wallbook.render.press;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wallbook.render.Tag;

/** Writes what stands in the margins of pages: running heads and feet. */
final class MarginPrinter {
  private final Workshop shop;
  private final Sheets sheets;
  private final int pages;
  private final Map<String, Map<String, Style>> known = new LinkedHashMap<>();

  /**
   * @param pages how many there are
   */
  MarginPrinter(Workshop shop, Sheets sheets, int pages) {
    this.shop = shop;
    this.sheets = sheets;
    this.pages = pages;
  }

  void print(Sheet sheet) {
    boolean first = sheet.number() == 1;
    Map<String, Style> boxes =
        known.computeIfAbsent(
            first + " " + sheet.name(), key -> sheets.margins(sheet.name(), first));
    boolean begun = false;
    for (Map.Entry<String, Style> box : boxes.entrySet()) {
      if (!begun) {
        sheet.pagination();
        begun = true;
      }
      print(sheet, box.getKey(), box.getValue());
    }
  }

  private void print(Sheet sheet, String name, Style style) {
    Geometry geometry = sheet.geometry();
    Geometry.Area area = geometry.area();
    boolean above = name.startsWith("top");
    float height = above ? area.top() : geometry.height() - area.top() - area.height();
    float top = above ? 0 : area.top() + area.height();
    BoxStyle box = style.box();
    float width = box.width().auto() ? area.width() / 3 : box.width().of(area.width());
    float left =
        area.left()
            + (name.endsWith("left")
                ? 0
                : name.endsWith("right") ? area.width() - width : (area.width() - width) / 2);
    float inLeft = box.inset(BoxStyle.LEFT, width);
    float room = width - inLeft - box.inset(BoxStyle.RIGHT, width);
    Tag nothing = new Tag(null, "Artifact");
    Passage text =
        InlineReader.read(shop, words(style.content(), sheet.number()), style.type(), nothing);
    List<Line> lines = LineBreaker.lines(text, style.block(), room);
    float high = (float) lines.stream().mapToDouble(Line::height).sum();
    float over = box.inset(BoxStyle.TOP, width);
    float under = box.inset(BoxStyle.BOTTOM, width);
    float spare = height - high - over - under;
    float down =
        switch (box.verticalAlign()) {
          case BOTTOM -> spare;
          case MIDDLE -> spare / 2;
          default -> 0;
        };
    sheet.repeatedWhile(
        () -> {
          new Decor(box, left, width)
              .paint(sheet, 0, top + down, top + down + over + high + under, true, true);
          float y = top + down + over;
          for (Line line : lines) {
            line.ink(sheet, left + inLeft, y);
            y += line.height();
          }
        });
  }

  private String words(List<Content> content, int page) {
    StringBuilder words = new StringBuilder();
    for (Content part : content) {
      if (part instanceof Content.Text text) {
        words.append(text.text());
      } else if (part instanceof Content.Counter counter) {
        words.append(counter.ofAll() ? pages : page);
      }
    }
    return words.toString();
  }
}
