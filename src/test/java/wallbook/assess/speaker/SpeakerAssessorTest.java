package wallbook.assess.speaker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wallbook.assess.wire.WireJobs.assumed;
import static wallbook.assess.wire.WireJobs.between;
import static wallbook.assess.wire.WireJobs.measured;
import static wallbook.assess.wire.WireJobs.missing;
import static wallbook.assess.wire.WireJobs.only;
import static wallbook.assess.wire.WireJobs.run;
import static wallbook.assess.wire.WireJobs.speakers;
import static wallbook.assess.wire.WireJobs.zone;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Count;
import wallbook.quantity.Decibels;
import wallbook.quantity.Factor;
import wallbook.quantity.Length;
import wallbook.quantity.Power;
import wallbook.quantity.Quantity;
import wallbook.quantity.Ratio;
import wallbook.quantity.Resistance;
import wallbook.reference.Standing;

class SpeakerAssessorTest {

  private static double decibels(Assessment a) {
    return ((Decibels) a.value().orElseThrow()).inDecibels();
  }

  private static double percent(Assessment a) {
    return ((Ratio) a.value().orElseThrow()).inPercent();
  }

  private static double feet(Optional<Quantity> length) {
    return ((Length) length.orElseThrow()).inFeet();
  }

  private static double ohms(Assessment a) {
    return ((Resistance) a.value().orElseThrow()).inOhms();
  }

  private static double factor(Assessment a) {
    return ((Factor) a.value().orElseThrow()).value();
  }

  private static boolean has(List<Assessment> all, String subject, String topic) {
    return all.stream().anyMatch(a -> a.subject().equals(subject) && a.topic().equals(topic));
  }

  @Test
  void twoSpeakersOnOnePairCountAsTheirCommonLoad() {
    // 75 ft of 16-2: R 0.6023 Ω against 4 Ω: 1.218 dB, 15.06 %; 5 % is used up at 24.9 ft
    List<Assessment> all =
        speakers(
            run("r", "s16-2", "left", ", length: 75 ft"),
            zone("audio", "", "{run: r, impedance: 8 ohm, count: 2}"));
    Assessment loss = only(all, "r", "speaker.loss.half-db");
    assertEquals(1.218, decibels(loss), 0.001);
    assertEquals(Verdict.BEYOND, loss.verdict());
    assertEquals(15.06, percent(only(all, "r", "speaker.share.5-percent")), 0.01);
    Assessment longest = only(all, "r", "speaker.longest.5-percent");
    assertEquals(75, feet(longest.value()), 1e-9);
    assertEquals(24.9, feet(longest.limit()), 0.05);
    assertEquals(-50.1, feet(longest.margin()), 0.05);
    assertEquals(Verdict.BEYOND, longest.verdict());
  }

  @Test
  void speakersOnPairsOfTheirOwnKeepTheirLoads() {
    // 75 ft of 16-4, each speaker on its pair: 0.6023 Ω against 8 Ω: 0.630 dB, 7.53 %
    List<Assessment> all =
        speakers(
            run("r", "s16-4", "left", ", length: 75 ft"),
            zone("audio", "", "{run: r, impedance: 8 ohm}, {run: r, impedance: 8 ohm}"));
    Assessment loss = only(all, "r", "speaker.loss.half-db");
    assertEquals(0.630, decibels(loss), 0.001);
    assertTrue(assumed(loss).contains("speaker.assume.worst-of"));
    assertEquals(Verdict.BEYOND, only(all, "r", "speaker.share.5-percent").verdict());
    assertEquals(Verdict.WITHIN, only(all, "r", "speaker.share.10-percent").verdict());
    assertFalse(has(all, "r", "speaker.loss.half-db.doubled"), "both pairs are taken");
  }

  @Test
  void theLowestLoadOfTheLinesInACableStandsForAll() {
    List<Assessment> all =
        speakers(
            run("r", "s16-4", "left", ", length: 75 ft"),
            zone("audio", "", "{run: r, impedance: 8 ohm}, {run: r, impedance: 4 ohm}"));
    assertEquals(1.218, decibels(only(all, "r", "speaker.loss.half-db")), 0.001);
    assertEquals(4, ohms(only(all, "r", "speaker.load")), 1e-9);
  }

  @Test
  void moreSpeakersThanPairsAreTakenSideBySide() {
    List<Assessment> all =
        speakers(
            run("r", "s16-2", "left", ", length: 75 ft"),
            zone("audio", "", "{run: r, impedance: 8 ohm}, {run: r, impedance: 8 ohm}"));
    Assessment loss = only(all, "r", "speaker.loss.half-db");
    assertEquals(1.218, decibels(loss), 0.001);
    assertTrue(assumed(loss).contains("speaker.assume.side-by-side"));
  }

