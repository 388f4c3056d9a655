package wallbook.assess.lowvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wallbook.assess.wire.WireJobs.assumed;
import static wallbook.assess.wire.WireJobs.missing;
import static wallbook.assess.wire.WireJobs.only;
import static wallbook.assess.wire.WireJobs.run;
import static wallbook.assess.wire.WireJobs.supplies;
import static wallbook.assess.wire.WireJobs.zone;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Current;
import wallbook.quantity.Length;
import wallbook.quantity.Power;
import wallbook.quantity.Quantity;
import wallbook.quantity.Ratio;
import wallbook.quantity.Voltage;
import wallbook.reference.Standing;

class LowVoltageAssessorTest {

  private static double percent(Assessment a) {
    return ((Ratio) a.value().orElseThrow()).inPercent();
  }

  private static double volts(Optional<Quantity> voltage) {
    return ((Voltage) voltage.orElseThrow()).inVolts();
  }

  private static double amperes(Optional<Quantity> current) {
    return ((Current) current.orElseThrow()).inAmperes();
  }

  private static double feet(Optional<Quantity> length) {
    return ((Length) length.orElseThrow()).inFeet();
  }

  private static boolean has(List<Assessment> all, String topic) {
    return all.stream().anyMatch(a -> a.topic().equals(topic));
  }

  private static List<Assessment> fed(String cable, String place, String length, String feed) {
    return supplies(run("r", cable, place, ", length: " + length + ", feed: {" + feed + "}"), "");
  }

  @Test
  void keypadsDropIsJudgedByEachLimit() {
    // 100 ft of 22 AWG, 150 mA: 0.4843 V, 4.04 % of 12 V; longest 74.3 / 123.9 / 247.8 ft
    List<Assessment> all = fed("s22-4", "keypad", "100 ft", "voltage: 12 V, current: 150 mA");
    assertEquals(Verdict.BEYOND, only(all, "r", "dc.drop.3-percent").verdict());
    Assessment five = only(all, "r", "dc.drop.5-percent");
    assertEquals(Verdict.WITHIN, five.verdict());
    assertEquals(4.04, percent(five), 0.005);
    assertEquals(0.96, ((Ratio) five.margin().orElseThrow()).inPercent(), 0.005);
    assertEquals(Verdict.WITHIN, only(all, "r", "dc.drop.10-percent").verdict());
    assertEquals(11.516, volts(only(all, "r", "dc.end-voltage").value()), 0.001);
    assertEquals(74.3, feet(only(all, "r", "dc.longest.3-percent").limit()), 0.05);
    assertEquals(Verdict.BEYOND, only(all, "r", "dc.longest.3-percent").verdict());
    Assessment longest = only(all, "r", "dc.longest.5-percent");
    assertEquals(123.9, feet(longest.limit()), 0.05);
    assertEquals(23.9, feet(longest.margin()), 0.05);
    assertEquals(Verdict.WITHIN, longest.verdict());
  }

  @Test
  void atticMakesTheKeypadsDropLarger() {
    // at 50 °C: 0.5414 V, 4.51 % of 12 V
    List<Assessment> all =
        supplies(
            run(
                "r",
                "s22-4",
                "keypad",
                ", length: 100 ft, environments: [attic], feed: {voltage: 12 V, current: 150 mA}"),
            "");
    assertEquals(4.51, percent(only(all, "r", "dc.drop.10-percent")), 0.005);
  }

  @Test
  void otherPairOfAKeypadIsNotJoined() {
    List<Assessment> keypad = fed("s22-4", "keypad", "100 ft", "voltage: 12 V, current: 150 mA");
    assertFalse(has(keypad, "dc.drop.10-percent.doubled"));
  }

