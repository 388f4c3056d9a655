package wallbook.assess.copper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Length;
import wallbook.quantity.Resistance;
import wallbook.quantity.Temperature;
import wallbook.quantity.Voltage;
import wallbook.record.Job;
import wallbook.reference.Standing;
import wallbook.wording.Phrase;

class UsesAndLengthTest {

  private static Assessment of(String topic, String cable, String runKeys) {
    return PairJobs.only(PairJobs.job(cable, runKeys), topic);
  }

  private static List<String> keys(List<Phrase> phrases) {
    return phrases.stream().map(Phrase::key).toList();
  }

  /** A serial-console handbook: 2500 pF over 55 pF/m is 45 m (45.45). */
  @ParameterizedTest
  @CsvSource({"45.4, WITHIN", "45.5, BEYOND"})
  void serialLinesAreLimitedByCapacitance(double metres, Verdict expected) {
    Assessment assessment = of("pairs.use.rs-232", "cat6", "length: %s m".formatted(metres));
    assertEquals(expected, assessment.verdict());
    assertEquals(45.45, ((Length) assessment.limit().orElseThrow()).inMetres(), 0.01);
    assertEquals(Length.metres(15), assessment.limitedBy().orElseThrow().arguments().get("common"));
  }

  /** Two manuals: 1200 m; a star of home runs breaks the rule of the bus. */
  @ParameterizedTest
  @CsvSource({"1200, CONDITIONAL", "1200.1, BEYOND"})
  void theSerialBusIsConditionalOnAChain(double metres, Verdict expected) {
    Assessment assessment = of("pairs.use.rs-485", "cat6", "length: %s m".formatted(metres));
    assertEquals(expected, assessment.verdict());
    assertTrue(keys(assessment.assumptions()).contains("pairs.use.rs-485.chain"));
  }

  @Test
  void aContactIsToldItsLoop() {
    // 90 m of 24 AWG: 2 x 90 x 25.67 Ω/1000 ft = 15.16 Ω (wire table)
    Assessment assessment = of("pairs.use.contact-closure", "cat5e", "length: 90 m");
    assertEquals(Verdict.INFORMATION, assessment.verdict());
    assertEquals(15.16, ((Resistance) assessment.value().orElseThrow()).inOhms(), 0.01);
    assertEquals(Standing.CONFIRMED, assessment.source().standing());
    assertEquals(
        List.of("pairs.temperature.unknown", "pairs.untested"), keys(assessment.assumptions()));
    assertTrue(
        keys(of("pairs.use.contact-closure", "plain", "length: 90 m").assumptions())
            .contains("pairs.gauge-unknown"));
    assertEquals(
        Standing.FROM_MEMORY,
        of("pairs.use.contact-closure", "cat6-stranded", "length: 90 m").source().standing());
  }

  @Test
  void analogueControlIsToldWhatVoltageIsLost() {
    // 15.16 Ω x 2 mA = 30 mV; 2 mA a unit is from memory
    Assessment assessment = of("pairs.use.analogue-control", "cat5e", "length: 90 m");
    assertEquals(0.0303, ((Voltage) assessment.value().orElseThrow()).inVolts(), 0.0001);
    assertEquals(Standing.FROM_MEMORY, assessment.source().standing());
  }

  @Test
  void telephoneHasNoLimitInAHouse() {
    assertEquals(Verdict.WITHIN, of("pairs.use.telephone", "cat6", "").verdict());
  }

  @ParameterizedTest
  @ValueSource(strings = {"infrared", "analogue-av", "video-extender"})
  void whatOnlyTheMakerKnowsIsLeftToTheMaker(String use) {
    Assessment assessment = of("pairs.use." + use, "cat6a", "length: 20 m");
    assertEquals(Verdict.INFORMATION, assessment.verdict());
    assertTrue(assessment.limit().isEmpty());
    assertEquals(List.of("pairs.untested"), keys(assessment.assumptions()));
    assertEquals(Standing.COMMON_PRACTICE, assessment.source().standing());
  }

  @ParameterizedTest
  @ValueSource(strings = {"rs-232", "rs-485", "contact-closure", "analogue-control"})
  void withoutALengthNothingIsClaimed(String use) {
    assertEquals(
        List.of("pairs.missing.length"), keys(of("pairs.use." + use, "cat6", "").missing()));
  }

  @Test
  void aWiringFaultComesBeforeAnyUse() {
    Job job =
        PairJobs.job(
            "cat6",
            "length: 20 m",
            "date: 2026-04-20, kind: wire_map, result: fail, shorts: [4-5]");
    assertEquals(Verdict.BEYOND, PairJobs.only(job, "pairs.use.telephone").verdict());
  }

  /** 90 m of permanent link: several handbook pages. */
  @ParameterizedTest
  @CsvSource({"90, WITHIN", "90.1, BEYOND"})
  void theLinkIsHeldTo90Metres(double metres, Verdict expected) {
    Assessment assessment = of("pairs.length", "cat6", "length: %s m".formatted(metres));
    assertEquals(expected, assessment.verdict());
    assertEquals(90 - metres, ((Length) assessment.margin().orElseThrow()).inMetres(), 1e-9);
    assertEquals("pairs.length.link", assessment.limitedBy().orElseThrow().key());
  }

  @Test
  void heatShortensTheLink() {
    Assessment assessment = of("pairs.length", "cat6", "length: 85 m\nhottest: 40 °C");
    assertEquals(Verdict.BEYOND, assessment.verdict());
    assertEquals(Length.metres(84), assessment.limit().orElseThrow());
    assertEquals("pairs.length.derated", assessment.limitedBy().orElseThrow().key());
  }

