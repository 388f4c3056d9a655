package wallbook.render;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;

/**
 * Marks the words of a page that break otherwise than others: a label or date ({@code R01-03},
 * {@code DEN-A}, {@code 2026-03-14}) not at its hyphens, a signed figure ({@code +0.24}) not at its
 * point, an overlong word anywhere. The stylesheet can't tell them.
 */
final class Words {
  private static final int LONG = 28;

  /**
   * A short word with a hyphen and a digit or of capitals with a hyphen, a signed figure with
   * decimals and its unit, or a long word.
   */
  private static final Pattern ODD =
      Pattern.compile(
          "(?<![^\\s])(?=\\S*-\\S)(?=\\S*[0-9]|[^\\s\\p{Ll}]+(?!\\S))\\S{3,20}(?!\\S)"
              + "|[+−][0-9][0-9.,]*[.,][0-9]+(?:\u00a0[^\\s\u00a0,;:)]+)?|\\S{"
              + LONG
              + ",}");

  private Words() {}

  static void mark(Element body) {
    List<TextNode> odd = new ArrayList<>();
    body.forEachNode(
        node -> {
          if (node instanceof TextNode text && mayBeOdd(text.getWholeText())) {
            odd.add(text);
          }
        });
    odd.forEach(Words::split);
  }

  /**
   * Whether a text needs a closer look, which is dear: it has a word with a hyphen and a digit, a
   * hyphen before a capital, a sign before a digit, or a word that may be long.
   */
  private static boolean mayBeOdd(String text) {
    int begin = 0;
    boolean hyphen = false;
    boolean digit = false;
    char last = ' ';
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == ' ' || (c >= '\t' && c <= '\r')) {
        begin = i + 1;
        hyphen = false;
        digit = false;
      } else {
        boolean isDigit = c >= '0' && c <= '9';
        hyphen |= c == '-';
        digit |= isDigit;
        boolean signed = isDigit && (last == '+' || last == '−');
        boolean capital = last == '-' && Character.isUpperCase(c);
        if ((hyphen && digit) || capital || signed || i - begin + 1 >= LONG) {
          return true;
        }
      }
      last = c;
    }
    return false;
  }

  private static void split(TextNode text) {
    String whole = text.getWholeText();
    Matcher word = ODD.matcher(whole);
    if (!word.find()) {
      return;
    }
    int end = 0;
    do {
      text.before(new TextNode(whole.substring(end, word.start())));
      String kind = word.group().length() < LONG ? "whole" : "long";
      text.before(new Element("span").addClass(kind).text(word.group()));
      end = word.end();
    } while (word.find());
    text.before(new TextNode(whole.substring(end)));
    text.remove();
  }
}
