package wallbook.assess;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import wallbook.AllWords;
import wallbook.wording.Phrase;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

/** What assessments say to readers, for tests of the words. */
public final class Said {
  private static final Pattern ARGUMENT = Pattern.compile("\\{[a-zA-Z0-9]+}");

  private Said() {}

  /** Every phrase of an assessment, those within phrases too. */
  public static List<Phrase> phrases(Assessment assessment) {
    List<Phrase> found = new ArrayList<>();
    add(assessment.asked(), found);
    assessment.limitedBy().ifPresent(phrase -> add(phrase, found));
    assessment.assumptions().forEach(phrase -> add(phrase, found));
    assessment.missing().forEach(phrase -> add(phrase, found));
    return found;
  }

  private static void add(Phrase phrase, List<Phrase> found) {
    found.add(phrase);
    for (Object argument : phrase.arguments().values()) {
      if (argument instanceof Phrase inner) {
        add(inner, found);
      }
    }
  }

  /** The keys of a medium's words in English. */
  public static Set<String> keys(String prefix) {
    return AllWords.ENGLISH.keySet().stream()
        .filter(key -> key.startsWith(prefix))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Keys whose arguments differ between the languages, or that one language lacks. */
  public static Set<String> differences(String prefix) {
    Set<String> all = new TreeSet<>(keys(prefix));
    AllWords.SPANISH.keySet().stream().filter(key -> key.startsWith(prefix)).forEach(all::add);
    all.removeIf(key -> arguments(AllWords.ENGLISH, key).equals(arguments(AllWords.SPANISH, key)));
    return all;
  }

  private static Set<String> arguments(Map<String, String> words, String key) {
    String text = words.get(key);
    return text == null
        ? Set.of("none in this language")
        : ARGUMENT
            .matcher(text)
            .results()
            .map(MatchResult::group)
            .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Says a phrase in English with feet and inches. */
  public static String english(Phrase phrase) {
    return say(Locale.US, AllWords.ENGLISH, UnitSystem.FEET_AND_INCHES, phrase);
  }

  /** Says a phrase in English with metric units. */
  public static String metric(Phrase phrase) {
    return say(Locale.US, AllWords.ENGLISH, UnitSystem.METRIC, phrase);
  }

  /** Says a phrase in Spanish with metric units. */
  public static String spanish(Phrase phrase) {
    return say(Locale.forLanguageTag("es"), AllWords.SPANISH, UnitSystem.METRIC, phrase);
  }

  private static String say(
      Locale locale, Map<String, String> words, UnitSystem units, Phrase phrase) {
    return new Wording(locale, words, units).say(phrase).replace('\u00a0', ' ');
  }

  /** Keys of phrases that were never said. */
  public static Set<String> unused(String prefix, Collection<Phrase> said) {
    Set<String> left = new TreeSet<>(keys(prefix));
    said.forEach(phrase -> left.remove(phrase.key()));
    return left;
  }
}
