package wallbook.assess.conduit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.record.Cable;
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
    // TIA-568.0: 25 lbf, 110 N
    assertEquals(25, tension("medium: balanced_pair, pairs: 4"), 1e-9);
    assertTrue(limit("medium: balanced_pair, pairs: 25").isEmpty());
  }

  @Test
  void aDescribedLimitGoesBeforeAllOthers() {
    assertEquals(18, tension("medium: balanced_pair, pairs: 4, maximum_tension: 18 lbf"), 1e-9);
  }

  @Test
  void speakerCableIsHeldByItsCopper() {
    // 0.008 × 2581 × 4
    assertEquals(82.6, tension("medium: speaker, gauge: 16, conductors: 4"), 0.1);
    assertTrue(limit("medium: speaker, conductors: 4").isEmpty());
    assertTrue(limit("medium: speaker, gauge: 16").isEmpty());
  }

  @Test
  void fibreAndCoaxWithoutADescriptionHaveNone() {
    assertTrue(limit("medium: fibre, fibre_class: om3, fibres: 2").isEmpty());
    assertTrue(limit("medium: coax, coax: series_6").isEmpty());
  }

  private double tension(String cable) {
    return limit(cable).orElseThrow().tension().inPoundsForce();
  }

  private Optional<PullLimits.Limit> limit(String fields) {
    Cable cable = ConduitHouse.cableOf(fields);
    return limits.of(cable);
  }
}
