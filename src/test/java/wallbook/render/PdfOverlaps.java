package wallbook.render;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Text that runs into other text, such as a long word into the next column of a table. */
public final class PdfOverlaps {
  /** Share of the type size that two letters may overlap; letters of one word come close. */
  private static final float LEAST = 0.3f;

  private PdfOverlaps() {}

  /** No letter of a document lies on another of the same line. */
  public static void assertNone(byte[] pdf) throws IOException {
    List<String> overlaps = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        overlaps.addAll(onPage(page, lettersOf(document, page)));
      }
    }
    assertEquals(List.of(), overlaps);
  }

  private static List<TextPosition> lettersOf(PDDocument document, int page) throws IOException {
    List<TextPosition> letters = new ArrayList<>();
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void processTextPosition(TextPosition letter) {
            if (letter.getDir() == 0 && !letter.getUnicode().isBlank()) {
              letters.add(letter);
            }
          }
        };
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    stripper.getText(document);
    return letters;
  }

  private static List<String> onPage(int page, List<TextPosition> letters) {
    letters.sort(
        Comparator.comparingInt((TextPosition letter) -> Math.round(letter.getYDirAdj()))
            .thenComparingDouble(TextPosition::getXDirAdj));
    List<String> overlaps = new ArrayList<>();
    for (int i = 1; i < letters.size(); i++) {
      TextPosition left = letters.get(i - 1);
      TextPosition right = letters.get(i);
      boolean oneLine =
          Math.abs(left.getYDirAdj() - right.getYDirAdj()) < 1
              && left.getXDirAdj() <= right.getXDirAdj();
      float over = left.getXDirAdj() + left.getWidthDirAdj() - right.getXDirAdj();
      if (oneLine && over > LEAST * right.getFontSizeInPt() && !isSame(left, right)) {
        overlaps.add("page " + page + ": " + around(letters, i));
      }
    }
    return overlaps.stream().limit(5).toList();
  }

  /** A letter of a drawing is set twice, once as the ground behind it. */
  private static boolean isSame(TextPosition left, TextPosition right) {
    return left.getUnicode().equals(right.getUnicode())
        && Math.abs(left.getXDirAdj() - right.getXDirAdj()) < 0.1;
  }

  private static String around(List<TextPosition> letters, int at) {
    StringBuilder text = new StringBuilder();
    for (int i = Math.max(0, at - 12); i < Math.min(letters.size(), at + 12); i++) {
      if (Math.abs(letters.get(i).getYDirAdj() - letters.get(at).getYDirAdj()) < 1) {
        text.append(letters.get(i).getUnicode());
      }
    }
    return text.toString();
  }
}
