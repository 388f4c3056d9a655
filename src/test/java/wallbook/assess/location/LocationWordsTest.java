package wallbook.assess.location;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wallbook.assess.Said;
import wallbook.wording.Phrase;

/** Every phrase that location results use has words, in both languages. */
class LocationWordsTest {
  private static final List<Phrase> PHRASES =
      Stream.of(
              Grounds.drawn().tied("a 13 ft, b 15 ft"),
              Grounds.drawn().tied("b 15 ft, a 13 ft"),
              Grounds.drawn().tied("a 13 ft, b 15 ft, c 37 ft"),
              Grounds.drawn().tied("a 13 ft, b 15 ft, c 38 ft"),
              Grounds.drawn().tied("a 27.1 ft, b 27.1 ft"),
              Grounds.drawn().tied("a 7.24 ft, b 7.24 ft"),
              Grounds.drawn().tied("a 6 ft, b 8 ft"),
              Grounds.drawn().tied("a 4 ft, b 3 ft"),
              Grounds.drawn().tied("a 4 ft"),
              Grounds.with("", "").tied("a 13 ft, b 15 ft"),
              Grounds.with("", ", outline: [[0 ft, 90 ft], [9 ft, 90 ft], [9 ft, 80 ft]]")
                  .tied("a 13 ft, b 15 ft"),
              Grounds.with(Grounds.HOUSE, "")
                  .place("p", "garden", "kind: box, wall: A, offset: 1 ft")
                  .place("q", "house", "kind: box, wall: Q, offset: 1 ft")
                  .place("s", "house", "kind: box")
                  .place("t", "house", "kind: ceiling_point, at: [1 ft, 1 ft]")
                  .place("u", "house", "kind: box, at: [1 ft, 1 ft]")
                  .run("r", "p", "")
                  .run("r2", "t", ", length: 90 ft")
                  .run("r3", "u", ", length: 1 ft")
                  .run("r4", "u", ", length: 8.7 ft")
                  .test("t1", "r2", ", length: 90 ft")
                  .test("t2", "r2", ", length: 40 ft"))
          .flatMap(grounds -> grounds.answers().stream())
          .flatMap(answer -> Said.phrases(answer).stream())
          .distinct()
          .toList();

  @Test
  void everyPhraseIsSaidInEnglishAndSpanish() {
    for (Phrase phrase : PHRASES) {
      assertFalse(Said.english(phrase).isBlank());
      assertFalse(Said.spanish(phrase).isBlank());
    }
  }

  @Test
  void theLanguagesHaveTheSameKeysAndArguments() {
    assertEquals(Set.of(), Said.differences("location."));
  }

  @Test
  void noWordsLieUnused() {
    assertEquals(Set.of(), Said.unused("location.", PHRASES));
  }
}
