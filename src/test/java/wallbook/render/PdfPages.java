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
  private static final int DPI = 72;
  private static final double SIDE_MM = 15;
  private static final double EDGE_MM = 8;

  /** Where head and foot end and the text begins. */
  private static final double TEXT_TOP_MM = 18.5;

  private static final double TEXT_BOTTOM_MM = 16.5;
  private static final double TOLERANCE_MM = 0.6;

  private final byte[] pdf;
  private final List<String> texts = new ArrayList<>();
  private final List<Ink> inks = new ArrayList<>();

  private PdfPages(byte[] pdf) {
    this.pdf = pdf;
  }

  public static PdfPages of(byte[] pdf) {
    PdfPages pages = new PdfPages(pdf);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        pages.texts.add(stripper.getText(document));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return pages;
  }

  /** Where ink is on each page; painted when first asked for, which most tests don't. */
  private List<Ink> inks() {
    if (inks.isEmpty()) {
      try (PDDocument document = Loader.loadPDF(pdf)) {
        PDFRenderer renderer = new PDFRenderer(document);
        for (int page = 0; page < document.getNumberOfPages(); page++) {
          inks.add(Ink.in(renderer.renderImageWithDPI(page, DPI, ImageType.GRAY)));
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return inks;
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
    return inks().get(page - 1).text();
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
      Ink ink = inks().get(page - 1);
      Box box = ink.all();
      String where = "page " + page + ": ink in " + box;
      assertTrue(box.left() >= SIDE_MM - TOLERANCE_MM, where);
      assertTrue(box.left() + box.width() <= ink.widthMm() - SIDE_MM + TOLERANCE_MM, where);
      assertTrue(box.top() >= EDGE_MM, where);
      assertTrue(box.top() + box.height() <= ink.heightMm() - EDGE_MM, where);
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

  /** The smallest boxes round all ink of a page and round that between head and foot. */
  private record Ink(double widthMm, double heightMm, Box all, Box text) {
    static Ink in(BufferedImage picture) {
      int width = picture.getWidth();
      int height = picture.getHeight();
      int top = pixels(TEXT_TOP_MM);
      int textHeight = height - top - pixels(TEXT_BOTTOM_MM);
      return new Ink(
          millimetres(width),
          millimetres(height),
          boxIn(picture, new Rectangle(0, 0, width, height)),
          boxIn(picture, new Rectangle(0, top, width, textHeight)));
    }
  }

  private static Box boxIn(BufferedImage picture, Rectangle area) {
    int top = area.y;
    int bottom = area.y + area.height;
    int left = area.x;
    int right = area.x + area.width;
    while (top < bottom && !hasInk(picture, left, top, right, top + 1)) {
      top++;
    }
    if (top == bottom) {
      return new Box(0, 0, 0, 0);
    }
    while (!hasInk(picture, left, bottom - 1, right, bottom)) {
      bottom--;
    }
    while (!hasInk(picture, left, top, left + 1, bottom)) {
      left++;
    }
    while (!hasInk(picture, right - 1, top, right, bottom)) {
      right--;
    }
    return new Box(
        millimetres(left), millimetres(top), millimetres(right - left), millimetres(bottom - top));
  }

  private static boolean hasInk(BufferedImage picture, int left, int top, int right, int bottom) {
    for (int y = top; y < bottom; y++) {
      for (int x = left; x < right; x++) {
        if ((picture.getRGB(x, y) & 0xFF) < 0xF0) {
          return true;
        }
      }
    }
    return false;
  }

  private static int pixels(double millimetres) {
    return (int) Math.round(millimetres * DPI / 25.4);
  }

  private static double millimetres(int pixels) {
    return pixels * 25.4 / DPI;
  }
}
