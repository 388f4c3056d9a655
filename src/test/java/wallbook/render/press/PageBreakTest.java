package wallbook.render.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** On pages of ten lines, 10 points each. */
class PageBreakTest {
  private static final String CSS =
      """
      @page { size: 300pt 100pt; margin: 0; }
      body { font-size: 5pt; line-height: 2; }
      p, ul, h2 { margin: 0; }
      h2 { font-size: 5pt; page-break-after: avoid; }
      table { border-collapse: collapse; width: 100%; }
      .lead { page-break-after: avoid; }
      .keep { page-break-inside: avoid; }
      .new { page-break-before: always; }
      """;

  private static List<List<String>> pages(String body) throws IOException, StyleProblem {
    return pages(CSS, body);
  }

  /** The lines of each page. */
  private static List<List<String>> pages(String css, String body)
      throws IOException, StyleProblem {
    try (PDDocument pdf = new PDDocument()) {
      Press.print(
          pdf,
          Jsoup.parse("<html lang=en><body>" + body),
          StyleSheet.read(css),
          Map.of(),
          List.of());
      List<List<String>> pages = new ArrayList<>();
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
      for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        pages.add(stripper.getText(pdf).lines().map(String::strip).toList());
      }
      return pages;
    }
  }

  private static String lines(int count) {
    return "<p>x</p>".repeat(count);
  }

  private static String table(int rows) {
    StringBuilder table = new StringBuilder("<table><thead><tr><th>Head</th></tr></thead><tbody>");
    for (int i = 1; i <= rows; i++) {
      table.append("<tr><td>row ").append(i).append("</td></tr>");
    }
    return table.append("</tbody></table>").toString();
  }

  @Test
  void aPageTakesAsManyLinesAsFit() throws Exception {
    List<List<String>> pages = pages(lines(21));
    assertEquals(List.of(10, 10, 1), pages.stream().map(List::size).toList());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 3, 5, 6, 7, 8, 9})
  void aTableHeadStandsWithTwoRowsAndWhatLeadsToIt(int before) throws Exception {
    String body = lines(before) + "<h2>Heading</h2><p class=lead>Lead</p>" + table(4);
    for (List<String> page : pages(body)) {
      if (page.contains("Heading")) {
        assertTrue(page.containsAll(List.of("Lead", "Head", "row 1", "row 2")), page::toString);
      }
      assertFalse(page.get(page.size() - 1).equals("Head"), page::toString);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {10, 19, 28})
  void theLastRowOfALongTableDoesntStandAlone(int rows) throws Exception {
    List<List<String>> pages = pages(table(rows));
    List<String> last = pages.get(pages.size() - 1);
    assertEquals(List.of("Head", "row " + (rows - 1), "row " + rows), last);
  }

  @Test
  void everyPageOfATableHasItsHead() throws Exception {
    for (List<String> page : pages(table(40))) {
      assertEquals("Head", page.get(0));
    }
  }

  @Test
  void aRowHigherThanAPageIsContinued() throws Exception {
    String cell = "line<br>".repeat(25) + "end";
    List<List<String>> pages =
        pages("<table><thead><tr><th>Head</th></tr></thead><tr><td>" + cell + "</td></tr></table>");
    assertEquals(3, pages.size());
    assertEquals(25, pages.stream().flatMap(List::stream).filter("line"::equals).count());
    assertTrue(pages.get(2).contains("end"));
    assertTrue(pages.stream().allMatch(page -> page.get(0).equals("Head")));
  }

  @Test
  void whatIsKeptTogetherGoesToTheNextPageWhole() throws Exception {
    List<List<String>> pages = pages(lines(8) + "<div class=keep><p>a</p><p>b</p><p>c</p></div>");
    assertEquals(List.of("a", "b", "c"), pages.get(1));
  }

  @Test
  void whatIsKeptTogetherButHigherThanAPageIsSplit() throws Exception {
    List<List<String>> pages = pages("<div class=keep>" + lines(14) + "</div>");
    assertEquals(List.of(10, 4), pages.stream().map(List::size).toList());
  }

  @Test
  void atLeastTwoLinesOfAParagraphStandOnEachPage() throws Exception {
    String five = "<p>a<br>b<br>c<br>d<br>e</p>";
    assertEquals(List.of("a", "b", "c", "d", "e"), pages(lines(9) + five).get(1));
    assertEquals(List.of("d", "e"), pages(lines(6) + five).get(1));
    assertEquals(List.of("c", "d", "e"), pages(lines(8) + five).get(1));
  }

  @Test
  void aPageBeginsWhereTheStyleSaysSo() throws Exception {
    assertEquals(List.of(List.of("x"), List.of("y")), pages("<p>x</p><p class=new>y</p>"));
  }

  @Test
  void aMarginIsLeftOutWhereAPageEndsByItself() throws Exception {
    List<List<String>> pages = pages(CSS + "p { margin-top: 10pt }", lines(11));
    // Lines and gaps in turn: five on each page, as the gap above the first is left out.
    assertEquals(List.of(5, 5, 1), pages.stream().map(List::size).toList());
  }

  @Test
  void marginsOfNeighboursCollapseToTheGreater() throws Exception {
    // 10 high each, 10 between: five fit, not four.
    List<List<String>> pages =
        pages(CSS + "p { margin: 10pt 0 } body { margin-top: -10pt }", lines(5));
    assertEquals(1, pages.size());
  }
}
