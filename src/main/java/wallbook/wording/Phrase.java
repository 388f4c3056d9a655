package wallbook.wording;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Something to be said to a reader, without its language: a key of the words files and named
 * arguments. An argument is a text (printed as it stands), a {@link wallbook.quantity.Quantity}
 * (printed in the reader's units), a {@link java.time.LocalDate}, an {@link Integer} or another
 * phrase.
 *
 * <pre>{@code Phrase.of("pairs.reach.longer-than-limit", "length", length, "limit", limit)}</pre>
 *
 * @param key key in {@code templates/words/<language>.properties}; lower-case, dots and hyphens
 * @param arguments values by the name that stands in braces in the words
 */
public record Phrase(String key, Map<String, Object> arguments) {

  /**
   * Those without arguments, each once: a large house says the same few a hundred thousand times.
   * Keys are of the program and its tables, so that there is an end to them.
   */
  private static final Map<String, Phrase> PLAIN = new ConcurrentHashMap<>();

  public Phrase {
    Objects.requireNonNull(key);
    arguments = Map.copyOf(arguments);
  }

  /**
   * Makes a phrase from a key and alternating names and values.
   *
   * @throws IllegalArgumentException if a name has no value, or stands twice
   */
  public static Phrase of(String key, Object... namesAndValues) {
    if (namesAndValues.length % 2 != 0) {
      throw new IllegalArgumentException("a name without a value in phrase " + key);
    }
    return namesAndValues.length == 0 ? plain(key) : new Phrase(key, arguments(namesAndValues));
  }

  private static Phrase plain(String key) {
    Phrase known = PLAIN.get(key);
    return known == null ? PLAIN.computeIfAbsent(key, k -> new Phrase(k, Map.of())) : known;
  }

  private static Map<String, Object> arguments(Object... of) {
    // A large house has a hundred thousand of them, nearly all with few arguments.
    return switch (of.length) {
      case 2 -> Map.of((String) of[0], of[1]);
      case 4 -> Map.of((String) of[0], of[1], (String) of[2], of[3]);
      case 6 -> Map.of((String) of[0], of[1], (String) of[2], of[3], (String) of[4], of[5]);
      default -> {
        Map<String, Object> arguments = new LinkedHashMap<>();
        for (int i = 0; i < of.length; i += 2) {
          arguments.put((String) of[i], of[i + 1]);
        }
        yield arguments;
      }
    };
  }

  /**
   * A phrase that depends on a number: the words are looked up under {@code key.one} for 1, else
   * under {@code key.other}; the number is the argument {@code count}.
   */
  public static Phrase counted(String key, int count, Object... namesAndValues) {
    Phrase plain = of(key + (count == 1 ? ".one" : ".other"), namesAndValues);
    Map<String, Object> arguments = new LinkedHashMap<>(plain.arguments);
    arguments.put("count", count);
    return new Phrase(plain.key, arguments);
  }
}
