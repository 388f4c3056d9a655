package wallbook.compose;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import wallbook.assess.Verdict;
import wallbook.assess.outlook.Worker;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Says what several documents say in the same way. */
public final class Speech {
  private final Wording wording;
  private final Describe describe;

  public Speech(Wording wording, Describe describe) {
    this.wording = wording;
    this.describe = describe;
  }

  /** Says a phrase made of a key and alternating names and values. */
  public String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }

  /** Says phrases in their order. */
  public List<String> say(Collection<Phrase> phrases) {
    return phrases.stream().map(wording::say).toList();
  }

  /** What can be claimed of something that could be later, as one of five answers. */
  public String answer(Verdict verdict) {
    return wording.say(
        "outlook.answer." + verdict.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  /** Everyone who is needed, the most widely available first. */
  public String who(Collection<Worker> workers) {
    return workers.stream()
        .distinct()
        .sorted()
        .map(describe::word)
        .collect(Collectors.joining(", "));
  }

  /** Clauses in one line. */
  public static String joined(List<String> clauses) {
    return String.join("; ", clauses);
  }

  /** A text with its first letter as a capital, to begin a line with. */
  public String capital(String text) {
    int first = text.offsetByCodePoints(0, text.isEmpty() ? 0 : 1);
    return text.substring(0, first).toUpperCase(wording.locale()) + text.substring(first);
  }

  /** Labels in a row, the last after "or". */
  public String or(List<String> things) {
    if (things.size() < 2) {
      return String.join("", things);
    }
    List<String> before = new ArrayList<>(things.subList(0, things.size() - 1));
    return say("or", "before", String.join(", ", before), "last", things.get(things.size() - 1));
  }
}
