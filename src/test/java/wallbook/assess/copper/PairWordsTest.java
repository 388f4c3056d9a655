package wallbook.assess.copper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.record.Job;
import wallbook.record.LinkConfiguration;
import wallbook.record.LossDirection;
import wallbook.record.PairCategory;
import wallbook.record.PairParameter;
import wallbook.record.SweepPoint;
import wallbook.record.TestKind;
import wallbook.record.TestStandard;
import wallbook.record.Word;
import wallbook.wording.Phrase;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;
import wallbook.wording.WordsFile;

class PairWordsTest {
  private static final List<Phrase> PHRASES = collect();
  private static final Pattern ARGUMENT = Pattern.compile("\\{([a-zA-Z]+)}");

  private static Map<String, String> words(String language) throws IOException {
    Path file = Path.of("templates/words/" + language + "/pairs.properties");
    try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      return new TreeMap<>(WordsFile.read(in));
    }
  }

  private static Set<String> arguments(String text) {
    Matcher matcher = ARGUMENT.matcher(text);
    Set<String> found = new TreeSet<>();
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }

  @Test
  void bothLanguagesHaveTheSameKeysWithTheSameArguments() throws IOException {
    Map<String, Set<String>> english = new TreeMap<>();
    Map<String, Set<String>> spanish = new TreeMap<>();
    words("en").forEach((key, text) -> english.put(key, arguments(text)));
    words("es").forEach((key, text) -> spanish.put(key, arguments(text)));
    assertEquals(english, spanish);
  }

  @ParameterizedTest
  @CsvSource({"en, US, FEET_AND_INCHES", "en, US, METRIC", "es, MX, METRIC"})
  void everyPhraseOfManyAssessmentsCanBeSaid(String language, String region, UnitSystem units)
      throws IOException {
    Wording wording = new Wording(new Locale(language, region), words(language), units);
    for (Phrase phrase : PHRASES) {
      String said = wording.say(phrase);
      assertFalse(said.isBlank(), phrase.key());
      assertFalse(said.contains("{"), said);
    }
  }

  @Test
  void everyPhraseGivesExactlyTheArgumentsOfItsWords() throws IOException {
    Map<String, String> words = words("en");
    for (Phrase phrase : PHRASES) {
      assertEquals(
          arguments(words.get(phrase.key())),
          new TreeSet<>(phrase.arguments().keySet()),
          phrase.key());
    }
  }

  @Test
  void noWordsAreLeftOver() throws IOException {
    Set<String> unused = new TreeSet<>(words("en").keySet());
    PHRASES.forEach(phrase -> unused.remove(phrase.key()));
    assertEquals(Set.of(), unused);
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void everyWordOfTheRecordHasItsWords(String language) throws IOException {
    Set<String> keys = words(language).keySet();
    for (TestKind kind : TestKind.values()) {
      assertTrue(keys.contains("pairs.kind." + PairWords.slug(kind)), kind.word());
    }
    for (LinkConfiguration configuration : LinkConfiguration.values()) {
      assertTrue(keys.contains(PairWords.of(configuration).key()));
    }
    for (LossDirection direction : LossDirection.values()) {
      assertTrue(keys.contains("pairs.end." + PairWords.slug(direction)));
    }
    for (PairCategory category : PairCategory.values()) {
      assertTrue(keys.contains(PairWords.category(category.word()).key()));
      assertTrue(keys.contains("pairs.class." + category.word()));
    }
  }

  @ParameterizedTest
  @EnumSource(PairParameter.class)
  void everyMeasuredQuantityHasAName(PairParameter parameter) throws IOException {
    assertTrue(words("en").containsKey(PairWords.of(parameter).key()));
  }

  /** All phrases, nested ones included, of assessments that between them say everything. */
  private static List<Phrase> collect() {
    return jobs().stream()
        .flatMap(job -> PairJobs.assess(job).stream())
        .flatMap(PairWordsTest::phrases)
        .flatMap(PairWordsTest::withNested)
        .collect(Collectors.toList());
  }

  private static Stream<Phrase> phrases(Assessment assessment) {
    return Stream.of(
            Stream.of(assessment.asked()),
            assessment.limitedBy().stream(),
            assessment.assumptions().stream(),
            assessment.missing().stream())
        .flatMap(s -> s);
  }

  private static Stream<Phrase> withNested(Phrase phrase) {
    return Stream.concat(
        Stream.of(phrase),
        phrase.arguments().values().stream()
            .filter(Phrase.class::isInstance)
            .flatMap(nested -> withNested((Phrase) nested)));
  }

  private static List<Job> jobs() {
    List<Job> jobs = new ArrayList<>();
    for (String keys :
        List.of(
            "",
            "length: 40 m",
            "length: 84.5 m\nhottest: 40 °C",
            "length: 120 m\nbundle: 30",
            "length: 80 m\nhottest: 70 °C",
            "length: 2000 m",
            "length: 20 m\ncondition: damaged",
            "length: 20 m\ncondition: abandoned",
            "length: 20 m\nenvironments: [attic]")) {
      for (String cable : List.of("cat5e", "cat6", "cat6a", "plain", "two-pair")) {
        jobs.add(PairJobs.job(cable, keys));
      }
    }
    jobs.add(attic());
    jobs.add(
        Jobs.job(
            PairJobs.yaml("cat6", "length: 20 m")
                .replace("finish: terminated", "finish: coiled")
                .replace("jack: \"1\", ", "")));
    jobs.add(wired("t568a", "t568a"));
    jobs.add(wired("t568a", "t568b"));
    for (Word kind : TestKind.values()) {
      for (String result : List.of("pass", "fail", "not_judged", "fail, reason: cut")) {
        jobs.add(test("date: 2026-04-20, kind: " + kind.word() + ", result: " + result));
      }
    }
    jobs.addAll(singleFigures());
    jobs.addAll(summaries());
    jobs.addAll(sweeps());
    return jobs;
  }

  private static Job test(String keys) {
    return PairJobs.job("cat6", "length: 80 m", keys);
  }

  private static Job attic() {
    String head =
        """
        format: 1
        job: {id: small, title: Small job, revision: 1, invented: yes, attic_high: 50 °C}
        """;
    return Jobs.read(head + PairJobs.yaml("cat6", "length: 20 m\nenvironments: [attic]"))
        .job()
        .orElseThrow();
  }

  private static Job wired(String from, String to) {
    return Jobs.job(
        PairJobs.yaml("cat6", "length: 20 m")
            .replace("port: 1, finish: terminated", "port: 1, finish: terminated, wiring: " + from)
            .replace(
                "jack: \"1\", finish: terminated",
                "jack: \"1\", finish: terminated, wiring: " + to));
  }

  private static List<Job> singleFigures() {
    String verified = "date: 2026-04-20, kind: verification, result: pass, ";
    return List.of(
        test(verified + "length: 95 m, delay: 600 ns, skew: 9 ns, loop_resistance: 9 ohm"),
        test(verified + "delay: 200 ns"),
        test(verified + "wire_map: [1, 2, 3, 4, 5, 6, 7, 8]"),
        test(verified + "wire_map: [1, 2, 3]"),
        test(verified + "wire_map: [2, 1, open, 7, 8, 6, 4, 5], shorts: [3-6]"),
        test(verified + "wire_map: [1, 3, 2, 4, 5, 6, 7, 8], split_pairs: [36-45]"),
        test(verified + "shorts: [3-6]"));
  }

  private static List<Job> summaries() {
    String certified =
        "date: 2026-04-20, kind: certification, result: pass, " + PairJobs.LIMIT_SIX + ", worst: ";
    return List.of(
        test(certified + "[{parameter: next, pair: '36-45', frequency: 100 MHz, value: 45 dB}]"),
        test(certified + "[{parameter: next, pair: '36-45', margin: 1 dB}], accuracy: 2 dB"),
        test(certified + "[{parameter: next, margin: -1 dB}], accuracy: 2 dB"),
        test(certified + "[{parameter: next, frequency: 100 MHz, margin: 1 dB}]"),
        test(
            certified
                + "[{parameter: next, frequency: 100 MHz, value: 45 dB, margin: 9 dB},"
                + "{parameter: psnext, value: 40 dB}, {parameter: acrf, frequency: 100 MHz}]"),
        test(
            "date: 2026-04-20, kind: certification, result: pass, worst: [{parameter: next, margin: 1 dB}]"));
  }

  private static List<Job> sweeps() {
    String limit =
        "date: 2026-04-20, kind: certification, result: pass, limit: {standard: %s, category: %s, configuration: %s}";
    List<Job> jobs = new ArrayList<>();
    for (String standard : List.of("tia_568_2_d", "iso_11801_1")) {
      for (PairCategory category : PairCategory.values()) {
        for (LinkConfiguration link : LinkConfiguration.values()) {
          jobs.add(
              PairJobs.withSweep(
                  test(limit.formatted(standard, category.word(), link.word())), "t1", points()));
        }
      }
    }
    LimitLines lines = new LimitLines(Jobs.TABLES);
    List<SweepPoint> lower = new ArrayList<>();
    for (PairParameter parameter : PairParameter.values()) {
      lines
          .line(
              TestStandard.TIA_568_2_D,
              PairCategory.CAT5E,
              LinkConfiguration.PERMANENT_LINK,
              parameter)
          .ifPresent(line -> lower.addAll(PairJobs.wholeSweep(List.of(line), 0.1, 1, 10, 100)));
    }
    jobs.add(
        PairJobs.withSweep(
            test("date: 2026-04-20, kind: certification, result: pass, " + PairJobs.LIMIT_SIX),
            "t1",
            lower));
    return jobs;
  }

  /** Points that are free, worst, outside the range, from one end and from the other. */
  private static List<SweepPoint> points() {
    return List.of(
        PairJobs.point(PairParameter.INSERTION_LOSS, "36", 4, 2),
        PairJobs.point(PairParameter.INSERTION_LOSS, "36", 100, 15),
        PairJobs.point(PairParameter.INSERTION_LOSS, "36", 600, 15),
        PairJobs.point(PairParameter.INSERTION_LOSS, "36", 601, 15),
        PairJobs.point(PairParameter.RETURN_LOSS, "36", 4, 12),
        PairJobs.point(PairParameter.PSNEXT, "36", 4, 12),
        PairJobs.point(PairParameter.PSNEXT, "36", 5, 12),
        PairJobs.point(PairParameter.PSNEXT, "36", 100, 12, LossDirection.TO_FROM),
        PairJobs.point(PairParameter.NEXT, "36-45", 600, 12),
        PairJobs.point(PairParameter.PSACRF, "36", 100, 12),
        PairJobs.point(PairParameter.PSACRF, "36", 600, 12));
  }
}
