package wallbook.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/**
 * Lists labels in few words: three or more that count on, such as K-01, K-02 and K-03, become "K-01
 * to K-03". Nothing is left out: a number that is not there ends the range.
 */
public final class LabelRanges {
  private static final Pattern NUMBERED = Pattern.compile("(.*?)(\\d{1,9})");
  private static final int SHORTEST = 3;

  private LabelRanges() {}

  /** The labels in the order given, as one text. */
  public static String of(List<String> labels, Wording wording) {
    List<String> said = new ArrayList<>();
    int from = 0;
    while (from < labels.size()) {
      int to = from;
      while (to + 1 < labels.size() && follows(labels.get(to), labels.get(to + 1))) {
        to++;
      }
      if (to - from + 1 >= SHORTEST) {
        said.add(
            wording.say(
                Phrase.of("labels.range", "first", labels.get(from), "last", labels.get(to))));
      } else {
        said.addAll(labels.subList(from, to + 1));
      }
      from = to + 1;
    }
    return String.join(", ", said);
  }

  private static boolean follows(String label, String next) {
    Matcher a = NUMBERED.matcher(label);
    Matcher b = NUMBERED.matcher(next);
    return a.matches()
        && b.matches()
        && a.group(1).equals(b.group(1))
        && a.group(2).length() == b.group(2).length()
        && Integer.parseInt(b.group(2)) == Integer.parseInt(a.group(2)) + 1;
  }
}