  @Test
  void otherPairOfAShadeMayBeJoined() {
    // 60 ft of 16 AWG, 2.5 A: 1.205 V, 5.02 % of 24 V; joined 2.51 %
    List<Assessment> all = fed("s16-4", "shade", "60 ft", "voltage: 24 V, current: 2.5 A");
    assertEquals(5.02, percent(only(all, "r", "dc.drop.5-percent")), 0.005);
    assertEquals(Verdict.BEYOND, only(all, "r", "dc.drop.5-percent").verdict());
    Assessment joined = only(all, "r", "dc.drop.5-percent.doubled");
    assertEquals(2.51, percent(joined), 0.005);
    assertEquals(Verdict.WITHIN, joined.verdict());
    assertTrue(assumed(joined).contains("wire.assume.joined"));
  }

  @Test
  void joinedConductorsInTheRecordHalveTheDrop() {
    List<Assessment> all =
        fed("s16-4", "shade", "60 ft", "voltage: 24 V, current: 2.5 A, conductors_in_parallel: 2");
    assertEquals(2.51, percent(only(all, "r", "dc.drop.5-percent")), 0.005);
    assertFalse(has(all, "dc.drop.5-percent.doubled"));
  }

  @Test
  void conductorsThatTheCableLacksAreNamed() {
    List<Assessment> all =
        fed("s16-2", "shade", "60 ft", "voltage: 24 V, current: 2.5 A, conductors_in_parallel: 2");
    assertEquals(List.of("wire.missing.conductors"), missing(only(all, "r", "dc.drop")));
    assertFalse(has(all, "dc.drop.5-percent"));
    assertEquals(2.5, amperes(only(all, "r", "dc.class-2").value()), 1e-9);
  }

  @Test
  void constantPowerDrawsMoreAsTheVoltageFalls() {
    // 24 V, 30 W, 100 ft of 16 AWG (0.8031 Ω): 22.950 V, 1.3072 A, 4.37 %
    List<Assessment> all = fed("s16-2", "shade", "100 ft", "voltage: 24 V, power: 30 W");
    assertEquals(4.37, percent(only(all, "r", "dc.drop.5-percent")), 0.01);
    assertEquals(22.950, volts(only(all, "r", "dc.end-voltage").value()), 0.001);
    assertEquals(1.3072, amperes(only(all, "r", "dc.class-2").value()), 0.0002);
    // 5 %: 30/(24 · 0.95) = 1.3158 A; 1.2 V/(1.3158 A · 0.008031 Ω/ft) = 113.6 ft
    assertEquals(113.6, feet(only(all, "r", "dc.longest.5-percent").limit()), 0.1);
  }

  @Test
  void constantPowerOverAThinWireFailsTenPerCent() {
    // 12 V, 3 W, 150 ft of 22 AWG (4.8429 Ω): 10.634 V, 11.4 %
    List<Assessment> all = fed("s22-2", "shade", "150 ft", "voltage: 12 V, power: 3 W");
    Assessment ten = only(all, "r", "dc.drop.10-percent");
    assertEquals(11.4, percent(ten), 0.05);
    assertEquals(Verdict.BEYOND, ten.verdict());
  }

  @Test
  void ofCurrentAndPowerTheHarderDemandCounts() {
    // 2 A drops 1.606 V; 30 W at 24 V draws only 1.31 A; 60 W more than 2 A
    List<Assessment> current =
        fed("s16-2", "shade", "100 ft", "voltage: 24 V, current: 2 A, power: 30 W");
    assertEquals(6.69, percent(only(current, "r", "dc.drop.10-percent")), 0.005);
    assertEquals(2, amperes(only(current, "r", "dc.class-2").value()), 1e-9);
    List<Assessment> power =
        fed("s16-2", "shade", "100 ft", "voltage: 24 V, current: 1 A, power: 30 W");
    assertEquals(4.37, percent(only(power, "r", "dc.drop.10-percent")), 0.01);
    assertEquals(1.3072, amperes(only(power, "r", "dc.class-2").value()), 0.0002);
  }

