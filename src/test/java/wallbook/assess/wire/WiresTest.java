package wallbook.assess.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wallbook.assess.wire.WireJobs.run;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import wallbook.Jobs;
import wallbook.quantity.Ratio;
import wallbook.record.Job;
import wallbook.record.RunEnvironment;
import wallbook.reference.Source;
import wallbook.reference.Standing;
import wallbook.wording.Phrase;

class WiresTest {
  private final Wires wires = new Wires(Jobs.TABLES);

  private Wire tested(String runs, String rest) {
    Job job = WireJobs.job(runs, rest);
    return wires.of(job, job.run("r"));
  }

  private Wire wire(String cable, String more) {
    return tested(run("r", cable, "left", more), "");
  }

  private static List<String> assumed(Wire wire) {
    return wire.assumptions().stream().map(Phrase::key).toList();
  }

  private static List<String> missing(Wire wire) {
    return wire.missing().stream().map(Phrase::key).toList();
  }

  private static String test(String id, String date, String result, String more) {
    return "  - {id: %s, run: r, date: %s, kind: resistance, result: %s%s}\n"
        .formatted(id, date, result, more);
  }

  @Test
  void loopOfSolidWireFollowsTheHandbook() {
    // Floyd: 4.016 Ω per 1000 ft of 16 AWG: 100 ft there and back 0.803 Ω
    assertEquals(0.803, wire("s16-2", ", length: 100 ft").loop(1).inOhms(), 0.0005);
  }

  @Test
  void loopOfStrandedWireIsTwoPerCentMore() {
    Wire wire = wire("speaker-16-2", ", length: 100 ft");
    assertEquals(0.819, wire.loop(1).inOhms(), 0.001); // 0.00819 Ω/ft, an amplifier's manual
    assertTrue(assumed(wire).contains("wire.assume.stranded"));
    Phrase said =
        wire.assumptions().stream()
            .filter(p -> p.key().equals("wire.assume.stranded"))
            .findFirst()
            .orElseThrow();
    assertEquals(2, ((Ratio) said.arguments().get("more")).inPercent(), 1e-9);
  }

  @Test
  void wireOfUnknownStrandingIsTakenAsStrandedAndPairsAsSolid() {
    Wire speaker = wire("unsaid", ", length: 100 ft");
    assertEquals(0.819, speaker.loop(1).inOhms(), 0.001);
    assertTrue(assumed(speaker).contains("wire.assume.stranded-unsaid"));
    Wire pair = wire("pair-unsaid", ", length: 100 ft");
    assertEquals(4.07, pair.loop(1).inOhms(), 0.005); // 2 · 20.36 Ω per 1000 ft of 23 AWG (Floyd)
    assertTrue(assumed(pair).contains("wire.assume.solid"));
    assertFalse(assumed(wire("s16-2", ", length: 1 ft")).contains("wire.assume.solid"));
  }

  @Test
  void joinedConductorsShareTheCurrent() {
    Wire wire = wire("s16-4", ", length: 100 ft");
    assertEquals(wire.loop(1).inOhms() / 2, wire.loop(2).inOhms(), 1e-12);
    // 4.016 Ω per 1000 ft, half of it for two
    assertEquals(2.008, wire.ofPole(2).orElseThrow().inOhmsPerThousandFeet(), 0.001);
  }

  @ParameterizedTest
  @CsvSource({"1, true", "2, true", "3, false"})
  void fourConductorsServeTwoPolesOfTwo(int perPole, boolean enough) {
    assertEquals(enough, wire("s16-4", ", length: 1 ft").hasFor(perPole));
  }

  @Test
  void conductorsOfPairsAreTwiceTheirNumber() {
    assertEquals(Optional.of(8), wire("pair-unsaid", ", length: 1 ft").conductors());
    assertEquals(Optional.empty(), wire("unsaid", ", length: 1 ft").conductors());
    assertFalse(wire("unsaid", ", length: 1 ft").hasFor(1));
  }

  @Test
  void recordWithoutGaugeOrLengthSaysSo() {
    assertEquals(
        List.of("wire.missing.gauge", "wire.missing.length"), missing(wire("gaugeless", "")));
    Wire none = wire("s16-2", "");
    assertEquals(List.of("wire.missing.length"), missing(none));
    assertEquals(Optional.empty(), none.ofPole(1));
  }

