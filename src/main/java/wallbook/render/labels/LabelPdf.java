package wallbook.render.labels;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDLayoutAttributeObject;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import wallbook.compose.labels.PortStrip;
import wallbook.render.ArchiveFrame;
import wallbook.render.Attachment;
import wallbook.render.ColourProfile;
import wallbook.render.DocumentFacts;
import wallbook.render.Face;
import wallbook.render.Fonts;
import wallbook.render.PdfFile;
import wallbook.render.PdfFinish;
import wallbook.render.PdfSeal;
import wallbook.render.Tag;
import wallbook.stock.LabelArea;
import wallbook.stock.LabelSheet;
import wallbook.stock.Legibility;
import wallbook.stock.Stock;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Draws laid-out pages as a tagged PDF: a list of labels, each with its texts and its code. */
final class LabelPdf {
  private static final double PT_PER_MM = 72 / 25.4;
  private static final double RULE_MM = 0.12;

  private final Fonts fonts;
  private final Legibility legibility;
  private final Wording wording;
  private final DocumentFacts facts;

  LabelPdf(Fonts fonts, Legibility legibility, Wording wording, DocumentFacts facts) {
    this.fonts = fonts;
    this.legibility = legibility;
    this.wording = wording;
    this.facts = facts;
  }

  byte[] draw(LabelSheet sheet, List<SheetPage> pages, List<Attachment> attachments) {
    try (PDDocument pdf = new PDDocument()) {
      String title = facts.documentTitle() + ", " + facts.jobTitle();
      ArchiveFrame.put(pdf, title, Optional.empty(), facts, new ColourProfile());
      // Labels fit their sheet only in their true size.
      pdf.getDocumentCatalog()
          .getViewerPreferences()
          .setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
      Map<Face, PDFont> embedded = new EnumMap<>(Face.class);
      embedded.put(Face.REGULAR, fonts.embedded(pdf, Face.REGULAR));
      embedded.put(Face.BOLD, fonts.embedded(pdf, Face.BOLD));
      Tagging tags = new Tagging();
      Margins margins = new Margins(new Typesetter(fonts), legibility, wording, facts, sheet);
      if (sheet.stock() == Stock.TAPE) {
        PDPage leader = page(pdf, margins.leaderWidthMm(), sheet.page().heightMm());
        tags.begin(leader);
        try (PagePen pen = new PagePen(pdf, leader, embedded)) {
          margins.drawLeader(pen, tags);
        }
      }
      Tag list = new Tag(tags.document(), "L");
      for (int i = 0; i < pages.size(); i++) {
        PDPage page = page(pdf, sheet.page().widthMm(), sheet.page().heightMm());
        tags.begin(page);
        try (PagePen pen = new PagePen(pdf, page, embedded)) {
          margins.draw(pen, tags, i + 1, pages.size());
          for (SheetPage.Placed placed : pages.get(i).labels()) {
            draw(placed, pen, tags, list, sheet);
          }
        }
      }
      tags.finish(pdf);
      PdfFinish finish = new PdfFinish(pdf, facts);
      finish.attach(attachments);
      finish.fixIdentity(identity(sheet, pages), attachments);
      for (PDFont font : embedded.values()) {
        font.subset();
      }
      return PdfSeal.seal(PdfFile.of(pdf));
    } catch (IOException e) {
      throw new UncheckedIOException("PDF of " + facts.documentTitle(), e);
    }
  }

  private static PDPage page(PDDocument pdf, double widthMm, double heightMm) {
    PDPage page =
        new PDPage(new PDRectangle((float) (widthMm * PT_PER_MM), (float) (heightMm * PT_PER_MM)));
    pdf.addPage(page);
    return page;
  }

  private void draw(SheetPage.Placed placed, PagePen pen, Tagging tags, Tag list, LabelSheet sheet)
      throws IOException {
    Tag body = new Tag(new Tag(list, "LI"), "LBody");
    if (placed.label() instanceof PortStrip strip && sheet.stock() != Stock.TAPE) {
      TypeLine caption =
          new Typesetter(fonts)
              .line(strip.title(), Face.REGULAR, Margins.SMALL_PT)
              .moved(
                  placed.area().xMm() + Margins.CAPTION_GAP_MM,
                  placed.area().yMm() - Margins.CAPTION_GAP_MM);
      write(caption, body, pen, tags);
    }
    for (TypeLine line : placed.face().lines()) {
      write(line, body, pen, tags);
    }
    if (placed.face().code().isPresent()) {
      ScanCode code = placed.face().code().get();
      String said = wording.say(Phrase.of("label.code.alt", "text", code.text()));
      Tag figure = new Tag(body, "Figure", said);
      figure.attributes(box(code.square(), sheet));
      pen.beginMarked(figure.type(), tags.mark(figure));
      pen.code(code);
      pen.end();
    }
    if (!placed.face().rules().isEmpty()) {
      pen.beginArtifact();
      for (LabelFace.Rule rule : placed.face().rules()) {
        pen.line(rule.fromXMm(), rule.fromYMm(), rule.toXMm(), rule.toYMm(), RULE_MM);
      }
      pen.end();
    }
  }

  private static void write(TypeLine line, Tag body, PagePen pen, Tagging tags) throws IOException {
    Tag paragraph = new Tag(body, "P");
    pen.beginMarked(paragraph.type(), tags.mark(paragraph));
    pen.write(line);
    pen.end();
  }

  private static COSDictionary box(LabelArea area, LabelSheet sheet) {
    PDLayoutAttributeObject box = new PDLayoutAttributeObject();
    box.setPlacement(PDLayoutAttributeObject.PLACEMENT_BLOCK);
    float bottom = (float) ((sheet.page().heightMm() - area.bottomMm()) * PT_PER_MM);
    box.setBBox(
        new PDRectangle(
            (float) (area.xMm() * PT_PER_MM),
            bottom,
            (float) (area.widthMm() * PT_PER_MM),
            (float) (area.heightMm() * PT_PER_MM)));
    return box.getCOSObject();
  }

  /**
   * What the file was made from, for its identifier. Lengths are whole micrometres, since one Java
   * writes a fraction with other digits than the next.
   */
  private String identity(LabelSheet sheet, List<SheetPage> pages) {
    StringBuilder identity = new StringBuilder(sheet.name()).append(facts);
    for (SheetPage page : pages) {
      for (SheetPage.Placed placed : page.labels()) {
        identity.append('\n').append(micrometres(placed.area().xMm()));
        identity.append(' ').append(micrometres(placed.area().yMm()));
        placed.face().lines().forEach(line -> identity.append('\n').append(line.text()));
        placed.face().code().ifPresent(code -> identity.append('\n').append(code.text()));
      }
    }
    return identity.toString();
  }

  private static long micrometres(double mm) {
    return Math.round(mm * 1000);
  }
}
