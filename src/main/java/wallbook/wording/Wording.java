package wallbook.wording;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wallbook.quantity.Quantity;

/**
 * The words of one language joined to one way of printing quantities and dates: turns a {@link
 * Phrase} into text for one reader. Words hold arguments as names in braces; a missing key or
 * argument is a broken program and throws.
 */
public final class Wording {
  private static final Pattern ARGUMENT = Pattern.compile("\\{([a-zA-Z][a-zA-Z0-9]*)}");

  private final Locale locale;
  private final Map<String, String> words;
  private final QuantityPrinter quantities;
  private final DateTimeFormatter dates;
  private final DateTimeFormatter shortDates;

  /**
   * @param locale language and region of the reader
   * @param words text by key, as read from a words file
   */
  public Wording(Locale locale, Map<String, String> words, UnitSystem units) {
    this.locale = locale;
    this.words = Map.copyOf(words);
    this.quantities = new QuantityPrinter(locale, units);
    this.dates = DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG).withLocale(locale);
    this.shortDates = DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(locale);
  }

  public Locale locale() {
    return locale;
  }

  /** How this reader is given quantities. */
  public QuantityPrinter quantities() {
    return quantities;
  }

  /** A date with its month cut short, never broken between lines, for the cell of a table. */
  public String shortDate(LocalDate date) {
    return shortDates.format(date).replace(' ', '\u00a0');
  }

  /** Whether the words have the key; for words that a record may or may not call for. */
  public boolean knows(String key) {
    return words.containsKey(key);
  }

  /**
   * The words of a key with their places for arguments still in braces.
   *
   * @throws IllegalStateException if the language has no such key
   */
  public String template(String key) {
    String template = words.get(key);
    if (template == null) {
      throw new IllegalStateException("no words for '" + key + "' in " + locale.toLanguageTag());
    }
    return template;
  }

  /** Says a phrase without arguments. */
  public String say(String key) {
    return say(Phrase.of(key));
  }

  /**
   * Says a phrase.
   *
   * @throws IllegalStateException if the language lacks the key or the phrase an argument
   */
  public String say(Phrase phrase) {
    String template = template(phrase.key());
    if (template.indexOf('{') < 0) {
      return template;
    }
    Matcher matcher = ARGUMENT.matcher(template);
    StringBuilder text = new StringBuilder();
    int said = 0;
    while (matcher.find()) {
      Object value = phrase.arguments().get(matcher.group(1));
      if (value == null) {
        throw new IllegalStateException(
            "no argument '" + matcher.group(1) + "' for '" + phrase.key() + "'");
      }
      text.append(template, said, matcher.start()).append(print(value));
      said = matcher.end();
    }
    return text.append(template, said, template.length()).toString();
  }

  /** Prints one argument: a text, quantity, date, whole number or phrase. */
  public String print(Object value) {
    Objects.requireNonNull(value);
    if (value instanceof Phrase phrase) {
      return say(phrase);
    } else if (value instanceof Quantity quantity) {
      return quantities.print(quantity);
    } else if (value instanceof LocalDate date) {
      return dates.format(date);
    } else if (value instanceof Integer number) {
      return quantities.number(number, 0);
    }
    return value.toString();
  }
}
