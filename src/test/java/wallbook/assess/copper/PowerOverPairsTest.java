package wallbook.assess.copper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.Jobs;
import wallbook.assess.conductor.CopperConductors;
import wallbook.quantity.Length;
import wallbook.quantity.Power;
import wallbook.quantity.Resistance;
import wallbook.quantity.Temperature;
import wallbook.quantity.Voltage;
import wallbook.reference.Row;

class PowerOverPairsTest {

  /** IEEE 802.3-2022, class table: what the device may take; 0.1 W, for class 1 and 2 0.01 W. */
  @ParameterizedTest
  @CsvSource({
    "1, 3.84, 0.01",
    "2, 6.49, 0.01",
    "3, 12.95, 0.01",
    "4, 25.5, 0.01",
    "5, 40, 0.1",
    "6, 51, 0.01",
    "7, 62, 0.01",
    "8, 71.3, 0.05"
  })
  void theFormulaGivesThePublishedPowerOfEveryClass(
      String number, double expected, double tolerance) {
    Row row = Jobs.TABLES.table("power-classes").row(number);
    PowerClass powerClass = PowerClass.of(row);
    double computed =
        PowerOverPairs.fromSource(
                powerClass.source(), powerClass.voltage(), powerClass.greatestLoop())
            .orElseThrow()
            .atDevice()
            .inWatts();
    assertEquals(expected, computed, tolerance);
    assertEquals(expected, powerClass.device().inWatts(), 1e-9);
  }

  /** IEEE 802.3-2022: nominal currents 350 mA and 600 mA of Types 1 and 2. */
  @ParameterizedTest
  @CsvSource({"15.4, 44, 20, 0.350", "30, 50, 12.5, 0.600", "60, 50, 6.25, 1.2"})
  void theCurrentIsThePublishedOne(double watts, double volts, double ohms, double amperes) {
    assertEquals(
        amperes,
        PowerOverPairs.fromSource(Power.watts(watts), Voltage.volts(volts), Resistance.ohms(ohms))
            .orElseThrow()
            .current()
            .inAmperes(),
        0.0005);
  }

  /** Worked by hand: 60 m of 23 AWG (66.8 Ω/km), two pairs: R = 66.78e-3 x 60 = 4.007 Ω. */
  @ParameterizedTest
  @CsvSource({
    // °C, loop Ω, current A, loss W; α 0.00393: 45 °C is x 1.09825
    "20, 4.008, 0.5328, 1.138",
    "45, 4.402, 0.5352, 1.261"
  })
  void aSteadyDeviceDrawsMoreThroughALongerLoop(
      double celsius, double ohms, double amperes, double loss) {
    Resistance loop =
        new CopperConductors(Jobs.TABLES)
            .solid(23)
            .resistanceAt(Temperature.celsius(celsius))
            .over(Length.metres(60));
    assertEquals(ohms, loop.inOhms(), 0.002);
    PowerOverPairs power =
        PowerOverPairs.forDevice(Power.watts(25.5), Voltage.volts(50), loop).orElseThrow();
    assertEquals(amperes, power.current().inAmperes(), 0.0003);
    assertEquals(loss, power.loss().inWatts(), 0.002);
    assertEquals(25.5, power.atDevice().inWatts(), 1e-9);
  }

  /** Worked by hand: 100 m at 9.38 Ω/100 m, four pairs: 4.690 Ω, 1.603 A, 12.05 W lost. */
  @Test
  void theHighestClassLosesTwelveWattsOnTheLongestCable() {
    PowerOverPairs power =
        PowerOverPairs.forDevice(Power.watts(71.3), Voltage.volts(52), Resistance.ohms(4.690))
            .orElseThrow();
    assertEquals(1.603, power.current().inAmperes(), 0.001);
    assertEquals(12.05, power.loss().inWatts(), 0.01);
    assertEquals(52 - 1.603 * 4.690, power.voltageAtDevice().inVolts(), 0.005);
  }

  @Test
  void noMorePassesThanAQuarterOfTheSquareOfTheVoltageOverTheResistance() {
    // 48 V, 10 Ω: 48² / 40 = 57.6 W
    Voltage volts = Voltage.volts(48);
    Resistance loop = Resistance.ohms(10);
    assertTrue(PowerOverPairs.forDevice(Power.watts(57.6), volts, loop).isPresent());
    assertTrue(PowerOverPairs.forDevice(Power.watts(57.61), volts, loop).isEmpty());
  }

  @Test
  void aSourceThatLosesMoreThanHalfItsVoltageDeliversNothing() {
    // 48 W at 48 V is 1 A: 24 Ω leaves half the voltage, more leaves less
    Power power = Power.watts(48);
    Voltage volts = Voltage.volts(48);
    assertTrue(PowerOverPairs.fromSource(power, volts, Resistance.ohms(24)).isPresent());
    assertTrue(PowerOverPairs.fromSource(power, volts, Resistance.ohms(24.01)).isEmpty());
  }

  @Test
  void aLoopWithoutResistanceLosesNothing() {
    PowerOverPairs power =
        PowerOverPairs.forDevice(Power.watts(30), Voltage.volts(50), Resistance.ohms(0))
            .orElseThrow();
    assertEquals(30, power.atSource().inWatts(), 1e-9);
    assertEquals(0.6, power.current().inAmperes(), 1e-9);
  }

  @Test
  void twoPairsHalveTheLoopAndFourQuarterIt() {
    // ANSI/TIA-568.2-D channel loop 25 Ω: 12.5 and 6.25 Ω are the pair sets of IEEE 802.3
    assertEquals(12.5, powerClass("4").loopOf(Resistance.ohms(25)).inOhms(), 1e-9);
    assertEquals(6.25, powerClass("8").loopOf(Resistance.ohms(25)).inOhms(), 1e-9);
  }

  @Test
  void whatMustArriveIsTheSmallerOfPublishedAndComputed() {
    // 45 W at 50 V over 6.25 Ω: 45 − 0.81 x 6.25 = 39.9375 W, published as 40 W
    assertEquals(39.9375, powerClass("5").required().inWatts(), 1e-9);
    assertEquals(6.49, powerClass("2").required().inWatts(), 1e-9); // 6.494 W computed
  }

  private static PowerClass powerClass(String number) {
    return PowerClass.of(Jobs.TABLES.table("power-classes").row(number));
  }

  @Property
  void moreResistanceNeverDeliversMore(
      @ForAll @DoubleRange(min = 0, max = 20) double ohms,
      @ForAll @DoubleRange(min = 0.01, max = 5) double more) {
    PowerOverPairs near =
        PowerOverPairs.fromSource(Power.watts(30), Voltage.volts(50), Resistance.ohms(ohms))
            .orElseThrow();
    PowerOverPairs far =
        PowerOverPairs.fromSource(Power.watts(30), Voltage.volts(50), Resistance.ohms(ohms + more))
            .orElseThrow();
    assertTrue(far.atDevice().compareTo(near.atDevice()) < 0);
  }

  @Property
  void theTwoFormulasAreEachOthersReverse(
      @ForAll @DoubleRange(min = 1, max = 60) double watts,
      @ForAll @DoubleRange(min = 0, max = 8) double ohms) {
    Voltage volts = Voltage.volts(50);
    Resistance loop = Resistance.ohms(ohms);
    PowerOverPairs sent = PowerOverPairs.fromSource(Power.watts(watts), volts, loop).orElseThrow();
    PowerOverPairs asked = PowerOverPairs.forDevice(sent.atDevice(), volts, loop).orElseThrow();
    assertEquals(watts, asked.atSource().inWatts(), 1e-6);
  }
}