  @ParameterizedTest
  @CsvSource({"'current: 1 A, power: 30 W'", "'current: 5 A, power: 1 W'", "'power: 30 W'"})
  void loadThatTheWireCannotCarryIsBeyond(String load) {
    // 100 ft of 22 AWG: 3.2286 Ω; 12 V carries 12²/(4 · 3.2286) = 11.1 W and under 3.72 A
    List<Assessment> all = fed("s22-2", "shade", "100 ft", "voltage: 12 V, " + load);
    Assessment ten = only(all, "r", "dc.drop.10-percent");
    assertEquals(Verdict.BEYOND, ten.verdict());
    assertEquals("dc.limit.not-carried", ten.limitedBy().orElseThrow().key());
    assertFalse(has(all, "dc.end-voltage"));
  }

  @Test
  void runWithoutAFeedGetsTheLargestLoadInstead() {
    // 60 ft of 16 AWG: 0.48186 Ω; 10 % of 12 V: 2.490 A at 10.8 V: 26.9 W; 3 % of 24 V: 1.494 A
    List<Assessment> all = supplies(run("r", "s16-2", "shade", "dark", ", length: 60 ft"), "");
    Assessment drop = only(all, "r", "dc.drop");
    assertEquals(Verdict.NOT_STATED, drop.verdict());
    assertEquals(List.of("dc.missing.feed"), missing(drop));
    Assessment ten = only(all, "r", "dc.load.10-percent.12-v");
    assertEquals(2.490, amperes(ten.value()), 0.001);
    assertEquals(Verdict.INFORMATION, ten.verdict());
    Power power = (Power) ten.limitedBy().orElseThrow().arguments().get("power");
    assertEquals(26.9, power.inWatts(), 0.05);
    assertEquals(1.494, amperes(only(all, "r", "dc.load.3-percent.24-v").value()), 0.001);
    assertFalse(has(all, "dc.class-2"));
  }

  @Test
  void largestLoadIsNeverMoreThanAClassTwoSourceGives() {
    // 10 ft of 16 AWG: 0.0803 Ω; 10 % of 12 V would be 14.9 A, of 24 V 29.9 A
    List<Assessment> all = supplies(run("r", "s16-2", "shade", "dark", ", length: 10 ft"), "");
    Assessment at12 = only(all, "r", "dc.load.10-percent.12-v");
    assertEquals(5, amperes(at12.value()), 1e-9);
    assertEquals("dc.limit.class-2", at12.limitedBy().orElseThrow().key());
    // 5 A · 0.0803 Ω = 0.4016 V of 12 V: 3.35 %
    Ratio lost = (Ratio) at12.limitedBy().orElseThrow().arguments().get("lost");
    assertEquals(3.35, lost.inPercent(), 0.005);
    assertEquals(4.1667, amperes(only(all, "r", "dc.load.10-percent.24-v").value()), 0.0001);
  }

  @Test
  void feedWithoutALoadGetsTheLargestLoadAtItsVoltage() {
    List<Assessment> all = fed("s16-2", "shade", "60 ft", "voltage: 12 V");
    assertEquals(List.of("dc.missing.load"), missing(only(all, "r", "dc.drop")));
    assertEquals(2.490, amperes(only(all, "r", "dc.load.10-percent").value()), 0.001);
    assertFalse(has(all, "dc.class-2"));
    assertFalse(has(all, "dc.load.10-percent.12-v"));
  }

  @Test
  void runWithoutALengthIsNotStated() {
    List<Assessment> all =
        supplies(run("r", "s22-2", "keypad", ", feed: {voltage: 12 V, current: 6 A}"), "");
    assertEquals(List.of("wire.missing.length"), missing(only(all, "r", "dc.drop")));
    assertEquals(Verdict.BEYOND, only(all, "r", "dc.class-2").verdict());
    assertFalse(has(all, "dc.load.10-percent"));
  }

  @ParameterizedTest
  @CsvSource({
    "12, 5, WITHIN, 5", // the whole of what table 11(B) gives
    "12, 5.1, BEYOND, 5",
    "12, 8, BEYOND, 5", // 96 VA would be within 100 VA, but not at 12 V
    "24, 4.1, WITHIN, 4.1667",
    "24, 4.2, BEYOND, 4.1667",
    "48, 2, WITHIN, 2.0833"
  })
  void classTwoSourceIsJudgedByItsVoltage(
      double volts, double amperes, Verdict verdict, double most) {
    List<Assessment> all =
        fed("s14-2", "shade", "5 ft", "voltage: " + volts + " V, current: " + amperes + " A");
    Assessment classTwo = only(all, "r", "dc.class-2");
    assertEquals(verdict, classTwo.verdict());
    assertEquals(amperes, amperes(classTwo.value()), 1e-9);
    assertEquals(most, amperes(classTwo.limit()), 0.0001);
  }