  @Test
  void oneSpeakerOnFourConductorsMayHaveThemJoined() {
    // 100 ft of 16 AWG: 0.8031 Ω; joined 0.4016 Ω: 20·log10(8.4016/8) = 0.425 dB
    List<Assessment> all =
        speakers(
            run("r", "s16-4", "left", ", length: 100 ft"),
            zone("audio", "", "{run: r, impedance: 8 ohm}"));
    assertEquals(0.831, decibels(only(all, "r", "speaker.loss.half-db")), 0.001);
    Assessment doubled = only(all, "r", "speaker.loss.half-db.doubled");
    assertEquals(0.425, decibels(doubled), 0.001);
    assertEquals(Verdict.WITHIN, doubled.verdict());
    assertTrue(assumed(doubled).contains("wire.assume.joined"));
    assertFalse(assumed(doubled).contains("speaker.assume.worst-of"));
  }

  @Test
  void joinedConductorsInTheRecordHalveTheLoop() {
    List<Assessment> all =
        speakers(
            run("r", "s16-4", "left", ", length: 100 ft"),
            zone("audio", "", "{run: r, impedance: 8 ohm, conductors_in_parallel: 2}"));
    assertEquals(0.4016, ohms(only(all, "r", "speaker.loop")), 0.0001);
    assertFalse(has(all, "r", "speaker.loop.doubled"));
  }

  @Test
  void conductorsThatTheCableLacksAreNamed() {
    List<Assessment> all =
        speakers(
            run("r", "s16-2", "left", ", length: 100 ft"),
            zone("audio", "", "{run: r, impedance: 8 ohm, conductors_in_parallel: 2}"));
    Assessment loss = only(all, "r", "speaker.loss");
    assertEquals(Verdict.NOT_STATED, loss.verdict());
    assertEquals(List.of("wire.missing.conductors"), missing(loss));
    assertEquals(4, loss.missing().get(0).arguments().get("needed"));
    assertEquals(2, loss.missing().get(0).arguments().get("there"));
    assertFalse(assumed(loss).contains("speaker.assume.side-by-side"));
  }

  @ParameterizedTest
  @CsvSource({
    // speakers of 8 Ω side by side, least load of the amplifier or none, verdict
    "2, , WITHIN", // 4 Ω at the usual 4 Ω
    "3, , BEYOND", // 2.67 Ω
    "3, 2 ohm, WITHIN",
    "1, 8 ohm, WITHIN",
    "2, 6 ohm, BEYOND"
  })
  void loadIsJudgedByWhatTheAmplifierTakes(int count, String least, Verdict verdict) {
    String amplifier = least == null ? "" : ", amplifier_minimum: " + least;
    List<Assessment> all =
        speakers(
            run("r", "s14-2", "left", ", length: 10 ft"),
            zone("audio", amplifier, "{run: r, impedance: 8 ohm, count: " + count + "}"));
    Assessment load = only(all, "r", "speaker.load");
    assertEquals(verdict, load.verdict());
    assertEquals(8.0 / count, ohms(load), 1e-9);
    assertEquals(least == null, assumed(load).contains("speaker.assume.amplifier"));
    assertEquals(
        least == null ? Standing.COMMON_PRACTICE : Standing.DERIVED, load.source().standing());
  }

  @ParameterizedTest
  @CsvSource({"8, '', 2", "4, '', 1", "6, '', 1", "8, ', amplifier_minimum: 2 ohm', 4"}) // floor
  void channelTakesAsManySpeakersAsItsLeastLoadAllows(int ohms, String least, int most) {
    List<Assessment> all =
        speakers(
            run("r", "s14-2", "left", ", length: 10 ft"),
            zone("audio", least, "{run: r, impedance: " + ohms + " ohm}"));
    assertEquals(Count.of(most), only(all, "z", "speaker.channel.most").value().orElseThrow());
  }

  @Test
  void dampingOfAListeningRoomIsJudged() {
    // 8 Ω, 50 ft of 14 AWG (0.2525 Ω), damping factor 400 for 8 Ω (0.02 Ω): 29.4, at least 25
    List<Assessment> all =
        speakers(
            run("r", "s14-2", "left", ", length: 50 ft"),
            zone("hi_fi", ", amplifier_damping: 400", "{run: r, impedance: 8 ohm}"));
    Assessment damping = only(all, "r", "speaker.damping");
    assertEquals(29.4, factor(damping), 0.05);
    assertEquals(Verdict.WITHIN, damping.verdict());
    assertEquals(4.4, ((Factor) damping.margin().orElseThrow()).value(), 0.05);
  }

