package wallbook.render.press;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;

/**
 * Where words stand on a page of 200 by 200 points without margins, by the rules of CSS 2.1. Each
 * word is a letter; its type is 10 points on lines of 20, so its base line lies 20/2 + 10 (1.069 -
 * 0.293)/2 = 13.88 points below the line's upper edge (10.8.1, with the ascent and descent that the
 * font file tells).
 */
class LayoutTest {
  private static final float BASE = 13.88f;
  private static final float TOLERANCE = 0.02f;
  private static final String CSS =
      "@page { size: 200pt 200pt; margin: 0 }"
          + " body { font-size: 10pt; line-height: 2 } p, ul { margin: 0 } td, th { padding: 0 }"
          + " table { border-collapse: collapse; width: 100%; table-layout: fixed }"
          + " td { vertical-align: top }";

  /** The left end and the base line of each letter, in points from the page's upper left corner. */
  private static Map<String, Spot> spots(String css, String body) throws IOException, StyleProblem {
    Map<String, Spot> spots = new LinkedHashMap<>();
    try (PDDocument pdf = new PDDocument()) {
      Press.print(
          pdf,
          Jsoup.parse("<html lang=en><body>" + body),
          StyleSheet.read(CSS + css),
          Map.of(),
          List.of());
      new PDFTextStripper() {
        @Override
        protected void processTextPosition(TextPosition letter) {
          spots.putIfAbsent(
              letter.getUnicode(),
              new Spot(
                  getCurrentPageNo(),
                  letter.getXDirAdj(),
                  letter.getYDirAdj(),
                  letter.getXDirAdj() + letter.getWidthDirAdj()));
        }
      }.getText(pdf);
    }
    return spots;
  }

  private record Spot(int page, float left, float base, float right) {}

  private static void assertAt(float left, float lineTop, Spot spot) {
    assertEquals(left, spot.left(), TOLERANCE);
    assertEquals(lineTop + BASE, spot.base(), TOLERANCE);
  }

  @Test
  void marginsBordersAndPaddingsMoveTheText() throws Exception {
    String css = "div { margin: 8pt 0 0 10pt; border: 2pt solid #000; padding: 3pt 4pt }";
    Map<String, Spot> spots = spots(css, "<div>a</div><p>b</p>");
    assertAt(10 + 2 + 4, 8 + 2 + 3, spots.get("a"));
    assertAt(0, 8 + 2 + 3 + 20 + 3 + 2, spots.get("b"));
  }

  @Test
  void marginsOfBoxesInsideEachOtherCollapse() throws Exception {
    // 8.3.1: of parent and first child the greater counts; between neighbours too.
    String css = "div { margin: 6pt 0 } div p { margin: 10pt 0 } .s { margin: 4pt 0 }";
    Map<String, Spot> spots = spots(css, "<p>a</p><div><p>b</p></div><p class=s>c</p>");
    assertAt(0, 20 + 10, spots.get("b"));
    assertAt(0, 20 + 10 + 20 + 10, spots.get("c"));
  }

  @Test
  void aPaddingKeepsMarginsApart() throws Exception {
    String css = "div { margin: 6pt 0; padding: 1pt 0 } div p { margin: 10pt 0 }";
    assertAt(0, 6 + 1 + 10, spots(css, "<div><p>b</p></div>").get("b"));
  }

  @Test
  void aBoxHasTheWidthAndHeightItIsGiven() throws Exception {
    String css = ".w { width: 50%; text-align: right } .h { height: 35pt }";
    Map<String, Spot> spots = spots(css, "<p class=w>a</p><p class=h>b</p><p>c</p>");
    assertEquals(100, spots.get("a").right(), TOLERANCE);
    assertAt(0, 20 + 35, spots.get("c"));
  }

  @Test
  void autoMarginsCentreABoxOfAWidth() throws Exception {
    assertAt(70, 0, spots("p { width: 60pt; margin: 0 auto }", "<p>a</p>").get("a"));
  }

  @Test
  void cellsOverSeveralColumnsAndRowsTakeTheirPlaces() throws Exception {
    String table =
        "<table><tr><td rowspan=2>a</td><td colspan=2>b</td><td>c</td></tr>"
            + "<tr><td>d</td><td>e</td><td>f</td></tr></table>";
    Map<String, Spot> spots = spots("", table);
    assertAt(0, 0, spots.get("a"));
    assertAt(50, 0, spots.get("b"));
    assertAt(150, 0, spots.get("c"));
    assertAt(50, 20, spots.get("d"));
    assertAt(100, 20, spots.get("e"));
    assertAt(150, 20, spots.get("f"));
  }

  @Test
  void aCellOverTwoRowsMakesTheLastHighEnough() throws Exception {
    String table =
        "<table><tr><td rowspan=2>a<br>x<br>y</td><td>b</td></tr><tr><td>c</td></tr></table><p>d</p>";
    Map<String, Spot> spots = spots("", table);
    assertAt(100, 20, spots.get("c"));
    assertAt(0, 60, spots.get("d"));
  }

