package wallbook.assess.conduit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.quantity.Area;
import wallbook.quantity.Diameter;
import wallbook.record.Conduit;
import wallbook.record.ConduitType;
import wallbook.reference.Standing;
import wallbook.reference.Tables;

class BoresTest {
  /** Web copies of the table differ in the last digit of some areas. */
  private static final double TOLERANCE_SQ_IN = 0.002;

  private final Tables tables = new Tables();
  private final Bores bores = new Bores(tables);

  @ParameterizedTest
  @CsvFileSource(
      resources = "/wallbook/assess/conduit/nec-chapter-9-table-4.csv",
      numLinesToSkip = 2)
  void everyBoreGivesThePublishedAreas(
      String family, String size, double total, double overTwo, double one, double two) {
    Diameter bore = bores.diameter(type(family), size).orElseThrow();
    FillRule rule = FillRule.table1(tables);
    Area area = Fill.area(bore);
    assertEquals(total, area.inSquareInches(), TOLERANCE_SQ_IN);
    assertEquals(one, area.times(rule.limit(1).inFraction()).inSquareInches(), TOLERANCE_SQ_IN);
    assertEquals(two, area.times(rule.limit(2).inFraction()).inSquareInches(), TOLERANCE_SQ_IN);
    assertEquals(overTwo, area.times(rule.limit(3).inFraction()).inSquareInches(), TOLERANCE_SQ_IN);
  }

  /**
   * Pipe outside diameter less twice the least wall and half its tolerance, the greater of 0.020 in
   * and 12 % (ASTM D1785); walls of rigid metal conduit by ANSI C80.1.
   */
  @ParameterizedTest
  @CsvSource({
    "1/2,0.840,.109,.147,.104", "3/4,1.050,.113,.154,.107", "1,1.315,.133,.179,.126",
    "1-1/4,1.660,.140,.191,.133", "1-1/2,1.900,.145,.200,.138", "2,2.375,.154,.218,.146",
    "2-1/2,2.875,.203,.276,.193", "3,3.500,.216,.300,.205", "3-1/2,4.000,.226,.318,.215",
    "4,4.500,.237,.337,.225"
  })
  void plasticAndRigidBoresFollowFromPipeDimensions(
      String size, double outside, double wall40, double wall80, double wallRigid) {
    assertEquals(plastic(outside, wall40), inches(ConduitType.PVC_40, size), 0.0016);
    assertEquals(plastic(outside, wall80), inches(ConduitType.PVC_80, size), 0.0016);
    assertEquals(outside - 2 * wallRigid, inches(ConduitType.RMC, size), 0.0016);
  }

  private static double plastic(double outside, double wall) {
    return outside - 2 * (wall + Math.max(0.020, 0.12 * wall) / 2);
  }

  @ParameterizedTest
  @CsvSource({ // metric designators by trade size, a table of tubing dimensions
    "1/2,16",
    "3/4,21",
    "1,27",
    "1-1/4,35",
    "1-1/2,41",
    "2,53",
    "2-1/2,63",
    "3,78",
    "3-1/2,91",
    "4,103"
  })
  void aMetricDesignatorNamesTheSameBore(String size, String designator) {
    assertEquals(
        bores.diameter(ConduitType.EMT, size), bores.diameter(ConduitType.EMT, designator));
    assertTrue(bores.diameter(ConduitType.EMT, designator).isPresent());
  }

  @Test
  void theSameNumberIsAnotherBoreInAnotherFamily() {
    assertEquals(0.622, inches(ConduitType.EMT, "16"), 1e-9); // NEC chapter 9 table 4
    assertEquals(0.560, inches(ConduitType.ENT, "16"), 1e-9); // NEC chapter 9 table 4
    assertTrue(bores.diameter(ConduitType.IEC_PLIABLE, "16").isEmpty()); // IEC 61386-21 clause 8
  }

  @ParameterizedTest
  @CsvSource({"1 1/4", "1-1/4 in", "' 1-1/4\" '", "35 mm", "1-1/4 IN"})
  void aSizeIsReadHoweverItIsWritten(String written) {
    assertEquals(1.380, inches(ConduitType.EMT, written), 1e-9); // NEC chapter 9 table 4
  }

  @Test
  void tubingOfPlasticStopsAtTwoInches() {
    assertTrue(bores.diameter(ConduitType.ENT, "2").isPresent());
    assertTrue(bores.diameter(ConduitType.ENT, "2-1/2").isEmpty()); // NEC chapter 9 table 4
  }

  @Test
  void aDeclaredBoreGoesBeforeTheTable() {
    Bore declared = bores.of(ConduitHouse.ent1("bore: 0.95 in").conduit()).orElseThrow();
    assertEquals(0.95, declared.diameter().inInches(), 1e-9);
    assertTrue(declared.declared());
    Bore table = bores.of(ConduitHouse.ent1("").conduit()).orElseThrow();
    assertEquals(1.0, table.diameter().inInches(), 1e-9); // ENT 1, NEC chapter 9 table 4
    assertEquals(Standing.CONFIRMED, table.source().standing());
  }

  @Test
  void conduitByOutsideDiameterHasOnlyADeclaredBore() {
    assertTrue(bores.of(iec("iec_pliable", "")).isEmpty()); // IEC 61386-21 clause 8
    assertTrue(bores.of(iec("iec_rigid", "")).isEmpty());
    Bore declared = bores.of(iec("iec_pliable", ", bore: 18 mm")).orElseThrow();
    assertEquals(18, declared.diameter().inMillimetres(), 1e-9);
  }

  @Test
  void aBoreOfNothingIsNoBore() {
    Bore bore = bores.of(ConduitHouse.ent1("bore: 0 in").conduit()).orElseThrow();
    assertEquals(1.0, bore.diameter().inInches(), 1e-9); // the table's
  }

  @Test
  void whatIsTypicalIsOnlyShown() {
    // from memory: pliable 18.3 mm, rigid medium 21.4 mm
    assertEquals(18.3, typical(iec("iec_pliable", "")), 1e-9);
    assertEquals(21.4, typical(iec("iec_rigid", "")), 1e-9);
    assertTrue(bores.typical(ConduitHouse.ent1("").conduit()).isEmpty());
  }

  @Test
  void tradeSizesAreInches() {
    assertEquals(1.25, bores.tradeSize(ConduitType.EMT, "35").orElseThrow().inInches(), 1e-9);
    assertEquals(0.5, bores.tradeSize(ConduitType.EMT, "1/2").orElseThrow().inInches(), 1e-9);
    assertEquals(4, bores.tradeSize(ConduitType.EMT, "4").orElseThrow().inInches(), 1e-9);
    assertEquals(53, bores.designator(ConduitType.EMT, "2").orElseThrow());
  }

  private double typical(Conduit conduit) {
    return bores.typical(conduit).orElseThrow().inMillimetres();
  }

  private static Conduit iec(String type, String further) {
    return ConduitHouse.with(
            "type: " + type + ", trade_size: '25', pull_string: none, condition: clear" + further)
        .conduit();
  }

  private double inches(ConduitType family, String size) {
    return bores.diameter(family, size).orElseThrow().inInches();
  }

  static ConduitType type(String family) {
    return ConduitType.valueOf(family.toUpperCase(java.util.Locale.ROOT).replace('-', '_'));
  }
}
