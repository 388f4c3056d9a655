package wallbook.read;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A point in a cell: {@code [12 ft, 6 ft 2 in]}. */
final class PointCell {
  private static final Pattern FORM = Pattern.compile("\\[([^\\[\\],{}]+),([^\\[\\],{}]+)]");

  private PointCell() {}

  /** The two coordinates as written; nothing if the text has another form. */
  static List<String> split(String text) {
    Matcher form = FORM.matcher(text.strip());
    return form.matches() ? List.of(form.group(1).strip(), form.group(2).strip()) : List.of();
  }
}
