package wallbook.assess.conduit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.record.Medium;
import wallbook.reference.Tables;

class PullLimitsTest {
  private final PullLimits limits = new PullLimits(new Tables());

  @ParameterizedTest
  @CsvSource({ // 0.008 lbf × circular mils × conductors; 6 AWG as tabled in UFC 3-535-01 table 12-4
    "6,2,420,0.5",
    "6,3,630,0.5",
    "6,4,840,0.5",
    "22,2,10.3,0.05",
    "22,4,20.6,0.05",
    "16,2,41.3,0.05",
    "16,4,82.6,0.1",
    "14,2,65.7,0.05",
    "14,4,131,0.5"
  })
  void copperBearsItsCircularMils(int awg, int conductors, double lbf, double tolerance) {
    assertEquals(lbf, limits.byCopper(awg, conductors).tension().inPoundsForce(), tolerance);
  }

  @Test
  void fourPairsOf24AwgExplainTheLimitOfTheStandard() {
    // 0.008 × 404 × 8 = 25.86 lbf, TIA-568.0 says 25
    assertEquals(25.86, limits.byCopper(24, 8).tension().inPoundsForce(), 0.02);
  }

  @Test
  void fourPairsTakeTheStandardsLimit() {
    PullLimits.Limit limit = limits.of(Jobs.cable("cat6", 0.25).build()).orElseThrow();
    assertEquals(25, limit.tension().inPoundsForce(), 1e-9); // TIA-568.0: 25 lbf, 110 N
    assertEquals(110, limit.tension().inNewtons(), 1.5);
    assertTrue(limits.of(Jobs.cable("cat6", 0.25).pairs(25).build()).isEmpty());
  }

  @Test
  void aDescribedLimitGoesBeforeAllOthers() {
    PullLimits.Limit limit = limits.of(Jobs.cable("cat6", 0.25).tension(18).build()).orElseThrow();
    assertEquals(18, limit.tension().inPoundsForce(), 1e-9);
  }

  @Test
  void speakerCableIsHeldByItsCopper() {
    PullLimits.Limit limit =
        limits.of(Jobs.cable("speaker", 0.34).conductors(16, 4).build()).orElseThrow();
    assertEquals(82.6, limit.tension().inPoundsForce(), 0.1); // 0.008 × 2581 × 4
    assertTrue(limits.of(Jobs.cable("speaker", 0.34).medium(Medium.SPEAKER).build()).isEmpty());
  }

  @Test
  void fibreAndCoaxWithoutADescriptionHaveNone() {
    assertTrue(limits.of(Jobs.cable("fibre", 0.22).fibres(2).build()).isEmpty());
    assertTrue(limits.of(Jobs.cable("coax", 0.28).medium(Medium.COAX).build()).isEmpty());
  }
}
