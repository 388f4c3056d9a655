package wallbook.assess.coax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wallbook.assess.Assessment;
import wallbook.assess.Said;
import wallbook.wording.Phrase;

/** Every phrase that coax results use has words, in both languages. */
class CoaxWordsTest {
  private static final List<Phrase> PHRASES = phrases();

  @Test
  void everyPhraseIsSaidInEnglishAndSpanish() {
    for (Phrase phrase : PHRASES) {
      assertFalse(Said.english(phrase).isBlank());
      assertFalse(Said.spanish(phrase).isBlank());
    }
  }

  @Test
  void theLanguagesHaveTheSameKeysAndArguments() {
    assertEquals(Set.of(), Said.differences("coax."));
  }

  @Test
  void noWordsLieUnused() {
    assertEquals(Set.of(), Said.unused("coax.", PHRASES));
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
    return all.stream().flatMap(a -> Said.phrases(a).stream()).distinct().toList();
  }
}
