package wallbook.render.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Stylesheets are followed as CSS 2.1 says, or refused. */
class StyleSheetTest {
  private static final float PT_PER_MM = 72 / 25.4f;

  private static Style style(String css, String html) throws StyleProblem {
    Element page = Jsoup.parse(html);
    Stylist stylist = new Stylist(StyleSheet.read(css));
    return branch(stylist, page.selectFirst("#x")).style();
  }

  private static Branch branch(Stylist stylist, Element element) throws StyleProblem {
    boolean root = element.normalName().equals("html");
    Branch branch =
        new Branch(
            root ? null : branch(stylist, element.parent()),
            element,
            element.elementSiblingIndex() + 1);
    stylist.style(branch);
    return branch;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "p { colour: red }                      | the property 'colour' is not known here | colour: red",
        "p { color: reddish }                   | the property 'color' can't be set to 'reddish' here | color: reddish",
        "p { margin: 1 }                        | the property 'margin' can't be set to '1' here | margin: 1",
        "p { display: flex }                    | the property 'display' can't be set to 'flex' here | display: flex",
        "p { font-family: \"Other\" }           | the property 'font-family' can't be set to '\"Other\"' here | font-family: \"Other\"",
        "p:hover { color: red }                 | the selector 'p:hover' is not known here | p:hover",
        "p & q { color: red }                   | the selector 'p & q' is not known here | p & q",
        "@import url(x.css);                    | '@import' is not known here | @import url(x.css);",
        "@media speech { p { color: red } }     | the medium 'speech' is not known here | @media speech",
        "@page x:left { margin: 0 }             | the page 'x:left' is not known here | @page x:left",
        "@page { @left-top { content: \"x\" } } | '@left-top' is not known here | @left-top",
        "@page { orphans: 2 }                   | a page has no 'orphans' here | orphans: 2",
        "p { content: \"x\" }                 | 'content' needs :before or :after: 'p' | p",
        "p:after { content: counter(page) }     | pages are counted in their margins only | p:after",
        "@page { @top-left { content: attr(x) } } | '@top-left' can hold strings and counters only | @top-left",
        "p { content: url(x.png) }              | the property 'content' can't be set to 'url(x.png)' here | content: url(x.png)"
      })
  void whatCantBeFollowedIsRefusedWithItsPlace(String css, String problem, String near) {
    StyleProblem thrown = assertThrows(StyleProblem.class, () -> StyleSheet.read(css));
    assertEquals(problem, thrown.getMessage());
    assertEquals(near, thrown.near());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "p { color: red",
        "p { color red }",
        "p color: red; }",
        "/* x",
        "p { content: \"x }",
        "{ color: red }"
      })
  void aBrokenStylesheetIsRefused(String css) {
    assertThrows(StyleProblem.class, () -> StyleSheet.read(css));
  }

  @Test
  void theStrongerRuleWinsWhereverItStands() throws StyleProblem {
    String css = ".a { color: #010203 } p { color: #040506 } div p { color: #070809 }";
    assertEquals(0x010203, style(css, "<div><p class=a id=x>y").type().colour());
    assertEquals(0x070809, style(css, "<div><p id=x>y").type().colour());
  }

  @Test
  void amongEqualsTheLaterRuleWins() throws StyleProblem {
    assertEquals(
        0x040506, style("p { color: #010203 } p { color: #040506 }", "<p id=x>").type().colour());
  }

  @Test
  void aStyleOfTheElementGoesBeforeTheStylesheetAndAnImportantOneBeforeAll() throws StyleProblem {
    String html = "<p id=x style='color: #010203'>";
    assertEquals(0x010203, style("#x { color: #040506 }", html).type().colour());
    assertEquals(0x040506, style("#x { color: #040506 !important }", html).type().colour());
  }

  @Test
  void textTakesItsLookFromTheElementsAroundAndBoxesDont() throws StyleProblem {
    Style style =
        style(
            "div { color: #010203; font-weight: bold; padding: 3mm; background-color: #fff }",
            "<div><p id=x>");
    assertEquals(0x010203, style.type().colour());
    assertTrue(style.type().face().bold());
    assertEquals(0, style.box().padding().get(BoxStyle.TOP).of(0));
    assertEquals(Values.TRANSPARENT, style.box().background());
  }

  @Test
  void lengthsAreReadInAllUnits() throws StyleProblem {
    Style style =
        style("p { font-size: 10pt; margin: 1mm 2em 1in 50%; padding: 4px 1cm }", "<p id=x>");
    assertEquals(PT_PER_MM, style.box().margin().get(BoxStyle.TOP).of(200), 1e-4);
    assertEquals(20, style.box().margin().get(BoxStyle.RIGHT).of(200), 1e-4);
    assertEquals(72, style.box().margin().get(BoxStyle.BOTTOM).of(200), 1e-4);
    assertEquals(100, style.box().margin().get(BoxStyle.LEFT).of(200), 1e-4);
    assertEquals(3, style.box().padding().get(BoxStyle.TOP).of(200), 1e-4);
    assertEquals(10 * PT_PER_MM, style.box().padding().get(BoxStyle.LEFT).of(200), 1e-4);
  }

  @Test
  void aShareOfTheSizeIsOneOfTheSizeAround() throws StyleProblem {
    String css = "div { font-size: 20pt } p { font-size: 1.5em } b { font-size: 50% }";
    assertEquals(30, style(css, "<div><p id=x>").type().size(), 1e-4);
    assertEquals(15, style(css, "<div><p><b id=x>").type().size(), 1e-4);
  }

  @Test
  void aBareLineHeightGoesDownAsAFactor() throws StyleProblem {
    String css = "div { font-size: 20pt; line-height: 1.5 } p { font-size: 10pt }";
    assertEquals(15, style(css, "<div><p id=x>").type().leading(), 1e-4);
    assertEquals(30, style(css.replace("1.5 }", "150% }"), "<div><p id=x>").type().leading(), 1e-4);
  }

  @Test
  void aBorderIsDrawnOnlyIfItHasAStyle() throws StyleProblem {
    String css = "p { border: 1pt solid #010203; border-top: none; border-left-width: 2pt }";
    Style style = style(css, "<p id=x>");
    assertEquals(Border.NONE, style.box().border().get(BoxStyle.TOP));
    assertEquals(new Border(1, 0x010203), style.box().border().get(BoxStyle.RIGHT));
    assertEquals(new Border(2, 0x010203), style.box().border().get(BoxStyle.LEFT));
  }

  @Test
  void rulesForTheScreenAreLeftOut() throws StyleProblem {
    String css = "@media screen { p { color: #010203 } } @media print { p { color: #040506 } }";
    assertEquals(0x040506, style(css, "<p id=x>").type().colour());
  }

  @Test
  void escapesInStringsAreRead() throws StyleProblem {
    Style style = style("p:before { content: \"a\\0000e9 b\\A c\" }", "<p id=x>");
    assertTrue(style.content().isEmpty());
    Element page = Jsoup.parse("<p id=x>");
    Stylist stylist = new Stylist(StyleSheet.read("p:before { content: \"a\\0000e9 b\\A c\" }"));
    Branch branch = branch(stylist, page.selectFirst("#x"));
    assertEquals(
        new Content.Text("a\u00e9b\nc"),
        stylist.pseudo(branch, Selector.Pseudo.BEFORE).orElseThrow().content().get(0));
  }
}
