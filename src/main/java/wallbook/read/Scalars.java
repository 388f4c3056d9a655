package wallbook.read;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Nearest;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;
import wallbook.quantity.Quantity;
import wallbook.quantity.QuantityParser;
import wallbook.quantity.QuantityParser.NotAQuantity;
import wallbook.record.Word;
import wallbook.wording.Phrase;

/** Turns the text of one YAML value into a value of the type its field has. */
final class Scalars {
  private static final int LONGEST_TEXT = 20_000;

  private static final ClassValue<Map<String, Object>> WORDS =
      new ClassValue<>() {
        @Override
        protected Map<String, Object> computeValue(Class<?> type) {
          Map<String, Object> words = new LinkedHashMap<>();
          for (Object constant : type.getEnumConstants()) {
            words.put(((Word) constant).word(), constant);
          }
          return words;
        }
      };

  private final Findings findings;

  Scalars(Findings findings) {
    this.findings = findings;
  }

  /** The constants of a type of words by what stands in a file, in their order. */
  static Map<String, Object> words(Class<?> type) {
    return WORDS.get(type);
  }

  /** The value, or nothing after a finding. */
  Optional<?> read(String text, Class<?> type, SourcePosition at) {
    if (type == String.class) {
      return text(text, at);
    } else if (Quantity.class.isAssignableFrom(type)) {
      return quantity(text, type.asSubclass(Quantity.class), at);
    } else if (type.isEnum()) {
      return word(text, type, at);
    } else if (type == Integer.class) {
      return whole(text, at);
    } else if (type == Double.class) {
      return number(text, at);
    } else if (type == Boolean.class) {
      return yesOrNo(text, at);
    } else if (type == LocalDate.class) {
      return date(text, at);
    }
    throw new IllegalStateException("no way to read a " + type.getSimpleName());
  }

  private Optional<String> text(String text, SourcePosition at) {
    if (text.isBlank()) {
      return refuse("blank-text", at, text, Phrase.of("expected.text"), Optional.empty());
    }
    if (text.length() > LONGEST_TEXT) {
      return refuse(
          "text-too-long",
          at,
          text,
          Phrase.of("expected.text-length", "longest", LONGEST_TEXT),
          Optional.empty());
    }
    if (hasControl(text)) {
      return refuse("control-character", at, text, Phrase.of("expected.text"), Optional.empty());
    }
    return Optional.of(text.strip());
  }

  private static boolean hasControl(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (Character.isISOControl(c) && c != '\n' && c != '\t') {
        return true;
      }
    }
    return false;
  }

  private <Q extends Quantity> Optional<Q> quantity(String text, Class<Q> type, SourcePosition at) {
    try {
      return Optional.of(QuantityParser.parse(type, text));
    } catch (NotAQuantity e) {
      String name =
          switch (e.reason()) {
            case NO_NUMBER -> "not-a-quantity";
            case NO_UNIT -> "unit-missing";
            case UNKNOWN_UNIT -> "unit-unknown";
            case IMPOSSIBLE -> "impossible-value";
          };
      return refuse(
          name,
          at,
          text,
          Phrase.of("expected.units", "units", String.join(", ", e.units())),
          Optional.of(e.proposal()).filter(p -> !p.isEmpty()));
    }
  }

  private Optional<?> word(String text, Class<?> type, SourcePosition at) {
    Map<String, Object> known = words(type);
    Object found = known.get(text.strip());
    if (found != null) {
      return Optional.of(found);
    }
    List<String> words = List.copyOf(known.keySet());
    return refuse(
        "unknown-word",
        at,
        text,
        Phrase.of("expected.one-of", "choices", String.join(", ", words)),
        Nearest.to(text.strip(), words));
  }

  private Optional<Integer> whole(String text, SourcePosition at) {
    try {
      return Optional.of(Integer.parseInt(text.strip()));
    } catch (NumberFormatException e) {
      return refuse("not-a-whole-number", at, text, Phrase.of("expected.whole"), Optional.empty());
    }
  }

  private Optional<Double> number(String text, SourcePosition at) {
    try {
      double value = Double.parseDouble(text.strip());
      if (Double.isFinite(value)) {
        return Optional.of(value);
      }
    } catch (NumberFormatException e) {
      // reported below, as an infinite number is
    }
    return refuse("not-a-number", at, text, Phrase.of("expected.number"), Optional.empty());
  }

  private Optional<Boolean> yesOrNo(String text, SourcePosition at) {
    return switch (text.strip()) {
      case "yes", "true" -> Optional.of(true);
      case "no", "false" -> Optional.of(false);
      default ->
          refuse(
              "not-yes-or-no",
              at,
              text,
              Phrase.of("expected.one-of", "choices", "yes, no"),
              Nearest.to(text.strip(), List.of("yes", "no")));
    };
  }

  private Optional<LocalDate> date(String text, SourcePosition at) {
    try {
      return Optional.of(LocalDate.parse(text.strip()));
    } catch (DateTimeParseException e) {
      return refuse("not-a-date", at, text, Phrase.of("expected.date"), Optional.empty());
    }
  }

  private <T> Optional<T> refuse(
      String name, SourcePosition at, String found, Phrase expected, Optional<String> nearest) {
    findings.add(
        Finding.of(Severity.ERROR, name, at, "found", Binder.shortened(found))
            .found(Binder.shortened(found))
            .expecting(expected)
            .nearest(nearest));
    return Optional.empty();
  }
}
