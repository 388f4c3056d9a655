package wallbook.render.press;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SelectorReaderTest {
  /** The examples of CSS 2.1, 6.4.3, with ids in ten-thousands and classes in hundreds. */
  @ParameterizedTest
  @CsvSource({
    "*, 0",
    "li, 1",
    "ul li, 2",
    "ul ol+li, 3",
    "h1 + *[rel=up], 101",
    "ul ol li.red, 103",
    "li.red.level, 201",
    "#x34y, 10000"
  })
  void aSelectorIsAsStrongAsTheStandardSays(String selector, int specificity) throws StyleProblem {
    assertEquals(specificity, SelectorReader.read(selector).get(0).selector().specificity());
  }

  /** An independent library tells which elements a selector fits: jsoup's own selectors. */
  @ParameterizedTest
  @CsvSource({
    "td",
    "tbody tr:nth-child(even) td",
    "tr:nth-child(2n+1)",
    "tr:nth-child(-n+2)",
    "td[align=right]",
    ".box .word",
    ".box > p",
    "p.word + p",
    "h2 ~ p",
    "h2 + div p",
    "h2 ~ div > div p",
    "p + div p",
    "thead + tbody tr + tr td",
    ".BOX .Word",
    "ul.columns-2 li:first-child",
    "li:last-child",
    "[class~=small]",
    "#deep",
    "div *"
  })
  void aSelectorFitsTheElementsThatJsoupFinds(String selector) throws StyleProblem {
    Element page =
        Jsoup.parse(
            """
            <h2>x</h2><div class="box small"><p class="word">a</p><p>b</p><div><p id="deep">c</p></div></div>
            <p>d</p><ul class="columns-2"><li>e<li>f<li>g</ul>
            <table><thead><tr><th>h</th></tr></thead><tbody><tr><td align="right">1</td></tr>
            <tr><td>2</td></tr><tr><td>3</td></tr><tr><td>4</td></tr></tbody></table>
            """);
    Selector read = SelectorReader.read(selector).get(0).selector();
    for (Element element : page.getAllElements()) {
      if (element.parent() != null) {
        assertEquals(element.is(selector), read.fits(branch(element)), element.outerHtml());
      }
    }
  }

  private static Branch branch(Element element) {
    boolean root = element.parent() == null || element.parent().parent() == null;
    return new Branch(
        root ? null : branch(element.parent()), element, element.elementSiblingIndex() + 1);
  }

  @Test
  void aSelectorIsKeptUnderWhatItsElementMustHave() throws StyleProblem {
    assertEquals(".label", SelectorReader.read("td b.label").get(0).drawer());
    assertEquals("td", SelectorReader.read(".compact td").get(0).drawer());
    assertEquals("#a", SelectorReader.read("p.b#a").get(0).drawer());
  }
}