  @Test
  void cellsStandAtTheTopTheMiddleOrTheBottomOfTheirRow() throws Exception {
    String table =
        "<table><tr><td>a<br>x<br>y</td><td class=m>b</td><td class=b>c</td><td>d</td></tr></table>";
    Map<String, Spot> spots =
        spots(".m { vertical-align: middle } .b { vertical-align: bottom }", table);
    assertAt(50, 20, spots.get("b"));
    assertAt(100, 40, spots.get("c"));
    assertAt(150, 0, spots.get("d"));
  }

  @Test
  void cellsShareTheWiderOfTheirBorders() throws Exception {
    // 17.6.2: half of a shared border lies in each row.
    String css = "th { border-bottom: 4pt solid #000 } td { border-top: 2pt solid #000 }";
    Map<String, Spot> spots =
        spots(
            css, "<table><tr><th style='text-align: left'>a</th></tr><tr><td>b</td></tr></table>");
    assertAt(0, 0, spots.get("a"));
    assertAt(0, 20 + 4, spots.get("b"));
  }

  @Test
  void aListIsSetInTwoColumnsOfOneHeight() throws Exception {
    String list = "<ul><li>a</li><li>b</li><li>c</li></ul><p>d</p>";
    Map<String, Spot> spots =
        spots("ul { column-count: 2; column-gap: 20pt; padding: 0; list-style-type: none }", list);
    assertAt(0, 0, spots.get("a"));
    assertAt(0, 20, spots.get("b"));
    assertAt(110, 0, spots.get("c"));
    assertAt(0, 40, spots.get("d"));
  }

  @Test
  void aPieceInALineIsNotBroken() throws Exception {
    String css = "p { width: 50pt } span { display: inline-block; margin-right: 5pt }";
    Map<String, Spot> spots = spots(css, "<p><span>a b c</span> <span>d e f</span></p>");
    assertAt(0, 0, spots.get("a"));
    assertAt(0, 20, spots.get("d"));
    assertEquals(spots.get("d").base(), spots.get("f").base(), TOLERANCE);
  }

  @Test
  void theNumberOfAPageStandsAtTheEndOfItsDots() throws Exception {
    String css =
        "span:after { content: leader(dotted) target-counter(attr(data-page-of), page) }"
            + " h2 { page-break-before: always; font-size: 10pt; margin: 0 }";
    String body = "<p>a <span data-page-of='#x'></span></p><h2>b</h2><h2>c</h2><h2 id=x>d</h2>";
    Map<String, Spot> spots = spots(css, body);
    assertEquals(1, spots.get("4").page());
    assertEquals(200, spots.get("4").right(), TOLERANCE);
    assertAt(spots.get("4").left(), 0, spots.get("4"));
    assertEquals(spots.get("4").base(), spots.get(".").base(), TOLERANCE);
  }

  @Test
  void whatStandsInTheMarginsCountsThePages() throws Exception {
    String css =
        "@page { margin: 40pt 0 0 0; @top-right { content: counter(page) \"/\" counter(pages);"
            + " text-align: right; vertical-align: bottom; width: 50%; padding-bottom: 5pt;"
            + " font-size: 10pt; line-height: 2 } }"
            + " @page :first { @top-right { content: none } }"
            + " .n { page-break-before: always }";
    Map<String, Spot> spots = spots(css, "<p>a</p><p class=n>b</p><p class=n>c</p>");
    assertEquals(2, spots.get("/").page());
    assertEquals(200, spots.get("3").right(), TOLERANCE);
    assertEquals(40 - 5 - 20 + BASE, spots.get("3").base(), TOLERANCE);
    assertAt(0, 40, spots.get("a"));
  }

  @Test
  void aPartOnOtherPagesIsAsWideAsThose() throws Exception {
    String css = "@page wide { size: 300pt 100pt } .wide { page: wide } p { text-align: right }";
    Map<String, Spot> spots = spots(css, "<p>a</p><div class=wide><p>b</p></div><p>c</p>");
    assertEquals(200, spots.get("a").right(), TOLERANCE);
    assertEquals(300, spots.get("b").right(), TOLERANCE);
    assertEquals(200, spots.get("c").right(), TOLERANCE);
    assertEquals(
        List.of(1, 2, 3),
        List.of(spots.get("a").page(), spots.get("b").page(), spots.get("c").page()));
  }

  @Test
  void whatTheStylesheetWritesStandsBeforeAndAfterBlocksToo() throws Exception {
    Map<String, Spot> spots =
        spots("div:before { content: \"a\" } div:after { content: \"c\" }", "<div><p>b</p></div>");
    assertAt(0, 0, spots.get("a"));
    assertAt(0, 20, spots.get("b"));
    assertAt(0, 40, spots.get("c"));
  }

  @Test
  void anotherSizeInALineSharesItsBaseLine() throws Exception {
    Map<String, Spot> spots = spots("b { font-size: 5pt }", "<p>a <b>b</b></p>");
    assertEquals(spots.get("a").base(), spots.get("b").base(), TOLERANCE);
  }
}
