package wallbook.finding;

import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import wallbook.wording.Phrase;

/**
 * Something the reader of the record should know about it. Each kind has a stable name; the words
 * are looked up under {@code finding.<name>.message} and {@code finding.<name>.remedy}.
 *
 * @param name stable name of the kind, lower-case with hyphens, for instance {@code unknown-id}
 * @param found what stands in the record, as written
 * @param expected what would be accepted
 * @param nearest the accepted value nearest to what was found
 * @param message what is wrong, for a person
 * @param remedy how to mend it
 */
public record Finding(
    Severity severity,
    String name,
    SourcePosition position,
    Optional<String> found,
    Optional<Phrase> expected,
    Optional<String> nearest,
    Phrase message,
    Phrase remedy) {

  /** Order of a report: gravest first, then by place. */
  public static final Comparator<Finding> REPORT_ORDER =
      Comparator.comparing(Finding::severity)
          .thenComparing(f -> f.position().file())
          .thenComparing(f -> f.position().line())
          .thenComparing(f -> f.position().column())
          .thenComparing(Finding::name);

  public Finding {
    Objects.requireNonNull(severity);
    Objects.requireNonNull(position);
    if (!isName(name)) {
      throw new IllegalArgumentException("not a finding name: " + name);
    }
  }

  /** The same finding in a file that goes by another name. */
  public Finding inFile(String file) {
    return new Finding(
        severity,
        name,
        new SourcePosition(file, position.line(), position.column()),
        found,
        expected,
        nearest,
        message,
        remedy);
  }

  /**
   * Makes a finding whose message takes the given arguments; the remedy takes the same.
   *
   * @param namesAndValues alternating names and values as in {@link Phrase#of}
   */
  public static Finding of(
      Severity severity, String name, SourcePosition position, Object... namesAndValues) {
    return new Finding(
        severity,
        name,
        position,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Phrase.of("finding." + name + ".message", namesAndValues),
        Phrase.of("finding." + name + ".remedy", namesAndValues));
  }

  /** Lower-case words and numbers, the first a word, with hyphens between them. */
  private static boolean isName(String name) {
    char before = '-';
    boolean first = true;
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      boolean letter = c >= 'a' && c <= 'z';
      boolean digit = c >= '0' && c <= '9' && !first;
      if (c == '-' ? before == '-' : !letter && !digit) {
        return false;
      }
      first &= c != '-';
      before = c;
    }
    return before != '-';
  }

  /** Fewer parts than make two findings differ, since this is asked of each. */
  @Override
  public int hashCode() {
    return 31 * name.hashCode() + position.line();
  }

  /** This finding with what was found, as written in the record. */
  public Finding found(String text) {
    return new Finding(
        severity, name, position, Optional.of(text), expected, nearest, message, remedy);
  }

  /** This finding with what would have been accepted. */
  public Finding expecting(Phrase accepted) {
    return new Finding(
        severity, name, position, found, Optional.of(accepted), nearest, message, remedy);
  }

  /** This finding with the nearest accepted value, if there is one. */
  public Finding nearest(Optional<String> value) {
    return new Finding(severity, name, position, found, expected, value, message, remedy);
  }
}