  @Test
  void dampingOverALongThinWireIsTooLowWhateverTheAmplifier() {
    // 8/0.8031 = 9.96 with a perfect amplifier
    List<Assessment> all =
        speakers(
            run("r", "s16-2", "left", ", length: 100 ft"),
            zone("surround_primary", "", "{run: r, impedance: 8 ohm}"));
    Assessment damping = only(all, "r", "speaker.damping");
    assertEquals(Verdict.BEYOND, damping.verdict());
    assertEquals(9.96, factor(damping), 0.01);
    assertTrue(assumed(damping).contains("speaker.assume.wire-alone"));
  }

  @Test
  void dampingIsNotStatedWithoutTheAmplifiersOwn() {
    List<Assessment> all =
        speakers(
            run("r", "s14-2", "left", ", length: 50 ft"),
            zone("hi_fi", "", "{run: r, impedance: 8 ohm}"));
    Assessment damping = only(all, "r", "speaker.damping");
    assertEquals(List.of("speaker.missing.damping"), missing(damping));
  }

  @Test
  void dampingOfBackgroundMusicIsGivenButNotJudged() {
    String run = run("r", "s16-2", "left", ", length: 100 ft");
    List<Assessment> with =
        speakers(run, zone("audio", ", amplifier_damping: 400", "{run: r, impedance: 8 ohm}"));
    assertEquals(Verdict.INFORMATION, only(with, "r", "speaker.damping").verdict());
    List<Assessment> without = speakers(run, zone("audio", "", "{run: r, impedance: 8 ohm}"));
    assertFalse(has(without, "r", "speaker.damping"));
  }

  @Test
  void constantVoltageLineIsJudgedByItsTaps() {
    // 100 W at 70.7 V: 49.98 Ω; 500 ft of 16 AWG: 0.671 dB; half a decibel at 369 ft; 100/80 %
    List<Assessment> all =
        speakers(
            run("r", "s16-2", "left", ", length: 500 ft"),
            zone(
                "landscape",
                ", line_voltage: 70.7 V",
                "{run: r, impedance: 8 ohm, power: 25 W, count: 2}, {run: r, impedance: 8 ohm, power: 50 W}"));
    assertEquals(0.671, decibels(only(all, "r", "speaker.loss.half-db")), 0.001);
    assertEquals(369, feet(only(all, "r", "speaker.longest.half-db").limit()), 0.5);
    assertEquals(
        125, ((Power) only(all, "z", "speaker.taps").value().orElseThrow()).inWatts(), 1e-9);
    assertFalse(has(all, "r", "speaker.load"));
    assertFalse(has(all, "r", "speaker.damping"));
    assertFalse(assumed(only(all, "r", "speaker.loop")).contains("speaker.assume.inductance"));
    assertFalse(has(all, "z", "speaker.channel.most"));
  }

  @Test
  void constantVoltageLineWithoutTapsIsNotStated() {
    List<Assessment> all =
        speakers(
            run("r", "s16-2", "left", ", length: 500 ft"),
            zone("landscape", ", line_voltage: 100 V", "{run: r, impedance: 8 ohm}"));
    assertEquals(List.of("speaker.missing.taps"), missing(only(all, "r", "speaker.loss")));
    assertEquals(List.of("speaker.missing.taps"), missing(only(all, "z", "speaker.taps")));
  }

  @Test
  void wireBeforeAVolumeControlCountsWithTheWireBehindIt() {
    // 30 ft + 20 ft of 16 AWG: 0.4016 Ω against 8 Ω: 5.02 %
    // 10 %: 0.8 Ω less 30 ft (0.2409 Ω) leaves 0.5591 Ω: 69.6 ft behind the control
    List<Assessment> all =
        speakers(
            run("up", "s16-4", "knob", ", length: 30 ft")
                + between("down", "s16-2", "knob", "left", ", length: 20 ft"),
            zone("audio", ", volume_control: knob", "{run: down, impedance: 8 ohm}"));
    assertEquals(0.4016, ohms(only(all, "down", "speaker.loop")), 0.0001);
    Assessment within = only(all, "down", "speaker.share.10-percent");
    assertEquals(5.02, percent(within), 0.005);
    assertEquals(Verdict.CONDITIONAL, within.verdict());
    assertTrue(assumed(within).contains("speaker.assume.volume-control"));
    assertEquals(69.6, feet(only(all, "down", "speaker.longest.10-percent").limit()), 0.05);
    assertEquals(0.4016, ohms(only(all, "up", "speaker.loop")), 0.0001);
    // before the control: 0.8 Ω less 20 ft (0.1606 Ω): 79.6 ft
    assertEquals(79.6, feet(only(all, "up", "speaker.longest.10-percent").limit()), 0.05);
    assertFalse(has(all, "up", "speaker.loop.doubled"), "its other pair serves the other speaker");
  }

