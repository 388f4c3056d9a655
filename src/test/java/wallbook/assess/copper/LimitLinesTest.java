package wallbook.assess.copper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import wallbook.Jobs;
import wallbook.quantity.Decibels;
import wallbook.quantity.Frequency;
import wallbook.record.LinkConfiguration;
import wallbook.record.PairCategory;
import wallbook.record.PairParameter;
import wallbook.record.TestStandard;
import wallbook.reference.Standing;

class LimitLinesTest {
  private final LimitLines lines = new LimitLines(Jobs.TABLES);

  private LimitLine tia(PairCategory category, LinkConfiguration link, PairParameter parameter) {
    return lines.line(TestStandard.TIA_568_2_D, category, link, parameter).orElseThrow();
  }

  private static double at(LimitLine line, double megahertz) {
    return line.at(Frequency.megahertz(megahertz)).orElseThrow().value().inDecibels();
  }

  /** Appendix of limits in a field-instrument manual, return loss, Category 6 (draft 9). */
  @ParameterizedTest
  @CsvSource({
    // MHz, permanent link dB, channel dB; tolerance 0.1 dB: 16.04 computed against 16.1 printed
    "1, 19.10, 19.00",
    "4, 21.00, 19.00",
    "16, 20.00, 18.00",
    "20, 19.50, 17.50",
    "25, 19.00, 17.00",
    "31.25, 18.50, 16.50",
    "62.5, 16.10, 14.10",
    "100, 14.00, 12.00",
    "250, 10.00, 8.00"
  })
  void categorySixReturnLossAgreesWithAnInstrumentManual(
      double megahertz, double link, double channel) {
    assertEquals(link, at(returnLoss(LinkConfiguration.PERMANENT_LINK), megahertz), 0.1);
    assertEquals(channel, at(returnLoss(LinkConfiguration.CHANNEL), megahertz), 0.1);
  }

  private LimitLine returnLoss(LinkConfiguration link) {
    return tia(PairCategory.CAT6, link, PairParameter.RETURN_LOSS);
  }

  /** The same appendix, return loss, Category 5e channel. */
  @ParameterizedTest
  @CsvSource({"1, 17.00", "20, 17.00", "25, 16.03", "31.25, 15.06", "62.5, 12.05", "100, 10.01"})
  void categoryFiveEReturnLossOfTheChannelAgreesWithAnInstrumentManual(
      double megahertz, double expected) {
    LimitLine line = tia(PairCategory.CAT5E, LinkConfiguration.CHANNEL, PairParameter.RETURN_LOSS);
    assertEquals(expected, at(line, megahertz), 0.02); // two decimals printed
  }

  /**
   * TSB-67, near-end crosstalk of Category 5, which the power sum of Category 5e took over; that it
   * did is from memory. The table stops at 60 dB where the power sum stops at 57, so 1 MHz is out.
   */
  @ParameterizedTest
  @CsvSource({
    // MHz, link dB, channel dB; tolerance 0.1 dB
    "4, 51.8, 50.6",
    "8, 47.1, 45.6",
    "10, 45.5, 44.0",
    "16, 42.3, 40.6",
    "20, 40.7, 39.0",
    "25, 39.1, 37.4",
    "31.25, 37.6, 35.7",
    "62.5, 32.7, 30.6",
    "100, 29.3, 27.1"
  })
  void categoryFiveEPowerSumCrosstalkAgreesWithTheOldTable(
      double megahertz, double link, double channel) {
    assertEquals(link, at(powerSum(LinkConfiguration.PERMANENT_LINK), megahertz), 0.1);
    assertEquals(channel, at(powerSum(LinkConfiguration.CHANNEL), megahertz), 0.1);
  }

  private LimitLine powerSum(LinkConfiguration link) {
    return tia(PairCategory.CAT5E, link, PairParameter.PSNEXT);
  }

