package wallbook.wording;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

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

  public Phrase {
    Objects.requireNonNull(key);
    arguments = Map.copyOf(arguments);
  }

  /**
   * Makes a phrase from a key and alternating names and values.
   *
   * @throws IllegalArgumentException if a name has no value
   */
  public static Phrase of(String key, Object... namesAndValues) {
    if (namesAndValues.length % 2 != 0) {
      throw new IllegalArgumentException("a name without a value in phrase " + key);
    }
    // Thousands are made of a large house, nearly all with few arguments.
    if (namesAndValues.length == 0) {
      return new Phrase(key, Map.of());
    } else if (namesAndValues.length == 2) {
      return new Phrase(key, Map.of((String) namesAndValues[0], namesAndValues[1]));
    }
    Map<String, Object> arguments = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      arguments.put((String) namesAndValues[i], namesAndValues[i + 1]);
    }
    return new Phrase(key, arguments);
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
