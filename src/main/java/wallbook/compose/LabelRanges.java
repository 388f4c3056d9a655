package wallbook.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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

  /**
   * The labels with what they begin with said once: "K-01–03, 05 · GRT-01". They are sorted, so
   * that those of a room stand together.
   */
  public static String byBeginning(List<String> labels) {
    Map<String, List<String>> numbers = new TreeMap<>();
    List<String> plain = new ArrayList<>();
    for (String label : labels.stream().sorted().distinct().toList()) {
      Matcher numbered = NUMBERED.matcher(label);
      if (numbered.matches()) {
        numbers.computeIfAbsent(numbered.group(1), b -> new ArrayList<>()).add(numbered.group(2));
      } else {
        plain.add(label);
      }
    }
    List<String> said = new ArrayList<>();
    numbers.forEach((beginning, its) -> said.add(beginning + String.join(", ", spans(its))));
    said.addAll(plain);
    return String.join(" · ", said);
  }

  private static List<String> spans(List<String> numbers) {
    List<String> spans = new ArrayList<>();
    int from = 0;
    while (from < numbers.size()) {
      int to = from;
      while (to + 1 < numbers.size() && follows(numbers.get(to), numbers.get(to + 1))) {
        to++;
      }
      if (to > from) {
        spans.add(numbers.get(from) + "–" + numbers.get(to));
      } else {
        spans.add(numbers.get(from));
      }
      from = to + 1;
    }
    return spans;
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