  /** A handbook comparison of the channels of Category 5e and 6 at 100 MHz. */
  @ParameterizedTest
  @CsvSource({
    "CAT5E, INSERTION_LOSS, 24.0",
    "CAT6, INSERTION_LOSS, 21.3",
    "CAT5E, NEXT, 30.1",
    "CAT6, NEXT, 39.9",
    "CAT5E, ACRF, 17.4",
    "CAT6, ACRF, 23.3",
    "CAT5E, RETURN_LOSS, 10.0",
    "CAT6, RETURN_LOSS, 12.0"
  })
  void channelsAt100MegahertzAgreeWithAHandbook(
      PairCategory category, PairParameter parameter, double expected) {
    LimitLine line = tia(category, LinkConfiguration.CHANNEL, parameter);
    assertEquals(expected, at(line, 100), 0.05); // one decimal printed
  }

  /**
   * Weak: figures of the standard's tables as remembered, against formulas that are remembered too.
   * They guard against slips, and prove nothing about the standard.
   */
  @ParameterizedTest
  @CsvSource({
    // dB, tolerance 0.1
    "CAT5E, PERMANENT_LINK, INSERTION_LOSS, 100, 21.0",
    "CAT6, PERMANENT_LINK, INSERTION_LOSS, 100, 18.6",
    "CAT6, PERMANENT_LINK, INSERTION_LOSS, 200, 27.4",
    "CAT6, PERMANENT_LINK, INSERTION_LOSS, 250, 31.1",
    "CAT6, CHANNEL, INSERTION_LOSS, 10, 6.3",
    "CAT6, CHANNEL, INSERTION_LOSS, 31.25, 11.4",
    "CAT6, CHANNEL, INSERTION_LOSS, 200, 31.5",
    "CAT6, CHANNEL, INSERTION_LOSS, 250, 35.9",
    "CAT6A, PERMANENT_LINK, INSERTION_LOSS, 100, 18.0",
    "CAT6A, PERMANENT_LINK, INSERTION_LOSS, 500, 43.8",
    "CAT6A, CHANNEL, INSERTION_LOSS, 100, 20.9",
    "CAT6A, CHANNEL, INSERTION_LOSS, 250, 33.9",
    "CAT6A, CHANNEL, INSERTION_LOSS, 500, 49.3",
    "CAT5E, PERMANENT_LINK, NEXT, 100, 32.3",
    "CAT6, PERMANENT_LINK, NEXT, 100, 41.8",
    "CAT6, PERMANENT_LINK, NEXT, 250, 35.3",
    "CAT6, CHANNEL, NEXT, 4, 63.0",
    "CAT6, CHANNEL, NEXT, 10, 56.6",
    "CAT6, CHANNEL, NEXT, 62.5, 43.4",
    "CAT6, CHANNEL, NEXT, 250, 33.1",
    "CAT6A, PERMANENT_LINK, NEXT, 500, 26.7",
    "CAT6A, CHANNEL, NEXT, 500, 26.1",
    "CAT6A, PERMANENT_LINK, PSNEXT, 500, 23.8",
    "CAT6A, CHANNEL, PSNEXT, 500, 23.2",
    "CAT6, CHANNEL, PSNEXT, 100, 37.1",
    "CAT6, CHANNEL, PSNEXT, 250, 30.2",
    "CAT6, PERMANENT_LINK, PSNEXT, 100, 39.3",
    "CAT5E, PERMANENT_LINK, ACRF, 100, 18.6",
    "CAT6, PERMANENT_LINK, ACRF, 100, 24.2",
    "CAT6, CHANNEL, ACRF, 250, 15.3",
    "CAT6A, CHANNEL, ACRF, 500, 9.3",
    "CAT5E, CHANNEL, PSACRF, 100, 14.4",
    "CAT6, CHANNEL, PSACRF, 100, 20.3",
    "CAT6A, PERMANENT_LINK, PSACRF, 500, 7.2",
    "CAT5E, PERMANENT_LINK, RETURN_LOSS, 100, 12.0",
    "CAT6A, CHANNEL, RETURN_LOSS, 500, 6.0",
    "CAT6A, PERMANENT_LINK, RETURN_LOSS, 500, 8.0"
  })
  void limitsAgreeWithRememberedTables(
      PairCategory category,
      LinkConfiguration link,
      PairParameter parameter,
      double megahertz,
      double expected) {
    assertEquals(expected, at(tia(category, link, parameter), megahertz), 0.1);
  }

