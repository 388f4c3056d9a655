package wallbook.render.labels;

import java.io.IOException;
import wallbook.render.DocumentFacts;
import wallbook.render.Face;
import wallbook.render.Tag;
import wallbook.stock.LabelArea;
import wallbook.stock.LabelSheet;
import wallbook.stock.Legibility;
import wallbook.stock.Stock;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/**
 * What is printed beside the labels: a head that says what they are, a bar to check the size of the
 * print by, and marks to cut along. On a tape all but the marks stands on a leader before the
 * labels.
 */
final class Margins {
  /** Type of what stands beside labels. */
  static final double SMALL_PT = 7;

  /** White between a caption and the strip beneath, and the mark beside it. */
  static final double CAPTION_GAP_MM = 1.2;

  private static final double THIN_MM = 0.12;
  private static final double BAR_MM = 0.25;
  private static final double MARK_MM = 2.5;
  private static final double MARK_GAP_MM = 0.8;
  private static final double TICK_MM = 1.6;
  private static final double TICK_EVERY_MM = 10;

  /** Desktop printers can't print nearer to the edge of the paper. */
  private static final double PRINTER_EDGE_MM = 6;

  private static final double LEADER_SIDE_MM = 5;

  private final Typesetter type;
  private final Legibility legibility;
  private final Wording wording;
  private final DocumentFacts facts;
  private final LabelSheet sheet;
  private final LabelArea labels;

  Margins(
      Typesetter type,
      Legibility legibility,
      Wording wording,
      DocumentFacts facts,
      LabelSheet sheet) {
    this.type = type;
    this.legibility = legibility;
    this.wording = wording;
    this.facts = facts;
    this.sheet = sheet;
    LabelArea first = sheet.area(1);
    LabelArea last = sheet.area(sheet.labels());
    this.labels =
        new LabelArea(
            first.xMm(), first.yMm(), last.rightMm() - first.xMm(), last.bottomMm() - first.yMm());
  }

  double leaderWidthMm() {
    return legibility.rulerMm() + 2 * LEADER_SIDE_MM;
  }

  /** The leader of a tape: head and bar. */
  void drawLeader(PagePen pen, Tagging tags) throws IOException {
    double height = sheet.page().heightMm();
    double middle = height / 2;
    write(head(), LEADER_SIDE_MM, middle - 1, heading(tags), pen, tags);
    pen.beginArtifact();
    bar(pen, LEADER_SIDE_MM, middle + 1.2);
    pen.write(type.line(ruler(), Face.REGULAR, SMALL_PT - 1).moved(LEADER_SIDE_MM, middle + 3.5));
    pen.end();
  }

  /** The margins of a sheet; the head of the first is the document's heading. */
  void draw(PagePen pen, Tagging tags, int page, int pages) throws IOException {
    if (sheet.stock() == Stock.TAPE) {
      return;
    }
    double room = legibility.marginForPrintMm();
    double left = Math.max(labels.xMm(), PRINTER_EDGE_MM);
    if (labels.yMm() >= room) {
      double baseline = PRINTER_EDGE_MM + 3;
      if (page == 1) {
        write(head(), left, baseline, heading(tags), pen, tags);
      } else {
        pen.beginArtifact();
        pen.write(type.line(head(), Face.BOLD, SMALL_PT).moved(left, baseline));
        pen.end();
      }
      pen.beginArtifact();
      TypeLine number =
          type.line(
              say("label.page", "sheet", sheet.name(), "page", page, "pages", pages),
              Face.REGULAR,
              SMALL_PT);
      double right = Math.min(labels.rightMm(), sheet.page().widthMm() - PRINTER_EDGE_MM);
      pen.write(number.moved(right - number.widthMm(), baseline));
      pen.end();
    }
    pen.beginArtifact();
    if (sheet.page().heightMm() - labels.bottomMm() >= room
        && sheet.page().widthMm() >= left + legibility.rulerMm()) {
      double y = sheet.page().heightMm() - PRINTER_EDGE_MM - 2;
      bar(pen, left, y);
      pen.write(
          type.line(ruler(), Face.REGULAR, SMALL_PT)
              .moved(left + legibility.rulerMm() + 2.5, y + 0.9));
    }
    marks(pen);
    pen.end();
  }

  private static Tag heading(Tagging tags) {
    return new Tag(tags.document(), "H1");
  }

  private void write(String text, double xMm, double yMm, Tag tag, PagePen pen, Tagging tags)
      throws IOException {
    pen.beginMarked(tag.type(), tags.mark(tag));
    pen.write(type.line(text, Face.BOLD, SMALL_PT).moved(xMm, yMm));
    pen.end();
  }

  private String head() {
    String head =
        say(
            "label.head",
            "job",
            type.printable(facts.jobTitle()),
            "revision",
            facts.revision(),
            "kind",
            facts.documentTitle());
    return facts.invented() ? head + " \u2013 " + wording.say("label.invented") : head;
  }

  private String ruler() {
    return say("label.ruler", "length", Integer.toString((int) legibility.rulerMm()));
  }

  private void bar(PagePen pen, double leftMm, double yMm) throws IOException {
    double length = legibility.rulerMm();
    pen.line(leftMm, yMm, leftMm + length, yMm, BAR_MM);
    for (double at = 0; at <= length; at += TICK_EVERY_MM) {
      double tick = at == 0 || at == length ? TICK_MM : TICK_MM / 2;
      pen.line(leftMm + at, yMm - tick, leftMm + at, yMm, BAR_MM);
    }
  }

  /** Marks in the margins along which the sheet is cut, and short ones where a flag is folded. */
  private void marks(PagePen pen) throws IOException {
    for (int column = 1; column <= sheet.grid().columns(); column++) {
      LabelArea area = sheet.area(column);
      markAcross(pen, area.xMm(), MARK_MM);
      markAcross(pen, area.rightMm(), MARK_MM);
      if (sheet.label().neckMm().isPresent()) {
        markAcross(pen, area.xMm() + area.widthMm() / 2, MARK_MM / 2);
      }
    }
    for (int row = 0; row < sheet.grid().rows(); row++) {
      LabelArea area = sheet.area(row * sheet.grid().columns() + 1);
      markDown(pen, area.yMm());
      markDown(pen, area.bottomMm());
    }
  }

  private void markAcross(PagePen pen, double xMm, double lengthMm) throws IOException {
    double above = labels.yMm() - MARK_GAP_MM;
    double below = labels.bottomMm() + MARK_GAP_MM;
    pen.line(xMm, above - lengthMm, xMm, above, THIN_MM);
    pen.line(xMm, below, xMm, below + lengthMm, THIN_MM);
  }

  private void markDown(PagePen pen, double yMm) throws IOException {
    double left = labels.xMm() - MARK_GAP_MM;
    double right = labels.rightMm() + MARK_GAP_MM;
    pen.line(left - MARK_MM, yMm, left, yMm, THIN_MM);
    pen.line(right, yMm, right + MARK_MM, yMm, THIN_MM);
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
