package wallbook.record;

import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The words of all choices that were asked for, since they are asked for again and again. */
final class Words {
  private static final Map<Word, String> KNOWN = new ConcurrentHashMap<>();

  private Words() {}

  static String of(Word choice) {
    String known = KNOWN.get(choice);
    return known == null
        ? KNOWN.computeIfAbsent(choice, c -> c.name().toLowerCase(Locale.ROOT))
        : known;
  }
}
