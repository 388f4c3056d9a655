package wallbook.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever a record says, a document prints it as it stands: judged by jsoup, an HTML parser by the
 * WHATWG standard, on what the whole chain gives.
 */
class EscapeTest {
  private static final String PLACES =
      """
      ---
      title: %1$s
      ---

      # a%1$sb {#anchor}

      | head | %1$s |
      | --- | ---: |
      | a%1$sb | %1$s |
      | last | row |

      before **%1$s** [a%1$sb](#anchor) `a%1$sb` after

      %1$s

      - %1$s
      - a%1$sb

      <div class="raw" title="a%1$sb"><p>%1$s</p></div>

      ```
      a%1$sb
      ```
      """;

  private static Markdown.Page printed(String text) {
    return Markdown.toHtml(PLACES.formatted(Escape.markdown(text)));
  }

  private static Document page(String text) {
    return Jsoup.parse(printed(text).html());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a|b",
        "| --- |",
        "*x* **y** _z_ `c`",
        "# no heading",
        "1. no list",
        "- no list",
        "+ no list",
        "> no quote",
        "---",
        "===",
        "```",
        "~~~",
        "    no code",
        "<b>no tag</b>",
        "<script>x</script>",
        "<!-- no comment",
        "--> <div>",
        "]]>",
        "&amp; &lt; &#60;",
        "{.class #id}",
        "{#anchor}",
        "[no](http://link) ![no](x.png)",
        "[no]: http://reference",
        "<http://no.link>",
        "\\* \\\\ \\",
        "line\nbreak",
        "two\n\nparagraphs",
        "hard  \nbreak",
        "\r\nstart",
        "\ttab",
        "${view} <#if x>",
        "\"quotes' \" onclick=\"x\"",
        "title: x",
        "...",
        "a\u2028b\u2029c\u0085d",
        "\u00a0 \u3000",
        "=====",
        "é Ω µ ≤ → 漢字 \uD83D\uDD0C",
        "x ^[note] ~~s~~ ==m==",
        ":---:",
        "$1 %s {0} {name}"
      })
  void hostileTextPrintsAsItself(String text) {
    check(text);
  }

  @Property(tries = 1000)
  void anyTextPrintsAsItself(@ForAll("hostile") String text) {
    check(text);
  }

  @Property(tries = 500)
  void anyTextPrintsAsItselfInAnyScript(@ForAll String text) {
    check(text);
  }

  @Provide
  Arbitrary<String> hostile() {
    return Arbitraries.of(
            "|",
            "*",
            "_",
            "`",
            "```",
            "#",
            "<",
            ">",
            "&",
            "{",
            "}",
            "[",
            "]",
            "(",
            ")",
            "!",
            "\\",
            "-",
            "+",
            "=",
            "~",
            ":",
            ".",
            "1",
            "9.",
            ")",
            "\n",
            "\r\n",
            "\n\n",
            " ",
            "    ",
            "\t",
            "\"",
            "'",
            "<p>",
            "</div>",
            "<!--",
            "-->",
            "&lt;",
            "&#42;",
            "---",
            "$",
            "^",
            "@",
            "/",
            "http://x.y",
            "javascript:",
            "{#a}",
            "{.b}",
            "a",
            "é",
            "\u00a0",
            "\uD83D\uDD0C",
            "\u2028")
        .list()
        .ofMaxSize(12)
        .map(parts -> String.join("", parts));
  }

  private static void check(String text) {
    Markdown.Page printed = printed(text);
    Document page = Jsoup.parse(printed.html());
    String alone = seen(text);
    String within = seen("a" + text + "b");

    assertEquals(1, page.select("h1").size(), "headings");
    assertEquals(1, page.select("table").size(), "tables");
    assertEquals(2, page.select("tbody tr").size(), "rows");
    assertEquals(4, page.select("tbody td").size(), "cells");
    assertEquals(1, page.select("a").size(), "links");
    assertEquals(2, page.select("li").size(), "list items");
    assertEquals(1, page.select(".raw").size(), "raw blocks");
    assertEquals("anchor", page.selectFirst("h1").id());
    assertEquals(
        0, page.select("b, script, img, em, hr, blockquote, h2, del, span, sup").size(), "marks");

    assertEquals(within, seen(page.selectFirst("h1")));
    assertEquals(alone, seen(page.select("th").get(1)));
    assertEquals(within, seen(page.select("tbody td").get(0)));
    assertEquals(alone, seen(page.select("tbody td").get(1)));
    assertEquals(within, seen(page.selectFirst("a")));
    if (!text.isEmpty()) {
      assertEquals(alone, seen(page.selectFirst("strong")));
    }
    assertEquals(within, seen(page.select("code").get(0)));
    assertEquals(alone, seen(page.select("li").get(0)));
    assertEquals(within, seen(page.select("li").get(1)));
    assertEquals(alone, seen(page.selectFirst(".raw p")));
    assertEquals(within, seen(page.selectFirst(".raw").attr("title")));
    assertEquals(within, seen(page.selectFirst("pre").wholeText()));
    assertEquals(alone, seen(printed.head().getOrDefault("title", "")));
  }

  private static String seen(Element element) {
    return seen(element.wholeText());
  }

  /**
   * Text as a reader sees it: runs of white space are one space, what no XML may hold is U+FFFD.
   */
  private static String seen(String text) {
    StringBuilder printed = new StringBuilder();
    text.replaceAll("\\R", " ")
        .codePoints()
        .map(Escape::printable)
        .forEach(printed::appendCodePoint);
    return printed.toString().replaceAll("[\\s\\p{Z}]+", " ").strip();
  }

  @ParameterizedTest
  @ValueSource(strings = {"\u0000", "\u0007", "\u001b", "\u0090", "\uD800", "\uDC00x", "\uFFFE"})
  void whatNoXmlMayHoldPrintsAsTheReplacementCharacter(String text) {
    assertTrue(page(text).selectFirst("li").text().startsWith("\uFFFD"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"\"} @page{", "\\", "\n", "</style>", "é ≤", "for: the owner", "a (b)   c", ": 1"})
  void aTextInAStylesheetStaysInItsString(String text) {
    String escaped = Escape.css(text);
    assertTrue(escaped.matches("(?s)([\\p{L}\\p{N} ,≤]|\\\\[0-9A-F]{6})*"), escaped);
    assertEquals(text, asCssReads(escaped));
  }

  /** CSS Syntax Module Level 3, 4.3.7: up to six digits, and one white space if there is one. */
  private static String asCssReads(String escaped) {
    return Pattern.compile("\\\\([0-9A-F]{1,6})\\s?")
        .matcher(escaped)
        .replaceAll(
            number ->
                Matcher.quoteReplacement(
                    Character.toString(Integer.parseInt(number.group(1), 16))));
  }

  @Property
  void differentTextsHaveDifferentAnchors(
      @ForAll("hostile") String one, @ForAll("hostile") String two) {
    Map<String, String> anchors = new HashMap<>();
    anchors.put(Escape.anchor(one), one);
    anchors.put(Escape.anchor(two), two);
    assertEquals(one.equals(two) ? 1 : 2, anchors.size());
  }
}