  /** Weak: ISO/IEC 11801-1 as remembered, formula worked by hand from its remembered terms. */
  @ParameterizedTest
  @CsvSource({
    // class E channel at 100 MHz: 1.05 x (18.2 + 1.69 + 0.025) + 0.8 = 21.71
    "CAT6, CHANNEL, 100, 21.7",
    "CAT6, CHANNEL, 250, 35.9",
    "CAT6, PERMANENT_LINK, 100, 18.5",
    "CAT5E, CHANNEL, 100, 24.0",
    "CAT5E, PERMANENT_LINK, 100, 20.4",
    // class EA link at 500 MHz: 0.9 x (40.70 + 4.55 + 0.01) + 1.34 = 42.07
    "CAT6A, PERMANENT_LINK, 500, 42.1"
  })
  void insertionLossOfTheOtherStandardAgreesWithRememberedTables(
      PairCategory category, LinkConfiguration link, double megahertz, double expected) {
    LimitLine line =
        lines
            .line(TestStandard.ISO_11801_1, category, link, PairParameter.INSERTION_LOSS)
            .orElseThrow();
    assertEquals(expected, at(line, megahertz), 0.1);
  }

  @ParameterizedTest
  @CsvSource({"TIA_568_2_D, 3", "ISO_11801_1, 4"})
  void insertionLossHasAFloorThatDependsOnTheStandard(TestStandard standard, double floor) {
    LimitLine line =
        lines
            .line(
                standard,
                PairCategory.CAT6,
                LinkConfiguration.CHANNEL,
                PairParameter.INSERTION_LOSS)
            .orElseThrow();
    assertEquals(floor, at(line, 1)); // 2.1 dB by the formula alone
    assertTrue(at(line, 10) > 6);
  }

  @ParameterizedTest
  @CsvSource({"CAT5E, NEXT, 60", "CAT6, NEXT, 65", "CAT5E, PSNEXT, 57", "CAT6A, PSNEXT, 62"})
  void crosstalkHasACapAtLowFrequency(PairCategory category, PairParameter parameter, double cap) {
    assertEquals(cap, at(tia(category, LinkConfiguration.CHANNEL, parameter), 1));
  }

  @Test
  void farEndCrosstalkHasNoCap() {
    // 20 dB a decade: 63.3 dB at 1 MHz is 23.3 dB at 100 MHz, the handbook's figure, and 40 dB
    LimitLine line = tia(PairCategory.CAT6, LinkConfiguration.CHANNEL, PairParameter.ACRF);
    assertEquals(63.3, at(line, 1), 0.05);
  }