  @Test
  void worseOfTheLinesBehindAVolumeControlStandsForTheWireBeforeIt() {
    List<Assessment> all =
        speakers(
            run("up", "s16-4", "knob", ", length: 30 ft")
                + between("near", "s16-2", "knob", "left", ", length: 20 ft")
                + between("far", "s16-2", "knob", "right", ", length: 40 ft"),
            zone(
                "audio",
                ", volume_control: knob",
                "{run: near, impedance: 8 ohm}, {run: far, impedance: 8 ohm}"));
    // 70 ft · 0.008031 Ω/ft
    assertEquals(0.5622, ohms(only(all, "up", "speaker.loop")), 0.0001);
    assertEquals(0.4016, ohms(only(all, "near", "speaker.loop")), 0.0001);
  }

  @Test
  void volumeControlWithoutItsWireIsNotStated() {
    List<Assessment> all =
        speakers(
            between("down", "s16-2", "knob", "left", ", length: 20 ft"),
            zone("audio", ", volume_control: knob", "{run: down, impedance: 8 ohm}"));
    assertEquals(List.of("speaker.missing.upstream"), missing(only(all, "down", "speaker.loss")));
  }

  @Test
  void volumeControlElsewhereLeavesALineAlone() {
    List<Assessment> all =
        speakers(
            run("r", "s16-2", "left", ", length: 20 ft"),
            zone("audio", ", volume_control: knob", "{run: r, impedance: 8 ohm}"));
    assertEquals(Verdict.WITHIN, only(all, "r", "speaker.share.5-percent").verdict());
  }

  @ParameterizedTest
  @CsvSource({
    // speakers of 8 Ω, least load; setting by the makers' rule, next one above
    "4, 8, 4", // the published example: 8/(8/4) = 4
    "1, 8, 1",
    "2, 8, 2",
    "3, 8, 4", // 8/2.67 = 3, rounded up to the next setting
    "8, 8, 8"
  })
  void volumeControlSettingAgreesWithTheMakersGuide(int count, int least, double setting) {
    Assessment control = volumeControl(count, least);
    assertEquals(setting, factor(control), 1e-9);
    assertEquals(Verdict.INFORMATION, control.verdict());
  }

  @Test
  void volumeControlCannotMatchMoreThanItsLargestSetting() {
    Assessment control = volumeControl(9, 8);
    assertEquals(Verdict.BEYOND, control.verdict());
    assertEquals(9, factor(control), 1e-9);
    assertEquals(-1, ((Factor) control.margin().orElseThrow()).value(), 1e-9);
  }

  private static Assessment volumeControl(int count, int least) {
    return only(
        speakers(
            run("r", "s16-2", "knob", ", length: 20 ft"),
            zone(
                "audio",
                ", volume_control: knob, amplifier_minimum: " + least + " ohm",
                "{run: r, impedance: 8 ohm, count: " + count + "}")),
        "z",
        "speaker.volume-control");
  }

  @ParameterizedTest
  @CsvSource({"damaged, wire.limit.damaged", "abandoned, wire.limit.abandoned"})
  void unusableRunCarriesNothing(String condition, String why) {
    List<Assessment> inZone =
        speakers(
            run("r", "s16-2", "left", condition, ", length: 20 ft"),
            zone("audio", "", "{run: r, impedance: 8 ohm}"));
    Assessment loss = only(inZone, "r", "speaker.loss");
    assertEquals(Verdict.BEYOND, loss.verdict());
    assertEquals(why, loss.limitedBy().orElseThrow().key());
    assertEquals(1, inZone.stream().filter(a -> a.subject().equals("r")).count());
    List<Assessment> alone = speakers(run("r", "s16-2", "left", condition, ", length: 20 ft"), "");
    assertEquals(List.of("speaker.loss"), alone.stream().map(Assessment::topic).toList());
  }

  @Test
  void lineWithoutALengthIsNotStated() {
    List<Assessment> all =
        speakers(run("r", "s16-2", "left", ""), zone("audio", "", "{run: r, impedance: 8 ohm}"));
    Assessment loss = only(all, "r", "speaker.loss");
    assertEquals(Verdict.NOT_STATED, loss.verdict());
    assertEquals(List.of("wire.missing.length"), missing(loss));
    assertTrue(has(all, "r", "speaker.load"), "the load is known all the same");
    assertFalse(has(all, "r", "speaker.loop"));
  }

  @Test
  void speakerWithoutARunIsNamed() {
    List<Assessment> all =
        speakers(
            run("r", "s16-2", "left", ", length: 20 ft"),
            zone("audio", "", "{run: r, impedance: 8 ohm}, {place: right, impedance: 8 ohm}"));
    Assessment loss = only(all, "z", "speaker.loss");
    assertEquals(List.of("speaker.missing.run.one"), missing(loss));
  }

