package wallbook.assess.speaker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.quantity.Power;
import wallbook.quantity.Resistance;
import wallbook.quantity.Voltage;

class SpeakerLoadsTest {

  @ParameterizedTest
  @CsvSource({"1, 8, 8", "2, 8, 4", "3, 8, 2.67", "2, 4, 2", "4, 8, 2"})
  void equalSpeakersInParallelAgreeWithTheAmplifiersManual(int count, double each, double ohms) {
    List<Resistance> loads = Collections.nCopies(count, Resistance.ohms(each));
    assertEquals(ohms, SpeakerLoads.parallel(loads).inOhms(), 0.004); // 8/3 printed as 2.67
  }

  @Test
  void unequalSpeakersInParallelFollowTheFormula() {
    // 1/(1/8 + 1/4) = 2.667
    assertEquals(
        2.667,
        SpeakerLoads.parallel(List.of(Resistance.ohms(8), Resistance.ohms(4))).inOhms(),
        0.0005);
  }

  @Test
  void speakersInSeriesAdd() {
    assertEquals(
        12, SpeakerLoads.series(List.of(Resistance.ohms(8), Resistance.ohms(4))).inOhms(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource({"70.7, 100, 49.98", "100, 100, 100", "25, 100, 6.25"}) // V²/P
  void constantVoltageLineIsALoadOfItsTaps(double volts, double watts, double ohms) {
    assertEquals(
        ohms,
        SpeakerLoads.onConstantVoltage(Voltage.volts(volts), Power.watts(watts)).inOhms(),
        0.006);
  }

  @Test
  void nothingIsNoLoad() {
    List<Resistance> none = List.of();
    List<Resistance> zero = List.of(Resistance.ohms(0));
    assertThrows(IllegalArgumentException.class, () -> SpeakerLoads.parallel(none));
    assertThrows(IllegalArgumentException.class, () -> SpeakerLoads.series(none));
    assertThrows(IllegalArgumentException.class, () -> SpeakerLoads.parallel(zero));
    assertThrows(IllegalArgumentException.class, () -> SpeakerLoads.series(zero));
  }

  @Property
  void anotherSpeakerInParallelAlwaysLowersTheLoad(
      @ForAll @IntRange(min = 1, max = 12) int count,
      @ForAll @DoubleRange(min = 1, max = 100) double ohms) {
    Resistance one = Resistance.ohms(ohms);
    assertTrue(
        SpeakerLoads.parallel(Collections.nCopies(count + 1, one))
                .compareTo(SpeakerLoads.parallel(Collections.nCopies(count, one)))
            < 0);
  }
}
