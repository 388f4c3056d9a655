package wallbook.render.labels;

import java.util.List;
import java.util.Optional;
import wallbook.finding.Findings;
import wallbook.render.Attachment;
import wallbook.render.DocumentFacts;
import wallbook.render.Fonts;
import wallbook.stock.Legibility;
import wallbook.wording.Wording;

/**
 * Prints labels as a PDF that claims, and is tested to keep, PDF/UA-1 and PDF/A-3a: the same bytes
 * for the same order. Fonts are read once, so one printer should print all labels of a package.
 */
public final class LabelPrinter {
  private final Fonts fonts = new Fonts();
  private final Legibility legibility;
  private final Wording wording;

  public LabelPrinter(Legibility legibility, Wording wording) {
    this.legibility = legibility;
    this.wording = wording;
  }

  /**
   * The file with all labels of an order; empty if there are none, or if some can't be printed
   * legibly.
   *
   * @param facts what the margins say; the paper is that of the sheet, whatever the facts say
   * @param findings takes an error for each label that can't be printed, and a warning for each
   *     type of cable that the sheet's wraps don't suit
   */
  public Optional<byte[]> print(
      LabelOrder order, DocumentFacts facts, List<Attachment> attachments, Findings findings) {
    Findings own = new Findings();
    List<SheetPage> pages = new SheetLayout(fonts, legibility, wording, own).lay(order);
    findings.addAll(own.inReportOrder());
    if (pages.isEmpty() || own.hasErrors()) {
      return Optional.empty();
    }
    return Optional.of(
        new LabelPdf(fonts, legibility, wording, facts).draw(order.sheet(), pages, attachments));
  }
}