  @Test
  void onlySpeakerWireAtASpeakersPlaceIsItsRun() {
    List<Assessment> all =
        speakers(
            run("r", "s16-2", "left", ", length: 20 ft"),
            zone("audio", "", "{place: left, impedance: 8 ohm}"));
    assertEquals(0.1606, ohms(only(all, "r", "speaker.loop")), 0.0001);
    assertFalse(has(all, "z", "speaker.loss"));
  }

  @Test
  void twoWiresAtASpeakersPlaceLeaveItsRunUnknown() {
    List<Assessment> all =
        speakers(
            run("a", "s16-2", "left", ", length: 20 ft")
                + run("b", "s16-2", "left", ", length: 20 ft"),
            zone("audio", "", "{place: left, impedance: 8 ohm}"));
    assertEquals(List.of("speaker.missing.run.one"), missing(only(all, "z", "speaker.loss")));
  }

  @Test
  void wireThatServesNoZoneIsAssessedAtUsualLoads() {
    List<Assessment> all = speakers(run("r", "s16-4", "left", "dark", ", length: 100 ft"), "");
    assertEquals(1.589, decibels(only(all, "r", "speaker.loss.half-db.4-ohm")), 0.001);
    assertEquals(0.831, decibels(only(all, "r", "speaker.loss.half-db.8-ohm")), 0.001);
    assertEquals(0.425, decibels(only(all, "r", "speaker.loss.half-db.8-ohm.doubled")), 0.001);
    assertTrue(
        assumed(only(all, "r", "speaker.loss.half-db.8-ohm"))
            .contains("speaker.assume.no-speaker"));
    assertFalse(has(all, "r", "speaker.load.8-ohm"));
  }

  @Test
  void speakerCableToAShadeIsNoSpeakerLine() {
    assertEquals(List.of(), speakers(run("r", "s16-4", "shade", ", length: 20 ft"), ""));
  }

  @Test
  void stubOutCanBeExtendedByWhatTheLimitLeaves() {
    // 20 ft of 16 AWG: 0.16063 Ω; 5 % of 8 Ω leaves 0.23937 Ω.
    // Stranded 14 AWG: 2 · 2.525 Ω/1000 ft · 1.02 = 0.005151 Ω/ft: 46.5 ft; 12 AWG 0.0032395: 73.9
    // ft
    List<Assessment> all = speakers(run("r", "s16-2", "stub", "dark", ", length: 20 ft"), "");
    Assessment in14 = only(all, "r", "speaker.extend.5-percent.awg-14.8-ohm");
    assertEquals(46.5, feet(in14.value()), 0.05);
    assertEquals(Verdict.INFORMATION, in14.verdict());
    assertEquals(
        List.of("wire.assume.temperature", "speaker.assume.no-speaker", "speaker.assume.extension"),
        assumed(in14));
    assertEquals(73.9, feet(only(all, "r", "speaker.extend.5-percent.awg-12.8-ohm").value()), 0.05);
    // half a decibel, 5.925 % of 8 Ω: 0.47402 − 0.16063 = 0.31339 Ω: 60.8 ft of 14 AWG
    assertEquals(60.8, feet(only(all, "r", "speaker.extend.half-db.awg-14.8-ohm").value()), 0.05);
    assertEquals(
        5,
        all.stream()
            .filter(a -> a.topic().matches("speaker\\.extend\\.5-percent\\.awg-\\d+\\.8-ohm"))
            .count());
    assertFalse(has(all, "r", "speaker.extend.10-percent.awg-14.8-ohm"));
  }

  @Test
  void stubOutThatIsUsedUpCannotBeExtended() {
    List<Assessment> all = speakers(run("r", "s16-2", "stub", "dark", ", length: 60 ft"), "");
    Assessment none = only(all, "r", "speaker.extend.5-percent.8-ohm");
    assertEquals(Verdict.BEYOND, none.verdict());
    assertEquals("speaker.limit.used-up", none.limitedBy().orElseThrow().key());
  }

  @Test
  void lineThatEndsAtASpeakerIsNotExtended() {
    List<Assessment> all = speakers(run("r", "s16-2", "left", "dark", ", length: 20 ft"), "");
    assertTrue(all.stream().noneMatch(a -> a.topic().startsWith("speaker.extend")));
  }

  @Test
  void speakersOfAZoneHangOnTheWireCoiledForIt() {
    List<Assessment> all =
        speakers(
            run("r", "s16-4", "stub", "dark", ", length: 20 ft"),
            zone("landscape", "", "{impedance: 8 ohm, count: 2}")
                + "stub_outs: [{id: so, place: stub, zone: z, coiled: [{run: r, length: 10 ft}]}]\n");
    // 5 % of 4 Ω less 0.16063 Ω leaves 0.03937 Ω: 7.64 ft of stranded 14 AWG
    assertEquals(7.64, feet(only(all, "r", "speaker.extend.5-percent.awg-14").value()), 0.01);
    assertFalse(has(all, "z", "speaker.loss"));
  }