  @Test
  void lengthOfNothingAndLoopOfNothingCountAsNotRecorded() {
    Wire wire =
        tested(
            run("r", "s16-2", "left", ", length: 0 ft"),
            "tests:\n" + test("t", "2026-04-20", "pass", ", loop_resistance: 0 ohm"));
    assertEquals(List.of("wire.missing.length"), missing(wire));
    Wire gaugeless = wire("gaugeless", ", length: 10 ft");
    assertEquals(Optional.empty(), gaugeless.ofPole(1));
  }

  @Test
  void gaugeOutsideTheStandardCountsAsNotRecorded() {
    assertEquals(List.of("wire.missing.gauge"), missing(wire("odd", ", length: 10 ft")));
  }

  @Test
  void measuredLoopGoesBeforeTheComputedOne() {
    Wire wire =
        tested(
            run("r", "gaugeless", "left", ", length_by: estimate"),
            "tests:\n" + test("t", "2026-04-20", "pass", ", loop_resistance: 0.9 ohm"));
    assertEquals(0.9, wire.loop(1).inOhms(), 1e-9);
    assertTrue(assumed(wire).contains("wire.assume.measured"));
    assertFalse(assumed(wire).contains("wire.assume.stranded"));
    assertTrue(wire.firm(), "the length no longer matters");
  }

  @Test
  void measuredLoopIsTakenToTheRunsTemperature() {
    // 1 + 0.00393 · 30 = 1.1179
    Wire wire =
        tested(
            run("r", "s16-2", "left", ", length: 100 ft, hottest: 50 °C"),
            "tests:\n" + test("t", "2026-04-20", "pass", ", loop_resistance: 1 ohm"));
    assertEquals(1.1179, wire.loop(1).inOhms(), 0.0001);
    // per length as measured: 0.5 Ω in 100 ft, hot
    assertEquals(5.5895, wire.ofPole(1).orElseThrow().inOhmsPerThousandFeet(), 0.001);
  }

  @Test
  void latestMeasurementCounts() {
    Wire wire =
        tested(
            run("r", "s16-2", "left", ""),
            "tests:\n"
                + test("b", "2026-04-21", "pass", ", loop_resistance: 0.8 ohm")
                + test("a", "2026-04-20", "pass", ", loop_resistance: 0.7 ohm"));
    assertEquals(0.8, wire.loop(1).inOhms(), 1e-9);
  }

  @Test
  void laterOfTwoTestsOfADayCounts() {
    Wire wire =
        tested(
            run("r", "s16-2", "left", ""),
            "tests:\n"
                + test("a", "2026-04-20", "pass", ", loop_resistance: 0.7 ohm")
                + test("b", "2026-04-20", "pass", ", loop_resistance: 0.8 ohm"));
    assertEquals(0.8, wire.loop(1).inOhms(), 1e-9);
  }

  @Test
  void failedMeasurementIsNotUsed() {
    Wire wire =
        tested(
            run("r", "s16-2", "left", ", length: 100 ft"),
            "tests:\n" + test("t", "2026-04-20", "fail", ", loop_resistance: 9 ohm, reason: open"));
    assertEquals(0.803, wire.loop(1).inOhms(), 0.0005);
    assertFalse(wire.firm());
    assertTrue(assumed(wire).contains("wire.assume.failed-test"));
  }

  @Test
  void testThatPassedAfterAFailureClearsIt() {
    Wire wire =
        tested(
            run("r", "s16-2", "left", ", length: 100 ft"),
            "tests:\n"
                + test("a", "2026-04-20", "fail", ", reason: open")
                + test("b", "2026-04-21", "pass", ""));
    assertTrue(wire.firm());
  }

  @Test
  void estimatedLengthIsNotFirm() {
    assertFalse(wire("s16-2", ", length: 100 ft, length_by: estimate").firm());
    assertTrue(wire("s16-2", ", length: 100 ft, length_by: tape").firm());
  }

  @Test
  void sourceIsThatOfTheConductor() {
    Source solid = wire("s16-2", ", length: 1 ft").source();
    assertEquals(Standing.CONFIRMED, solid.standing());
    assertTrue(solid.citation().contains("ASTM B258"));
    assertTrue(wire("speaker-16-2", ", length: 1 ft").source().citation().contains("strands"));
  }

