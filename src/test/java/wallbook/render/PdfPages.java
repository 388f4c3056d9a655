package wallbook.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * The pages of a PDF as a reader sees them: text and ink.
 *
 * <p>The box between the margins is that of the theme: 15 mm at the sides, head and foot between 9
 * mm and the text.
 */
public final class PdfPages {
  private static final int DPI = 100;
  private static final double SIDE_MM = 15;
  private static final double EDGE_MM = 8;

  /** Where head and foot end and the text begins. */
  private static final double TEXT_TOP_MM = 18.5;

  private static final double TEXT_BOTTOM_MM = 16.5;
  private static final double TOLERANCE_MM = 0.6;

  private final List<String> texts = new ArrayList<>();
  private final List<BufferedImage> pictures = new ArrayList<>();

  private PdfPages() {}

  public static PdfPages of(byte[] pdf) {
    PdfPages pages = new PdfPages();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFRenderer renderer = new PDFRenderer(document);
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        stripper.setStartPage(page + 1);
        stripper.setEndPage(page + 1);
        pages.texts.add(stripper.getText(document));
        pages.pictures.add(renderer.renderImageWithDPI(page, DPI, ImageType.GRAY));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return pages;
  }

  public int count() {
    return texts.size();
  }

  /** Text of a page, the first being 1. */
  public String text(int page) {
    return texts.get(page - 1);
  }

  /** The first page from 1 that has the text, or 0. */
  public int pageWith(String text) {
    for (int page = 1; page <= count(); page++) {
      if (text(page).contains(text)) {
        return page;
      }
    }
    return 0;
  }

  /** The smallest box round all ink between head and foot of a page, in mm from the upper left. */
  public Box ink(int page) {
    BufferedImage picture = pictures.get(page - 1);
    int top = pixels(TEXT_TOP_MM);
    int height = picture.getHeight() - top - pixels(TEXT_BOTTOM_MM);
    return boxIn(picture, new Rectangle(0, top, picture.getWidth(), height));
  }

  /** Fails if a page has nothing between head and foot. */
  public void assertNoneBlank() {
    for (int page = 1; page <= count(); page++) {
      assertTrue(ink(page).width() > 0, "page " + page + " is blank");
    }
  }

  /** Fails if anything is printed into the margins, or cut off at them. */
  public void assertInkInsideMargins() {
    for (int page = 1; page <= count(); page++) {
      BufferedImage picture = pictures.get(page - 1);
      Box box = boxIn(picture, new Rectangle(0, 0, picture.getWidth(), picture.getHeight()));
      double widthMm = millimetres(picture.getWidth());
      double heightMm = millimetres(picture.getHeight());
      String where = "page " + page + ": ink in " + box;
      assertTrue(box.left() >= SIDE_MM - TOLERANCE_MM, where);
      assertTrue(box.left() + box.width() <= widthMm - SIDE_MM + TOLERANCE_MM, where);
      assertTrue(box.top() >= EDGE_MM, where);
      assertTrue(box.top() + box.height() <= heightMm - EDGE_MM, where);
    }
  }

  /** Fails unless every page has the number it should, at its foot. */
  public void assertNumbered() {
    for (int page = 1; page <= count(); page++) {
      String expected = "Page " + page + " of " + count();
      assertEquals(page, pageWith(expected), "where '" + expected + "' stands");
    }
  }

  /** A box on a page, in mm; of no width if there is no ink. */
  public record Box(double left, double top, double width, double height) {}

  private static Box boxIn(BufferedImage picture, Rectangle area) {
    int left = Integer.MAX_VALUE;
    int top = Integer.MAX_VALUE;
    int right = -1;
    int bottom = -1;
    for (int y = area.y; y < area.y + area.height; y++) {
      for (int x = area.x; x < area.x + area.width; x++) {
        if ((picture.getRGB(x, y) & 0xFF) < 0xF0) {
          left = Math.min(left, x);
          top = Math.min(top, y);
          right = Math.max(right, x);
          bottom = y;
        }
      }
    }
    return right < 0
        ? new Box(0, 0, 0, 0)
        : new Box(
            millimetres(left),
            millimetres(top),
            millimetres(right + 1 - left),
            millimetres(bottom + 1 - top));
  }

  private static int pixels(double millimetres) {
    return (int) Math.round(millimetres * DPI / 25.4);
  }

  private static double millimetres(int pixels) {
    return pixels * 25.4 / DPI;
  }
}
