package wallbook.assess.coax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import wallbook.assess.Assessment;
import wallbook.assess.PartWords;
import wallbook.assess.PhrasesOf;
import wallbook.wording.Phrase;
import wallbook.wording.UnitSystem;

/** Every phrase that coax results use has words, in both languages. */
class CoaxWordsTest {
  private static final List<Phrase> PHRASES = phrases();

  @Test
  void everyPhraseIsSaidInEnglishAndSpanish() {
    List<String> english = PartWords.say("coax.en", Locale.US, UnitSystem.FEET_AND_INCHES, PHRASES);
    List<String> spanish =
        PartWords.say("coax.es", Locale.forLanguageTag("es"), UnitSystem.METRIC, PHRASES);

    assertEquals(english.size(), spanish.size());
    assertTrue(english.stream().noneMatch(String::isBlank));
  }

  @Test
  void theLanguagesHaveTheSameKeysAndArguments() {
    Map<String, String> english = PartWords.of("coax.en");
    Map<String, String> spanish = PartWords.of("coax.es");

    assertEquals(new TreeSet<>(english.keySet()), new TreeSet<>(spanish.keySet()));
    english.forEach(
        (key, text) ->
            assertEquals(PartWords.arguments(text), PartWords.arguments(spanish.get(key)), key));
  }

  @Test
  void noWordsLieUnused() {
    TreeSet<String> unused = new TreeSet<>(PartWords.of("coax.en").keySet());
    PHRASES.forEach(phrase -> unused.remove(phrase.key()));

    assertEquals(new TreeSet<String>(), unused);
  }

  private static List<Phrase> phrases() {
    List<Assessment> all = new ArrayList<>();
    for (String cable : List.of("series-6", "series-59", "low-loss-405", "plain")) {
      for (String more :
          List.of("", "length: 30 m, hottest: 40 °C", "length: 100 m, length_by: estimate")) {
        all.addAll(CoaxJobs.assess(CoaxJobs.run(cable, more)));
      }
    }
    for (String panel : List.of("S4", "S5", "S8")) {
      String from = "{head: rack, panel: %s, port: 1, finish: coiled}".formatted(panel);
      all.addAll(CoaxJobs.assess(CoaxJobs.run("series-6", from, "dish", "length: 30 m")));
    }
    for (String condition : List.of("damaged", "abandoned")) {
      all.addAll(CoaxJobs.assess(CoaxJobs.run("series-6", "condition: " + condition)));
    }
    return all.stream().flatMap(a -> PhrasesOf.all(a).stream()).distinct().toList();
  }
}