  @Test
  void aTemperatureWithoutAPublishedLengthIsBeyond() {
    Assessment assessment = of("pairs.length", "cat6", "length: 10 m\nhottest: 70 °C");
    assertEquals(Verdict.BEYOND, assessment.verdict());
    assertTrue(assessment.limit().isEmpty());
  }

  @Test
  void anUnrecordedLengthIsNotStated() {
    Job job = PairJobs.job("cat6", "");
    assertEquals(
        List.of("pairs.missing.length"), keys(PairJobs.only(job, "pairs.length").missing()));
    assertTrue(PairJobs.any(job, "pairs.length.hottest").isEmpty());
  }

  @Test
  void aRunIsToldHowHotItMayGet() {
    // the standard's table: 84 m at 40 °C (a test vendor's page), 81.7 m at 45 °C
    Assessment assessment = of("pairs.length.hottest", "cat6", "length: 84 m");
    assertEquals(Optional.of(Temperature.celsius(40)), assessment.value());
    assertEquals(Verdict.BEYOND, of("pairs.length.hottest", "cat6", "length: 91 m").verdict());
  }

  @Test
  void theComputedLengthStandsBesideTheTableWhereTheyDiffer() {
    Assessment computed = of("pairs.length.computed", "cat6", "length: 20 m\nhottest: 40 °C");
    assertEquals(83.33, ((Length) computed.value().orElseThrow()).inMetres(), 0.005); // 90/1.08
    assertEquals(List.of("pairs.temperature.run"), keys(computed.assumptions()));
    for (String keys : List.of("length: 20 m", "length: 20 m\nhottest: 10 °C")) {
      assertTrue(PairJobs.any(PairJobs.job("cat6", keys), "pairs.length.computed").isEmpty());
    }
    assertTrue(
        PairJobs.any(
                PairJobs.job("cat6-screened", "length: 20 m\nhottest: 40 °C"),
                "pairs.length.computed")
            .isEmpty());
  }

  @Test
  void cableThatDoesNotSayIsTakenAsUnscreened() {
    assertTrue(
        keys(of("pairs.length.hottest", "plain", "length: 20 m").assumptions())
            .contains("pairs.unscreened-assumed"));
    assertTrue(
        keys(of("pairs.length", "plain", "length: 20 m").assumptions())
            .contains("pairs.unscreened-assumed"));
  }

  @Test
  void theAtticsTemperatureCountsForRunsThatPassIt() {
    String head =
        """
        format: 1
        job: {id: small, title: Small job, revision: 1, invented: yes, attic_high: 50 °C}
        """;
    Job job =
        Jobs.read(head + PairJobs.yaml("cat6", "length: 80 m\nenvironments: [attic]"))
            .job()
            .orElseThrow();
    Assessment attic = PairJobs.only(job, "pairs.length");
    assertEquals(Verdict.BEYOND, attic.verdict());
    assertEquals(
        Phrase.of("pairs.temperature.attic", "temperature", Temperature.celsius(50)),
        attic.assumptions().get(0));
    Job indoors =
        Jobs.read(head + PairJobs.yaml("cat6", "length: 80 m\nenvironments: [in_wall]"))
            .job()
            .orElseThrow();
    assertEquals(Verdict.WITHIN, PairJobs.only(indoors, "pairs.length").verdict());
  }

  @Test
  void anUnknownAtticIsSaidToBeUnknown() {
    Assessment assessment = of("pairs.length", "cat6", "length: 80 m\nenvironments: [attic]");
    assertEquals("pairs.temperature.attic-unknown", assessment.assumptions().get(0).key());
    assertEquals(
        "pairs.temperature.unknown",
        of("pairs.length", "cat6", "length: 80 m").assumptions().get(0).key());
  }

  @Test
  void theRunsOwnTemperatureGoesBeforeTheAttics() {
    Assessment assessment =
        of("pairs.length", "cat6", "length: 80 m\nenvironments: [attic]\nhottest: 30 °C");
    assertEquals("pairs.temperature.run", assessment.assumptions().get(0).key());
    assertEquals(Length.metres(87), assessment.limit().orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({"t568a, t568a, WITHIN", "t568b, t568b, WITHIN", "t568a, t568b, BEYOND"})
  void bothEndsMustBeWiredAlike(String from, String to, Verdict expected) {
    String yaml =
        PairJobs.yaml("cat6", "length: 20 m")
            .replace("port: 1, finish: terminated", "port: 1, finish: terminated, wiring: " + from)
            .replace(
                "jack: \"1\", finish: terminated",
                "jack: \"1\", finish: terminated, wiring: " + to);
    Assessment assessment = PairJobs.only(Jobs.job(yaml), "pairs.wiring");
    assertEquals(expected, assessment.verdict());
    assertEquals(
        expected == Verdict.WITHIN ? "pairs.wiring.alike" : "pairs.wiring.crossed",
        assessment.limitedBy().orElseThrow().key());
  }

  @Test
  void oneKnownEndTellsNothingOfTheWiring() {
    String yaml =
        PairJobs.yaml("cat6", "length: 20 m")
            .replace("port: 1, finish: terminated", "port: 1, finish: terminated, wiring: t568a");
    assertTrue(PairJobs.any(Jobs.job(yaml), "pairs.wiring").isEmpty());
  }
}
