package wallbook.render;

import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * What a template says of its document in the head, between two lines of {@code ---}:
 *
 * <ul>
 *   <li>{@code title}: title of the document; else the one of the request
 *   <li>{@code reader}: whom it is for
 *   <li>{@code purpose}: what it is for, a sentence; also the description in the file
 *   <li>{@code page}: {@code portrait} (if nothing is said) or {@code landscape}
 *   <li>{@code cover}: {@code page} (title and contents on a page of their own), {@code block}
 *       (above the text, if nothing is said) or {@code none}
 *   <li>{@code contents}: how many levels of headings the table of contents lists: {@code none} (if
 *       nothing is said), {@code 1}, {@code 2} or {@code 3}
 *   <li>{@code mark}: words at the foot of every page, such as that the document is private
 * </ul>
 */
public record DocumentHead(
    String title,
    String reader,
    String purpose,
    boolean landscape,
    Cover cover,
    int contents,
    String mark) {

  /** Where the title stands. */
  public enum Cover {
    PAGE,
    BLOCK,
    NONE
  }

  private static final Set<String> KEYS =
      Set.of("title", "reader", "purpose", "page", "cover", "contents", "mark");

  static DocumentHead of(String template, Map<String, String> head, DocumentFacts facts)
      throws TemplateProblem {
    for (String key : head.keySet()) {
      if (!KEYS.contains(key)) {
        throw new TemplateProblem(template, "the head has an unknown key '" + key + "'");
      }
    }
    String cover = oneOf(template, head, "cover", "block", "page", "none");
    String contents = oneOf(template, head, "contents", "none", "1", "2", "3");
    return new DocumentHead(
        head.getOrDefault("title", facts.documentTitle()),
        head.getOrDefault("reader", ""),
        head.getOrDefault("purpose", ""),
        oneOf(template, head, "page", "portrait", "landscape").equals("landscape"),
        Cover.valueOf(cover.toUpperCase(Locale.ROOT)),
        contents.equals("none") ? 0 : Integer.parseInt(contents),
        head.getOrDefault("mark", ""));
  }

  private static String oneOf(
      String template, Map<String, String> head, String key, String usual, String... others)
      throws TemplateProblem {
    String value = head.getOrDefault(key, usual);
    if (!value.equals(usual) && !Set.of(others).contains(value)) {
      throw new TemplateProblem(
          template,
          "the head's '%s' is '%s', not %s or %s"
              .formatted(key, value, usual, String.join(", ", others)));
    }
    return value;
  }
}