  @Test
  void classTwoEndsAbove60Volts() {
    Assessment classTwo =
        only(fed("s14-2", "shade", "5 ft", "voltage: 72 V, current: 1 A"), "r", "dc.class-2");
    assertEquals(Verdict.BEYOND, classTwo.verdict());
    assertEquals(60, volts(classTwo.limit()), 1e-9);
    assertEquals(-12, volts(classTwo.margin()), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"24, WITHIN", "30, WITHIN", "36, BEYOND"}) // 30 V, note 4 to table 11(B)
  void voltageOutdoorsIsJudgedForWetContact(double volts, Verdict verdict) {
    List<Assessment> all =
        fed("s16-2", "gate", "50 ft", "voltage: " + volts + " V, current: 0.1 A");
    assertEquals(verdict, only(all, "r", "dc.wet-contact").verdict());
    assertEquals(30 - volts, volts(only(all, "r", "dc.wet-contact").margin()), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "buried, true",
    "outdoor_exposed, true",
    "outdoor_conduit, true",
    "attic, false",
    "slab, false"
  })
  void surroundingsTellWhereItIsWet(String environment, boolean wet) {
    List<Assessment> all =
        supplies(
            run(
                "r",
                "s16-2",
                "shade",
                ", length: 50 ft, environments: ["
                    + environment
                    + "], feed: {voltage: 12 V, current: 0.1 A}"),
            "");
    assertEquals(wet, has(all, "dc.wet-contact"));
  }

  @ParameterizedTest
  @CsvSource({"damaged, wire.limit.damaged", "abandoned, wire.limit.abandoned"})
  void unusableRunCarriesNothing(String condition, String why) {
    List<Assessment> all =
        supplies(
            run(
                "r",
                "s16-2",
                "shade",
                condition,
                ", length: 20 ft, feed: {voltage: 12 V, current: 1 A}"),
            "");
    assertEquals(List.of("dc.drop"), all.stream().map(Assessment::topic).toList());
    assertEquals(Verdict.BEYOND, all.get(0).verdict());
    assertEquals(why, all.get(0).limitedBy().orElseThrow().key());
  }

  @ParameterizedTest
  @CsvSource({
    "s22-4, left, true", // control cable anywhere
    "s16-4, shade, true",
    "s16-4, plate, true", // spare: either
    "s16-4, left, false", // a speaker's
    "s16-4, knob, false",
    "s16-4, stub, false",
    "pair-unsaid, shade, false", // pairs only with a feed
    "series-6, plate, false",
    "om3-2, plate, false",
    "power-16-2, plate, true"
  })
  void wireIsASupplyByCableAndPlace(String cable, String place, boolean supply) {
    List<Assessment> all = supplies(run("r", cable, place, "dark", ", length: 20 ft"), "");
    assertEquals(supply, !all.isEmpty());
  }

  @Test
  void pairsWithAFeedAreASupply() {
    // 100 ft of 23 AWG, one pair: 2 · 20.356 Ω/1000 ft · 100 ft · 0.1 A = 0.4071 V, 3.39 % of 12 V
    List<Assessment> all = fed("cat6", "shade", "100 ft", "voltage: 12 V, current: 100 mA");
    assertEquals(3.39, percent(only(all, "r", "dc.drop.5-percent")), 0.005);
    assertEquals(1.70, percent(only(all, "r", "dc.drop.5-percent.doubled")), 0.005);
  }