  @Test
  void longRunsSayThatResistanceIsNotAll() {
    List<Assessment> all =
        speakers(
            run("a", "s14-2", "left", ", length: 50 ft")
                + run("b", "s14-2", "right", ", length: 51 ft"),
            zone("audio", "", "{run: a, impedance: 8 ohm}, {run: b, impedance: 8 ohm}"));
    assertFalse(assumed(only(all, "a", "speaker.loop")).contains("speaker.assume.inductance"));
    assertTrue(assumed(only(all, "b", "speaker.loop")).contains("speaker.assume.inductance"));
  }

  @Test
  void estimatedLengthMakesAGoodResultConditional() {
    List<Assessment> all =
        speakers(
            run("r", "s16-2", "left", ", length: 20 ft, length_by: estimate"),
            zone("audio", "", "{run: r, impedance: 8 ohm}"));
    assertEquals(Verdict.CONDITIONAL, only(all, "r", "speaker.share.5-percent").verdict());
  }

  @Test
  void resultSaysTheWeakerStandingOfLimitAndWire() {
    List<Assessment> all =
        speakers(
            run("r", "s16-2", "left", ", length: 20 ft"),
            zone("audio", "", "{run: r, impedance: 8 ohm}"));
    assertEquals(Standing.CONFIRMED, only(all, "r", "speaker.share.5-percent").source().standing());
    assertEquals(
        Standing.COMMON_PRACTICE, only(all, "r", "speaker.share.10-percent").source().standing());
  }

  @Test
  void runSharedByTwoZonesIsAssessedOnceAtItsWorst() {
    List<Assessment> all =
        speakers(
            run("r", "s16-2", "left", ", length: 20 ft"),
            """
            zones:
              - {id: z1, name: Music, kind: hi_fi, speakers: [{run: r, impedance: 8 ohm}]}
              - {id: z2, name: Film, kind: surround_primary, speakers: [{run: r, impedance: 6 ohm}]}
            """);
    // 20 ft · 0.008031 Ω/ft against 6 Ω
    assertEquals(2.68, percent(only(all, "r", "speaker.share.5-percent")), 0.005);
  }

  @Test
  void powerLostIsTheShareOfLoadAndWire() {
    // 0.8031/(8 + 0.8031)
    List<Assessment> all =
        speakers(
            run("r", "s16-2", "left", ", length: 100 ft"),
            zone("audio", "", "{run: r, impedance: 8 ohm}"));
    assertEquals(9.12, percent(only(all, "r", "speaker.power-lost")), 0.01);
  }

  @ParameterizedTest
  @CsvSource({
    // conductors there, speakers, whether the rest of them may be joined too
    "s16-8, '{run: r, impedance: 8 ohm, conductors_in_parallel: 2}', true",
    "s16-6, '{run: r, impedance: 8 ohm, conductors_in_parallel: 2}', false",
    "s16-6, '{run: r, impedance: 8 ohm, conductors_in_parallel: 2}, {run: r, impedance: 8 ohm, conductors_in_parallel: 2}', false",
    "s16-8, '{run: r, impedance: 8 ohm}, {run: r, impedance: 8 ohm}', true"
  })
  void conductorsAreJoinedOnlyWhereEnoughAreFree(String cable, String speakers, boolean free) {
    List<Assessment> all =
        speakers(run("r", cable, "left", ", length: 100 ft"), zone("audio", "", speakers));
    assertEquals(free, has(all, "r", "speaker.loop.doubled"));
  }

  @Test
  void fourJoinedConductorsHaveAQuarterOfTheLoop() {
    List<Assessment> all =
        speakers(
            run("r", "s16-8", "left", ", length: 100 ft"),
            zone("audio", "", "{run: r, impedance: 8 ohm, conductors_in_parallel: 2}"));
    Assessment doubled = only(all, "r", "speaker.loop.doubled");
    assertEquals(0.2008, ohms(doubled), 0.0001);
    assertEquals(
        4,
        doubled.assumptions().stream()
            .filter(p -> p.key().equals("wire.assume.joined"))
            .findFirst()
            .orElseThrow()
            .arguments()
            .get("count"));
  }

  @ParameterizedTest
  @CsvSource({"s16-8, true", "s16-6, false"})
  void joinedConductorsOfAConstantVoltageLineCount(String cable, boolean free) {
    List<Assessment> all =
        speakers(
            run("r", cable, "left", ", length: 100 ft"),
            zone(
                "landscape",
                ", line_voltage: 70.7 V",
                "{run: r, impedance: 8 ohm, power: 50 W, conductors_in_parallel: 2}"));
    assertEquals(0.4016, ohms(only(all, "r", "speaker.loop")), 0.0001);
    assertEquals(free, has(all, "r", "speaker.loop.doubled"));
  }

