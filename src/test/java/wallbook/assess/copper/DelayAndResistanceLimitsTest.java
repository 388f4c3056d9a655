package wallbook.assess.copper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.Jobs;
import wallbook.quantity.Delay;
import wallbook.quantity.Frequency;
import wallbook.quantity.Length;
import wallbook.quantity.Ratio;
import wallbook.quantity.Resistance;
import wallbook.record.LinkConfiguration;

class DelayAndResistanceLimitsTest {
  private final DelayLimits delays = new DelayLimits(Jobs.TABLES);
  private final ResistanceLimits resistances = new ResistanceLimits(Jobs.TABLES);

  /** Weak: the standard's table of delay as remembered; 1 ns printed. */
  @ParameterizedTest
  @CsvSource({
    "CHANNEL, 1, 580",
    "CHANNEL, 10, 555",
    "CHANNEL, 100, 548",
    "CHANNEL, 250, 546",
    "PERMANENT_LINK, 1, 520.5",
    "PERMANENT_LINK, 10, 498",
    "PERMANENT_LINK, 100, 491"
  })
  void delayAgreesWithTheRememberedTable(
      LinkConfiguration link, double megahertz, double nanoseconds) {
    assertEquals(
        nanoseconds,
        delays.delay(link, Frequency.megahertz(megahertz)).inNanoseconds(),
        0.6); // half of the printed nanosecond
  }

  @Test
  void aSingleFigureOfDelayIsJudgedAt10Megahertz() {
    assertEquals(
        delays.delay(LinkConfiguration.CHANNEL, Frequency.megahertz(10)),
        delays.delay(LinkConfiguration.CHANNEL));
  }

  /** Weak: skew and loop resistance of the standard as remembered. */
  @ParameterizedTest
  @CsvSource({"CHANNEL, 50, 25", "PERMANENT_LINK, 44, 21"})
  void skewAndLoopAgreeWithTheRememberedStandard(
      LinkConfiguration link, double nanoseconds, double ohms) {
    assertEquals(nanoseconds, delays.skew(link).inNanoseconds(), 1e-9);
    assertEquals(ohms, resistances.loop(link).inOhms(), 1e-9);
  }

  /** The greater of 3 % of the loop and 0.2 Ω (channel) or 0.15 Ω (link): 3 % x 21 Ω = 0.63 Ω. */
  @ParameterizedTest
  @CsvSource({
    "PERMANENT_LINK, 21, 0.63",
    "PERMANENT_LINK, 4, 0.15",
    "PERMANENT_LINK, 5, 0.15",
    "PERMANENT_LINK, 6, 0.18",
    "CHANNEL, 6, 0.2",
    "CHANNEL, 10, 0.3"
  })
  void unbalanceIsTheGreaterOfShareAndOhms(LinkConfiguration link, double loop, double expected) {
    assertEquals(expected, resistances.unbalance(link, Resistance.ohms(loop)).inOhms(), 1e-9);
  }

  @Test
  void lengthFollowsFromDelayAndVelocity() {
    // echo after 400 ns, 200 ns one way: 0.69 x 0.299792458 m/ns x 200 ns = 41.37 m
    assertEquals(
        41.37, Velocity.lengthOf(Delay.nanoseconds(200), Ratio.percent(69)).inMetres(), 0.005);
  }

  @Test
  void velocityFollowsFromLengthAndDelay() {
    // light needs 333.56 ns for 100 m; twice the time is half the velocity
    assertEquals(
        0.5, Velocity.of(Length.metres(100), Delay.nanoseconds(667.13)).inFraction(), 1e-4);
  }
}