  @Test
  void wireOfAZoneIsNoSupplyUnlessItHasAFeed() {
    String speakers = zone("audio", "", "{run: r, impedance: 8 ohm}");
    assertEquals(List.of(), supplies(run("r", "s16-4", "plate", ", length: 20 ft"), speakers));
    assertEquals(List.of(), supplies(run("r", "s22-4", "plate", ", length: 20 ft"), speakers));
    assertFalse(
        supplies(
                run("r", "s16-4", "plate", ", length: 20 ft, feed: {voltage: 12 V, current: 1 A}"),
                speakers)
            .isEmpty());
  }

  @Test
  void estimatedLengthMakesAGoodResultConditional() {
    List<Assessment> all =
        supplies(
            run(
                "r",
                "s16-2",
                "shade",
                ", length: 10 ft, length_by: estimate, feed: {voltage: 24 V, current: 1 A}"),
            "");
    assertEquals(Verdict.CONDITIONAL, only(all, "r", "dc.drop.3-percent").verdict());
    assertEquals(Verdict.CONDITIONAL, only(all, "r", "dc.longest.3-percent").verdict());
    assertTrue(assumed(only(all, "r", "dc.drop.3-percent")).contains("wire.assume.estimate"));
  }

  @ParameterizedTest
  @CsvSource({
    "'voltage: 12 V, current: 0 mA', dc.missing.load",
    "'voltage: 12 V, power: 0 W', dc.missing.load",
    "'voltage: 0 V, current: 1 A', dc.missing.feed"
  })
  void nothingIsNoFeedAndNoLoad(String feed, String missing) {
    List<Assessment> all = fed("s16-2", "shade", "60 ft", feed);
    assertEquals(List.of(missing), missing(only(all, "r", "dc.drop")));
    assertFalse(has(all, "dc.class-2"));
  }

  @Test
  void feedOfTwoConductorsAPoleMayHaveFour() {
    // 100 ft of 16 AWG: 0.8031 Ω, a quarter of it 0.2008 Ω; 2 A: 0.4016 V, 1.67 % of 24 V
    List<Assessment> all =
        fed("s16-8", "shade", "100 ft", "voltage: 24 V, current: 2 A, conductors_in_parallel: 2");
    Assessment doubled = only(all, "r", "dc.drop.3-percent.doubled");
    assertEquals(1.67, percent(doubled), 0.005);
    assertEquals(
        4,
        doubled.assumptions().stream()
            .filter(p -> p.key().equals("wire.assume.joined"))
            .findFirst()
            .orElseThrow()
            .arguments()
            .get("count"));
    assertFalse(
        has(
            fed(
                "s16-6",
                "shade",
                "100 ft",
                "voltage: 24 V, current: 2 A, conductors_in_parallel: 2"),
            "dc.drop.3-percent.doubled"));
  }

  @Test
  void missingConductorsAreCounted() {
    Assessment drop =
        only(
            fed("s16-2", "shade", "9 ft", "voltage: 24 V, current: 1 A, conductors_in_parallel: 3"),
            "r",
            "dc.drop");
    assertEquals(6, drop.missing().get(0).arguments().get("needed"));
    assertEquals(2, drop.missing().get(0).arguments().get("there"));
  }

  @Test
  void classTwoIsCitedOnlyWhereItDecides() {
    List<Assessment> all = supplies(run("r", "s16-2", "shade", "dark", ", length: 10 ft"), "");
    assertTrue(only(all, "r", "dc.load.10-percent.12-v").source().citation().contains("11(B)"));
    List<Assessment> far = supplies(run("r", "s16-2", "shade", "dark", ", length: 99 ft"), "");
    assertFalse(only(far, "r", "dc.load.10-percent.12-v").source().citation().contains("11(B)"));
  }

  @Test
  void limitsSayWhereTheyComeFrom() {
    List<Assessment> all = fed("s16-2", "shade", "60 ft", "voltage: 24 V, current: 1 A");
    Assessment three = only(all, "r", "dc.drop.3-percent");
    assertTrue(three.source().citation().contains("210.19"));
    assertEquals(Standing.FROM_MEMORY, three.source().standing());
    assertEquals(
        Standing.COMMON_PRACTICE, only(all, "r", "dc.drop.10-percent").source().standing());
  }
}