  @Test
  void limitThatIsJustReachedIsKept() {
    // 0.4 Ω measured against 8 Ω is 5 % to the last digit
    List<Assessment> all =
        speakers(
            run("r", "s16-2", "left", ", length: 50 ft"),
            zone("hi_fi", ", amplifier_damping: 100", "{run: r, impedance: 8 ohm}")
                + measured(0.4));
    assertEquals(Verdict.WITHIN, only(all, "r", "speaker.share.5-percent").verdict());
    // 8/(0.4 + 0.08) = 16.7
    assertEquals(16.7, factor(only(all, "r", "speaker.damping")), 0.05);
  }

  @Test
  void dampingThatIsJustReachedIsKept() {
    // 8/(0.3 + 8/400) = 25 to the last digit
    List<Assessment> all =
        speakers(
            run("r", "s16-2", "left", ""),
            zone("hi_fi", ", amplifier_damping: 400", "{run: r, impedance: 8 ohm}")
                + measured(0.3));
    assertEquals(Verdict.WITHIN, only(all, "r", "speaker.damping").verdict());
    assertFalse(has(all, "r", "speaker.longest.5-percent"), "the record has no length");
  }

  @Test
  void amplifierFiguresOfNothingCountAsNotRecorded() {
    List<Assessment> all =
        speakers(
            run("r", "s14-2", "left", ", length: 50 ft"),
            zone(
                "hi_fi",
                ", amplifier_damping: 0, amplifier_minimum: 0 ohm, line_voltage: 0 V",
                "{run: r, impedance: 8 ohm}"));
    assertEquals(List.of("speaker.missing.damping"), missing(only(all, "r", "speaker.damping")));
    assertTrue(assumed(only(all, "r", "speaker.load")).contains("speaker.assume.amplifier"));
    assertFalse(has(all, "z", "speaker.taps"));
  }

  @Test
  void impedanceOfNothingIsAskedFor() {
    List<Assessment> all =
        speakers(
            run("r", "s14-2", "left", ", length: 50 ft"),
            zone("audio", ", volume_control: knob", "{run: r, impedance: 0 ohm}"));
    assertEquals(List.of("speaker.missing.impedance"), missing(only(all, "r", "speaker.loss")));
    assertEquals(1, all.size());
  }

  @Test
  void tapOfNothingIsAskedFor() {
    List<Assessment> all =
        speakers(
            run("r", "s14-2", "left", ", length: 50 ft"),
            zone("audio", ", line_voltage: 100 V", "{run: r, impedance: 8 ohm, power: 0 W}"));
    assertEquals(List.of("speaker.missing.taps"), missing(only(all, "r", "speaker.loss")));
  }

  @Test
  void zoneWithoutSpeakersHasNothingToAssess() {
    assertEquals(List.of(), speakers(run("r", "cat6", "plate", ""), zone("audio", "", "")));
  }

  @Test
  void wireBeforeAVolumeControlMayUseUpTheLimitAlone() {
    List<Assessment> all =
        speakers(
            run("up", "s16-4", "knob", ", length: 200 ft")
                + between("down", "s16-2", "knob", "left", ", length: 20 ft"),
            zone("audio", ", volume_control: knob", "{run: down, impedance: 8 ohm}"));
    Assessment longest = only(all, "down", "speaker.longest.10-percent");
    assertEquals(0, feet(longest.limit()), 1e-9);
    assertEquals(-20, feet(longest.margin()), 1e-9);
  }

  @Test
  void worstOfSeveralWiresBeforeAVolumeControlCounts() {
    List<Assessment> all =
        speakers(
            run("up1", "s16-2", "knob", ", length: 20 ft")
                + run("up2", "s16-2", "knob", ", length: 30 ft")
                + run("up3", "s16-2", "knob", "damaged", ", length: 90 ft")
                + run("up4", "cat6", "knob", ", length: 90 ft")
                + between("down", "s16-2", "knob", "left", ", length: 20 ft"),
            zone("audio", ", volume_control: knob", "{run: down, impedance: 8 ohm}"));
    // 50 ft
    assertEquals(0.4016, ohms(only(all, "down", "speaker.loop")), 0.0001);
    assertTrue(has(all, "up1", "speaker.loop.8-ohm"), "the other wire is assessed by itself");
  }