  @Test
  void loopAndWhatIsMissingExcludeEachOther() {
    Wire wire = wire("s16-2", ", length: 1 ft");
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new Wire(
                wire.run(),
                wire.length(),
                Optional.empty(),
                wire.conductors(),
                wire.temperature(),
                List.of(),
                List.of(),
                List.of(),
                wire.source()));
  }

  @ParameterizedTest
  @CsvSource({
    "'', 20, wire.assume.temperature",
    "', environments: [in_wall]', 20, wire.assume.temperature",
    "', environments: [in_wall, attic]', 50, wire.assume.temperature",
    "', environments: [buried, outdoor_exposed]', 50, wire.assume.temperature",
    "', environments: [attic], hottest: 45 °C', 45, ''"
  })
  void temperatureIsThatOfTheHottestSurroundings(String more, double celsius, String assumption) {
    Wire wire = wire("s16-2", ", length: 1 ft" + more);
    assertEquals(celsius, wire.temperature().inCelsius());
    assertEquals(assumption.isEmpty() ? List.of() : List.of(assumption), assumed(wire));
  }

  @ParameterizedTest
  @CsvSource({
    "[attic], 60, wire.assume.attic",
    "'[in_wall, attic]', 60, wire.assume.attic",
    "'[attic, outdoor_exposed]', 60, wire.assume.attic",
    "[in_wall], 20, wire.assume.temperature"
  })
  void recordedAtticTemperatureGoesBeforeTheUsualOne(
      String environments, double celsius, String assumption) {
    Job job = atticJob(60, environments);
    WireTemperatures.Taken taken = new WireTemperatures(Jobs.TABLES).of(job, job.run("r"));
    assertEquals(celsius, taken.temperature().inCelsius());
    assertEquals(assumption, taken.assumption().orElseThrow().key());
  }

  @Test
  void sunnySideMayBeHotterThanACoolAttic() {
    Job job = atticJob(40, "[attic, outdoor_exposed]");
    WireTemperatures.Taken taken = new WireTemperatures(Jobs.TABLES).of(job, job.run("r"));
    assertEquals(50, taken.temperature().inCelsius());
    Job level = atticJob(50, "[attic, outdoor_exposed]");
    assertEquals(
        "wire.assume.attic",
        new WireTemperatures(Jobs.TABLES)
            .of(level, level.run("r"))
            .assumption()
            .orElseThrow()
            .key());
    Job cool = atticJob(40, "[attic, in_wall]");
    assertEquals(
        40, new WireTemperatures(Jobs.TABLES).of(cool, cool.run("r")).temperature().inCelsius());
  }

  private static Job atticJob(int celsius, String environments) {
    String yaml =
        """
        format: 1
        job: {id: small, title: Small, revision: 1, attic_high: %d °C}
        floors: [{id: ground, name: Ground floor, level: 0, elevation: 0 ft}]
        spaces: [{id: den, name: Den, floor: ground, kind: living}]
        heads: [{id: rack, name: Rack, kind: rack, space: den, panels: []}]
        places: [{id: left, name: Left, space: den, kind: ceiling_point, use: speaker}]
        runs: [{id: r, label: R, cable: speaker-16-2, from: {head: rack, finish: terminated}, to: {place: left, finish: coiled}, condition: dark, length: 10 ft, environments: %s}]
        """
            .formatted(celsius, environments);
    return Jobs.read(yaml).job().orElseThrow();
  }

  @ParameterizedTest
  @EnumSource(RunEnvironment.class)
  void everySurroundingsHaveATemperature(RunEnvironment environment) {
    assertTrue(
        Jobs.TABLES.table("wire-temperatures").find(environment.word()).isPresent(),
        environment.word());
  }

  @Property(tries = 50)
  void longerRunsResistMore(
      @ForAll @DoubleRange(min = 1, max = 400) double feet,
      @ForAll @DoubleRange(min = 0.2, max = 100) double more) {
    assertTrue(
        wire("s16-2", ", length: " + tenths(feet + more) + " ft")
                .loop(1)
                .compareTo(wire("s16-2", ", length: " + tenths(feet) + " ft").loop(1))
            > 0);
  }

  private static String tenths(double feet) {
    return String.format(Locale.ROOT, "%.1f", feet);
  }
}
