package wallbook.render.labels;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import wallbook.AllWords;
import wallbook.Jobs;
import wallbook.compose.labels.Label;
import wallbook.compose.labels.LabelsComposer;
import wallbook.finding.Findings;
import wallbook.record.Job;
import wallbook.render.Documents;
import wallbook.render.Fonts;
import wallbook.stock.LabelArea;
import wallbook.stock.LabelSheet;
import wallbook.stock.LabelSheets;
import wallbook.stock.Legibility;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

/**
 * Labels of a job printed on a sheet of the program's, with the places they were laid out at.
 *
 * @param pdf the file, unless something was refused
 * @param pages where everything should be; a tape's leader is not among them
 */
record Printed(LabelSheet sheet, Optional<byte[]> pdf, List<SheetPage> pages, Findings findings) {
  static final Legibility LEGIBILITY = new Legibility(Jobs.TABLES);
  private static final Fonts FONTS = new Fonts();
  private static final Wording WORDING =
      new Wording(Locale.US, AllWords.ENGLISH, UnitSystem.FEET_AND_INCHES);
  private static final LabelPrinter PRINTER = new LabelPrinter(LEGIBILITY, WORDING);
  private static final Map<String, Printed> KEPT = new ConcurrentHashMap<>();
  private static final double MM_PER_INCH = 25.4;

  static LabelSheet sheet(String name) {
    return LabelSheets.of(Jobs.TABLES).named(name).orElseThrow();
  }

  static List<Label> labels(Job job, LabelSheet sheet) {
    return new LabelsComposer(job, WORDING)
        .labels(sheet.purpose(), sheet.label().cells().orElse(1));
  }

  /** All labels for a sheet; printed once for each job and sheet, and kept. */
  static Printed of(Job job, String sheetName) {
    return KEPT.computeIfAbsent(
        job.facts().id() + System.identityHashCode(job) + sheetName,
        key -> {
          LabelSheet sheet = sheet(sheetName);
          return of(new LabelOrder(sheet, 1, labels(job, sheet)));
        });
  }

  static Printed of(LabelOrder order) {
    Findings findings = new Findings();
    Optional<byte[]> pdf = PRINTER.print(order, Documents.FACTS, List.of(), findings);
    List<SheetPage> pages = new SheetLayout(FONTS, LEGIBILITY, WORDING, new Findings()).lay(order);
    return new Printed(order.sheet(), pdf, pages, findings);
  }

  /** A page of labels as it is printed, the first being 0. */
  BufferedImage picture(int page, int dpi) {
    try (PDDocument document = Loader.loadPDF(pdf.orElseThrow())) {
      int leaders = document.getNumberOfPages() - pages.size();
      return new PDFRenderer(document).renderImageWithDPI(page + leaders, dpi, ImageType.GRAY);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The part of a picture that shows an area, cut to whole pixels inside it. */
  static BufferedImage cut(BufferedImage picture, LabelArea area, int dpi) {
    int left = (int) Math.ceil(area.xMm() * dpi / MM_PER_INCH);
    int top = (int) Math.ceil(area.yMm() * dpi / MM_PER_INCH);
    int right = (int) Math.min(picture.getWidth(), area.rightMm() * dpi / MM_PER_INCH);
    int bottom = (int) Math.min(picture.getHeight(), area.bottomMm() * dpi / MM_PER_INCH);
    return picture.getSubimage(left, top, right - left, bottom - top);
  }

  /** Whether a part of a picture is white. */
  static boolean white(BufferedImage part) {
    for (int y = 0; y < part.getHeight(); y++) {
      for (int x = 0; x < part.getWidth(); x++) {
        if ((part.getRGB(x, y) & 0xFF) < 0xC0) {
          return false;
        }
      }
    }
    return true;
  }
}