  @Test
  void wireBeforeAVolumeControlWithoutALengthIsNamed() {
    List<Assessment> all =
        speakers(
            run("up", "s16-2", "knob", "")
                + between("down", "s16-2", "knob", "left", ", length: 20 ft"),
            zone("audio", ", volume_control: knob", "{run: down, impedance: 8 ohm}"));
    assertEquals(List.of("wire.missing.length"), missing(only(all, "down", "speaker.loss")));
  }

  @Test
  void damagedWireOfAnyKindInAZoneCarriesNothing() {
    List<Assessment> all =
        speakers(
            run("r", "s22-4", "left", "damaged", ", length: 20 ft"),
            zone("audio", "", "{run: r, impedance: 8 ohm}"));
    assertEquals(Verdict.BEYOND, only(all, "r", "speaker.loss").verdict());
  }

  @Test
  void otherCableAtASpeakersPlaceIsNotItsRun() {
    List<Assessment> all =
        speakers(
            run("r", "s16-2", "left", ", length: 20 ft") + run("n", "cat6", "left", ""),
            zone("audio", "", "{place: left, impedance: 8 ohm}"));
    assertTrue(has(all, "r", "speaker.loop"));
  }

  @Test
  void wireCoiledForAnotherZoneIsNotTaken() {
    List<Assessment> all =
        speakers(
            run("r", "s16-4", "stub", "dark", ", length: 20 ft"),
            """
            zones:
              - {id: z1, name: Garden, kind: landscape, speakers: [{impedance: 8 ohm}]}
              - {id: z2, name: Pool, kind: landscape, speakers: []}
            stub_outs: [{id: so, place: stub, zone: z2, coiled: [{run: r, length: 10 ft}]}]
            """);
    assertEquals(List.of("speaker.missing.run.one"), missing(only(all, "z1", "speaker.loss")));
  }

  @Test
  void zoneThatLacksAFigureSpeaksForASharedRun() {
    for (String zones :
        List.of(
            "[{id: z1, name: A, kind: audio, speakers: [{run: r, impedance: 8 ohm}]}, {id: z2, name: B, kind: audio, speakers: [{run: r, impedance: 0 ohm}]}]",
            "[{id: z2, name: B, kind: audio, speakers: [{run: r, impedance: 0 ohm}]}, {id: z1, name: A, kind: audio, speakers: [{run: r, impedance: 8 ohm}]}]")) {
      List<Assessment> all =
          speakers(run("r", "s16-2", "left", ", length: 20 ft"), "zones: " + zones + "\n");
      assertEquals(List.of("speaker.missing.impedance"), missing(only(all, "r", "speaker.loss")));
    }
  }

  @Test
  void coilInAWallAndAWireCoiledOutsideCanBeExtended() {
    String coiled =
        "stub_outs: [{id: so, place: stub, coiled: [{run: elsewhere, length: 10 ft}]}]\n";
    List<Assessment> all =
        speakers(
            run("elsewhere", "s16-2", "plate", "dark", ", length: 20 ft")
                + run("inwall", "s16-2", "coil", "dark", ", length: 20 ft"),
            coiled);
    assertTrue(has(all, "elsewhere", "speaker.extend.5-percent.awg-14.8-ohm"));
    assertTrue(has(all, "inwall", "speaker.extend.5-percent.awg-14.8-ohm"));
  }

  @Test
  void stubOutAtAPlaceOfAnotherKindCanBeExtended() {
    List<Assessment> all =
        speakers(
            run("r", "s16-2", "plate", "dark", ", length: 20 ft"),
            "stub_outs: [{id: so, place: plate}]\n");
    assertTrue(has(all, "r", "speaker.extend.5-percent.awg-14.8-ohm"));
  }

  @Test
  void joinedConductorsAreExtendedJoined() {
    // 40 ft of 16 AWG joined: 0.16063 Ω; 0.23937 Ω left: 2 · 46.5 ft of stranded 14 AWG
    List<Assessment> all = speakers(run("r", "s16-4", "stub", "dark", ", length: 40 ft"), "");
    assertEquals(
        92.9, feet(only(all, "r", "speaker.extend.5-percent.awg-14.8-ohm.doubled").value()), 0.05);
  }

  @Test
  void everyAnswerHasASubjectAndTopicOfItsOwn() {
    List<Assessment> all =
        speakers(
            run("up", "s16-4", "knob", ", length: 30 ft")
                + between("near", "s16-2", "knob", "left", ", length: 20 ft")
                + between("far", "s16-2", "knob", "right", ", length: 40 ft")
                + run("so", "s16-4", "stub", "dark", ", length: 20 ft"),
            zone(
                "audio",
                ", volume_control: knob",
                "{run: near, impedance: 8 ohm}, {run: far, impedance: 8 ohm}"));
    List<String> keys = all.stream().map(a -> a.subject() + " " + a.topic()).toList();
    assertEquals(keys.stream().distinct().toList(), keys);
  }
}