  @ParameterizedTest
  @CsvSource({"CAT5E, 100", "CAT6, 250", "CAT6A, 500"})
  void aLineEndsWhereItsCategoryEnds(PairCategory category, double top) {
    for (LinkConfiguration link : LinkConfiguration.values()) {
      for (PairParameter parameter : swept()) {
        LimitLine line = tia(category, link, parameter);
        assertTrue(line.at(Frequency.megahertz(top)).isPresent(), parameter + " at the top");
        assertTrue(line.at(Frequency.megahertz(top + 0.01)).isEmpty(), parameter + " above");
        assertTrue(line.at(Frequency.megahertz(1)).isPresent(), parameter + " at the bottom");
        assertTrue(line.at(Frequency.megahertz(0.99)).isEmpty(), parameter + " below");
        assertEquals(Frequency.megahertz(top), line.top());
        assertEquals(Frequency.megahertz(1), line.bottom());
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "NEXT, PERMANENT_LINK, 300",
    "NEXT, CHANNEL, 330",
    "PSNEXT, PERMANENT_LINK, 300",
    "PSNEXT, CHANNEL, 330",
    "RETURN_LOSS, CHANNEL, 398.1",
    "RETURN_LOSS, PERMANENT_LINK, 398.1",
    "RETURN_LOSS, CHANNEL, 10",
    "RETURN_LOSS, CHANNEL, 40",
    "RETURN_LOSS, PERMANENT_LINK, 3"
  })
  void piecesMeetWithoutAStep(PairParameter parameter, LinkConfiguration link, double joint) {
    LimitLine line = tia(PairCategory.CAT6A, link, parameter);
    assertEquals(at(line, joint), at(line, joint + 0.0001), 0.06); // coefficients have a decimal
  }

  @Test
  void theUnconfirmedHalfOfTheReturnLossLinesSaysSo() {
    assertEquals(
        Standing.CONFIRMED,
        tia(PairCategory.CAT6, LinkConfiguration.CHANNEL, PairParameter.RETURN_LOSS)
            .source()
            .standing());
    assertEquals(
        Standing.FROM_MEMORY,
        tia(PairCategory.CAT5E, LinkConfiguration.PERMANENT_LINK, PairParameter.RETURN_LOSS)
            .source()
            .standing());
  }

  @Test
  void theOtherStandardHasOnlyInsertionLoss() {
    assertTrue(
        lines
            .line(
                TestStandard.ISO_11801_1,
                PairCategory.CAT6,
                LinkConfiguration.CHANNEL,
                PairParameter.NEXT)
            .isEmpty());
  }

  @Test
  void lossCountsDownFromItsLimitAndCrosstalkUp() {
    LimitLine loss =
        tia(PairCategory.CAT6, LinkConfiguration.CHANNEL, PairParameter.INSERTION_LOSS);
    LimitLine next = tia(PairCategory.CAT6, LinkConfiguration.CHANNEL, PairParameter.NEXT);
    Limit limit = new Limit(Decibels.decibels(20), loss.source());
    assertEquals(Decibels.decibels(5), loss.margin(limit, Decibels.decibels(15)));
    assertEquals(Decibels.decibels(-5), next.margin(limit, Decibels.decibels(15)));
  }

  @Property
  void lossLimitsRiseAndTheOthersFallWithFrequency(
      @ForAll PairCategory category,
      @ForAll LinkConfiguration link,
      @ForAll @DoubleRange(min = 3, max = 99) double megahertz) {
    for (PairParameter parameter : swept()) {
      LimitLine line = tia(category, link, parameter);
      double lower = at(line, megahertz);
      double higher = at(line, megahertz + 1);
      assertTrue(
          parameter == PairParameter.INSERTION_LOSS ? higher >= lower : higher <= lower + 1e-9,
          parameter + " " + megahertz);
    }
  }

  @Property
  void aLinkIsHeldToTighterLimitsThanAChannel(
      @ForAll PairCategory category, @ForAll @DoubleRange(min = 1, max = 100) double megahertz) {
    for (PairParameter parameter : swept()) {
      double link = at(tia(category, LinkConfiguration.PERMANENT_LINK, parameter), megahertz);
      double channel = at(tia(category, LinkConfiguration.CHANNEL, parameter), megahertz);
      assertTrue(
          parameter == PairParameter.INSERTION_LOSS ? link <= channel : link >= channel,
          parameter + " " + megahertz);
    }
  }

  @ParameterizedTest
  @EnumSource(LinkConfiguration.class)
  void higherCategoriesAllowLessCrosstalk(LinkConfiguration link) {
    double five = at(tia(PairCategory.CAT5E, link, PairParameter.NEXT), 100);
    double six = at(tia(PairCategory.CAT6, link, PairParameter.NEXT), 100);
    assertTrue(six > five + 9);
  }

  private static PairParameter[] swept() {
    return new PairParameter[] {
      PairParameter.INSERTION_LOSS,
      PairParameter.NEXT,
      PairParameter.PSNEXT,
      PairParameter.ACRF,
      PairParameter.PSACRF,
      PairParameter.RETURN_LOSS
    };
  }
}
