package wallbook.render.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.render.Tag;

class LineBreakerTest {
  private static final String CSS =
      "p { font-size: 10pt; line-height: 1.5; width: auto } .whole { white-space: nowrap }"
          + " .long { word-wrap: break-word } .lines { white-space: pre-line }"
          + " .pre { white-space: pre-wrap } .big { font-size: 20pt }"
          + " .right { text-align: right } .center { text-align: center }";

  private static Passage passage(String html) throws StyleProblem {
    Workshop shop = new Workshop(StyleSheet.read(CSS), Map.of(), Locale.US);
    Branch branch = branch(shop, Jsoup.parse(html).selectFirst("p"));
    return InlineReader.read(shop, branch, shop.nodes(branch), new Tag(null, "P"), true, true);
  }

  private static Branch branch(Workshop shop, Element element) throws StyleProblem {
    Branch branch =
        new Branch(
            element.normalName().equals("html") ? null : branch(shop, element.parent()),
            element,
            element.elementSiblingIndex() + 1);
    shop.stylist().style(branch);
    return branch;
  }

  private static List<Line> lines(String html, float width) throws StyleProblem {
    Workshop shop = new Workshop(StyleSheet.read(CSS), Map.of(), Locale.US);
    Branch branch = branch(shop, Jsoup.parse(html).selectFirst("p"));
    return LineBreaker.lines(passage(html), branch.style().block(), width);
  }

  private static List<String> texts(String html, float width) throws StyleProblem {
    List<String> texts = new ArrayList<>();
    for (Line line : lines(html, width)) {
      StringBuilder text = new StringBuilder();
      for (int i = line.from(); i < line.to(); i++) {
        text.appendCodePoint(line.text().character(i));
      }
      texts.add(text.toString());
    }
    return texts;
  }

  /** The widths of another reader of the font file, that of Java itself. */
  @ParameterizedTest
  @ValueSource(strings = {"wall plate", "R01-03, 18 in above the floor", "≤ 2 m² × 4 Ω"})
  void aLineIsAsWideAsItsLetters(String text) throws Exception {
    try (InputStream file =
        getClass().getResourceAsStream("/wallbook/fonts/NotoSans-Regular.ttf")) {
      Font font = Font.createFont(Font.TRUETYPE_FONT, file).deriveFont(10f);
      FontRenderContext exact = new FontRenderContext(null, true, true);
      double sum = 0;
      for (int i = 0; i < text.length(); i++) {
        sum +=
            font.createGlyphVector(exact, text.substring(i, i + 1))
                .getGlyphMetrics(0)
                .getAdvanceX();
      }
      assertEquals(sum, passage("<p>" + text).widest(), 0.01);
    }
  }

  @Test
  void aLineTakesAsManyWordsAsFit() throws StyleProblem {
    float two = passage("<p>one two").widest();
    assertEquals(List.of("one two", "three"), texts("<p>one two three", two + 0.1f));
    assertEquals(List.of("one", "two", "three"), texts("<p>one two three", two - 0.1f));
  }

  @Test
  void spacesOfTheSourceCountAsOneAndThoseAtALinesEndsForNothing() throws StyleProblem {
    float word = passage("<p>three").widest();
    assertEquals(List.of("one", "two", "three"), texts("<p> one \n  two\t three ", word + 0.1f));
    assertEquals(passage("<p>a b").widest(), passage("<p> a \n b ").widest(), 0.001);
  }

  @Test
  void whatIsKeptWholeGoesToTheNextLineAsOne() throws StyleProblem {
    float width = passage("<p>label R01 ").widest() + 12;
    assertEquals(List.of("label", "R01 A 3"), texts("<p>label <b class=whole>R01 A 3</b>", width));
  }

  @Test
  void aWordWiderThanTheLineIsTornWhateverTheStyle() throws StyleProblem {
    float three = passage("<p>WWW").widest();
    assertEquals(List.of("WWW", "WW"), texts("<p>WWWWW", three + 0.1f));
    assertEquals(
        List.of("WWW", "WW"),
        texts("<p><b class=whole>WWWWW", passage("<p><b>WWW").widest() + 0.1f));
  }

  @Test
  void aWordThatMayBeTornAsksForNoWidth() throws StyleProblem {
    assertEquals(passage("<p>WWWWW").widest(), passage("<p>WWWWW").narrowest(), 0.001);
    assertEquals(
        passage("<p>W").widest(), passage("<p><span class=long>WWWWW</span>").narrowest(), 0.001);
  }

  @Test
  void theNarrowestIsTheWidestWord() throws StyleProblem {
    assertEquals(passage("<p>panel").widest(), passage("<p>a panel of 24").narrowest(), 0.001);
  }

  @Test
  void lineEndsAreKeptWhereTheStyleSaysSo() throws StyleProblem {
    assertEquals(List.of("a", "b c"), texts("<p class=lines>a\nb  c", 1000));
    assertEquals(List.of("a b"), texts("<p>a\nb", 1000));
    assertEquals(List.of("a", "  b"), texts("<p class=pre>a\n  b", 1000));
    assertEquals(List.of("a", "b"), texts("<p>a<br>b", 1000));
  }

  @Test
  void aLineIsAsHighAsItsHighestText() throws StyleProblem {
    assertEquals(15, lines("<p>a", 1000).get(0).height(), 0.001);
    // Both share the base line, so the greater of the parts above and below it counts.
    assertEquals(30, lines("<p>a <b class=big>b</b>", 1000).get(0).height(), 0.001);
    assertEquals(15, lines("<p><small>a</small>", 1000).get(0).height(), 0.5);
  }

  @Test
  void linesStandWhereTheyAreAligned() throws StyleProblem {
    float width = passage("<p>abc").widest();
    assertEquals(0, lines("<p>abc", 100).get(0).left(), 0.001);
    assertEquals(100 - width, lines("<p class=right>abc", 100).get(0).left(), 0.001);
    assertEquals((100 - width) / 2, lines("<p class=center>abc", 100).get(0).left(), 0.001);
  }

  @Test
  void anEmptyParagraphHasNoLine() throws StyleProblem {
    assertTrue(lines("<p> </p>", 100).isEmpty());
  }
}
