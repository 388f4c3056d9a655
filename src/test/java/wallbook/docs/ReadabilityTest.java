package wallbook.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import wallbook.AllWords;

/**
 * What homeowners read is written plainly: the sentences of their documents, by document, against
 * the figures in {@code docs/readability.md}.
 */
class ReadabilityTest {
  private static final Path PAGE = Path.of("docs", "readability.md");

  /** Beginnings of the keys of each document's sentences. */
  private static final Map<String, List<String>> DOCUMENTS =
      new TreeMap<>(
          Map.of(
              "cautions", List.of("caution."),
              "manual", List.of("manual.", "glossary."),
              "label map", List.of("labelmap."),
              "upgrade guide", List.of("guide."),
              "offline page", List.of("page."),
              "sign-off", List.of("signoff."),
              "change notice", List.of("change.")));

  /** From here on a text counts as fairly easy (Flesch 1948, table 5). */
  private static final double FAIRLY_EASY = 70;

  /** Whole sentences; those with a blank for a figure or a name are measured without it. */
  private static List<String> sentences(ReadingEase language, List<String> beginnings) {
    Map<String, String> words =
        language == ReadingEase.ENGLISH ? AllWords.ENGLISH : AllWords.SPANISH;
    List<String> sentences = new ArrayList<>();
    words.forEach(
        (key, text) -> {
          if (beginnings.stream().anyMatch(key::startsWith) && text.endsWith(".")) {
            ReadingEase.sentences(text.replaceAll("\\{[^}]*}|[*_`]", "")).stream()
                .filter(s -> s.split(" ").length > 2)
                .forEach(sentences::add);
          }
        });
    return sentences;
  }

  private static Map<String, String> figures(ReadingEase language) {
    Map<String, String> figures = new TreeMap<>();
    DOCUMENTS.forEach(
        (document, beginnings) ->
            figures.put(
                document,
                String.format(Locale.ROOT, "%.0f", language.of(sentences(language, beginnings)))));
    return figures;
  }

  @ParameterizedTest
  @EnumSource
  void everyDocumentOfTheHomeownerIsFairlyEasy(ReadingEase language) {
    figures(language)
        .forEach(
            (document, figure) ->
                assertTrue(
                    Double.parseDouble(figure) >= FAIRLY_EASY,
                    () -> language + ", " + document + ": " + figure));
  }

  @Test
  void thePublishedFiguresAreThoseOfToday() throws IOException {
    Map<String, String> english = figures(ReadingEase.ENGLISH);
    Map<String, String> spanish = figures(ReadingEase.SPANISH);
    StringBuilder table = new StringBuilder();
    english.forEach(
        (document, figure) ->
            table.append("| %s | %s | %s |\n".formatted(document, figure, spanish.get(document))));

    assertTrue(Files.readString(PAGE).contains(table), () -> "expected in " + PAGE + ":\n" + table);
  }

  /** Published with its figure: 116 (Wikipedia, "Flesch–Kincaid readability tests", in 2026). */
  @Test
  void aPublishedExampleGivesItsPublishedFigure() {
    assertEquals(116.1, ReadingEase.ENGLISH.of(List.of("The cat sat on the mat.")), 0.1);
  }

  /**
   * The same source gives 37.5. The library hears two syllables more in it, in words that end in
   * -ian: what it counts makes our figures lower, never higher.
   */
  @Test
  void aHardPublishedExampleIsNoEasierThanPublished() {
    String sentence =
        "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.";
    assertTrue(ReadingEase.ENGLISH.of(List.of(sentence)) <= 37.5);
  }

  /** Divisions of words as the Ortografía of the RAE (2010) and its dictionary give them. */
  @ParameterizedTest
  @CsvSource({
    "cable, 2",
    "aéreo, 4",
    "país, 2",
    "guion, 1",
    "ciudad, 2",
    "huésped, 2",
    "línea, 3",
    "averiguáis, 4",
    "muy, 1",
    "oír, 2",
    "que, 1",
    "teléfono, 4"
  })
  void syllablesOfSpanishWordsAreCountedByItsRules(String word, int syllables) {
    assertEquals(syllables, ReadingEase.ofSpanish(word));
  }
}
