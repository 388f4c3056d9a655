package wallbook.compose.result;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wallbook.reference.Source;
import wallbook.reference.Standing;
import wallbook.wording.Wording;

/**
 * The sources that one document names, numbered from 1 in the order they are first named. The same
 * citation with another standing is another source.
 */
public final class SourceList {
  private final Map<Source, Integer> numbers = new LinkedHashMap<>();

  /** Number of a source; one not named before gets the next. */
  public String number(Source source) {
    return numbers.computeIfAbsent(source, s -> numbers.size() + 1).toString();
  }

  /** All sources named so far. */
  public List<SourceView> list(Wording wording) {
    return numbers.entrySet().stream()
        .map(
            entry ->
                new SourceView(
                    entry.getValue().toString(),
                    entry.getKey().citation(),
                    standing(entry.getKey().standing(), wording)))
        .toList();
  }

  private static String standing(Standing standing, Wording wording) {
    return wording.say("standing." + standing.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }
}
