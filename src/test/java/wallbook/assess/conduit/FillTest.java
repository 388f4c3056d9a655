package wallbook.assess.conduit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.quantity.Diameter;
import wallbook.reference.Tables;

/** Expected figures: NEC chapter 9 tables 1 and 4, or the arithmetic beside them. */
class FillTest {
  private final Tables tables = new Tables();
  private final FillRule table1 = FillRule.table1(tables);
  private final FillRule flat = FillRule.flat(tables);
  private final Bores bores = new Bores(tables);

  @ParameterizedTest
  @CsvSource({ // NEC chapter 9 table 1: one 53 %, two 31 %, over two 40 %
    "1,53", "2,31", "3,40", "4,40", "120,40"
  })
  void theShareAllowedFollowsTheNumberOfCables(int cables, double percent) {
    assertEquals(percent, table1.limit(cables).inPercent(), 1e-9);
    assertEquals(40, flat.limit(cables).inPercent(), 1e-9); // TIA-569 design practice
  }

  @Test
  void aNippleMayBeFilledToSixtyPerCent() {
    // NEC chapter 9 table 1 note 4; 0.60 · π/4 · 2.067² = 2.013 sq in
    double allowed =
        FillRule.nipple(tables).limit(7).inFraction()
            * Fill.area(Diameter.inches(2.067)).inSquareInches();
    assertEquals(2.013, allowed, 0.001);
    assertEquals(24, FillRule.longestNipple(tables).inInches(), 1e-9);
  }

  @Test
  void thereIsNoLimitForNoCables() {
    assertThrows(IllegalArgumentException.class, () -> table1.limit(0));
  }

  @Test
  void theTubingChosenByAnElectricalSteelInstituteIsTheSmallestThatKeepsTheRule() {
    // its example: 3 × 0.0133 + 4 × 0.0211 + 8 × 0.0366 = 0.4171 sq in; 1 in (0.346) is too small,
    // 1-1/4 in (0.598) is chosen
    List<Diameter> wires = new ArrayList<>();
    wires.addAll(Collections.nCopies(3, ofArea(0.0133)));
    wires.addAll(Collections.nCopies(4, ofArea(0.0211)));
    wires.addAll(Collections.nCopies(8, ofArea(0.0366)));
    double area = wires.stream().mapToDouble(d -> Fill.area(d).inSquareInches()).sum();
    assertEquals(0.4171, area, 0.00005);
    assertFalse(Fill.keeps(wires, emt("1"), table1));
    assertTrue(Fill.keeps(wires, emt("1-1/4"), table1));
  }

  @ParameterizedTest
  @CsvSource({ // k = ⌊0.40·D²/d²⌋ and the share they fill, k·d²/D²
    "EMT,1,0.25,7,39.76",
    "ENT,3/4,0.25,3,32.46",
    "ENT,1,0.25,6,37.5",
    "EMT,2,0.25,27,39.5",
    "EMT,4,0.25,120,39.93",
    "EMT,3/4,0.30,3,39.77",
    "PVC_40,1-1/2,0.30,11,39.16",
    "PVC_40,2,0.30,18,38.66",
    "EMT,3,0.30,50,39.95",
    "EMT,1,0.30,4,32.7"
  })
  void asManyFitAsTheShareAllowsRoundedDown(
      wallbook.record.ConduitType family, String size, double inches, int most, double percent) {
    Diameter bore = bores.diameter(family, size).orElseThrow();
    Diameter cable = Diameter.inches(inches);
    assertEquals(most, Fill.more(List.of(), cable, bore, flat));
    assertEquals(most, Fill.more(List.of(), cable, bore, table1));
    assertEquals(percent, Fill.of(Collections.nCopies(most, cable), bore).inPercent(), 0.05);
  }

  @Test
  void fiveMoreFitBesideThree() {
    // 1-1/4 ENT: used 0.1597, allowed 0.40·1.410 = 0.5641, each 0.0707: 5.72 → 5; 36.39 %
    List<Diameter> inPlace = inches(0.25, 0.25, 0.28);
    Diameter bore = Diameter.inches(1.340);
    assertEquals(5, Fill.more(inPlace, Diameter.inches(0.30), bore, table1));
    List<Diameter> full = new ArrayList<>(inPlace);
    full.addAll(Collections.nCopies(5, Diameter.inches(0.30)));
    assertEquals(36.39, Fill.of(full, bore).inPercent(), 0.01);
    assertEquals(0.1597, Fill.of(inPlace, bore).inFraction() * 1.4103, 0.0001);
  }

  @Test
  void theTwoRulesDisagreeOnASecondCable() {
    // 1/2 ENT, two of 0.25 in fill 39.86 %: above 31 %, below 40 %
    Diameter bore = Diameter.inches(0.560);
    Diameter cable = Diameter.inches(0.25);
    assertEquals(39.86, Fill.of(List.of(cable, cable), bore).inPercent(), 0.01);
    assertEquals(1, Fill.more(List.of(), cable, bore, table1));
    assertEquals(2, Fill.more(List.of(), cable, bore, flat));
  }

  @Test
  void aThinThirdCableMayMakeTwoFatOnesLegal() {
    Diameter bore = Diameter.inches(0.760);
    assertEquals(27.15, Fill.of(inches(0.28, 0.28), bore).inPercent(), 0.01);
    assertTrue(Fill.keeps(inches(0.28, 0.28), bore, table1));
    assertEquals(31.16, Fill.of(inches(0.30, 0.30), bore).inPercent(), 0.01);
    assertFalse(Fill.keeps(inches(0.30, 0.30), bore, table1));
    assertEquals(32.9, Fill.of(inches(0.30, 0.30, 0.10), bore).inPercent(), 0.02);
    assertTrue(Fill.keeps(inches(0.30, 0.30, 0.10), bore, table1));
  }

  @Test
  void theLargestFurtherCableTakesWhatIsLeft() {
    // √(0.40·D² − Σd²)
    assertEquals(0.3256, largest(inches(0.25, 0.25), 0.760, table1), 0.0001);
    assertEquals(0.5244, largest(inches(0.25, 0.25), 1.000, table1), 0.0001);
  }

  @ParameterizedTest
  @CsvSource({ // √0.53·D
    "1.000,0.728",
    "0.824,0.600",
    "0.560,0.408"
  })
  void aSingleCableMayBeAboutThreeQuartersOfTheBore(double bore, double cable) {
    assertEquals(cable, largest(List.of(), bore, table1), 0.0005);
  }

  @Test
  void nothingFurtherFitsAFullConduit() {
    List<Diameter> full = inches(0.5, 0.5, 0.5);
    assertTrue(Fill.largestFurther(full, Diameter.inches(1), table1).isEmpty());
    assertEquals(0, Fill.more(full, Diameter.inches(0.1), Diameter.inches(1), table1));
    assertTrue(Fill.free(full, Diameter.inches(1), flat).inSquareInches() < 0);
  }

  @Test
  void aFillThatEqualsItsLimitKeepsIt() {
    // ten of 0.2 in in a bore of 1 in: 10 × 0.04 = 0.40 exactly
    List<Diameter> ten = Collections.nCopies(10, Diameter.inches(0.2));
    assertTrue(Fill.keeps(ten, Diameter.inches(1), flat));
    assertEquals(10, Fill.more(List.of(), Diameter.inches(0.2), Diameter.inches(1), flat));
    // A bore that is a mistake of the record: 0.4 · (1000/0.2)², reckoned without counting down.
    assertEquals(
        10_000_000, Fill.more(List.of(), Diameter.inches(0.2), Diameter.inches(1000), flat));
    assertEquals(1, Fill.more(ten.subList(0, 9), Diameter.inches(0.2), Diameter.inches(1), flat));
  }

  @Test
  void theFreeAreaIsWhatTheRuleLeaves() {
    // 1 in EMT, 40 %: 0.3457 sq in (NEC chapter 9 table 4: 0.346); one of 0.25 in takes 0.0491
    assertEquals(0.3457, Fill.free(List.of(), emt("1"), flat).inSquareInches(), 0.0001);
    assertEquals(0.2966, Fill.free(inches(0.25), emt("1"), flat).inSquareInches(), 0.0001);
    // table 1 at two cables allows 31 %: 0.268 (table 4) − 0.0982 = 0.170
    assertEquals(0.170, Fill.free(inches(0.25, 0.25), emt("1"), table1).inSquareInches(), 0.001);
  }

  @Test
  void anEmptyConduitKeepsEveryRule() {
    assertTrue(Fill.keeps(List.of(), Diameter.inches(1), table1));
    assertEquals(0, Fill.of(List.of(), Diameter.inches(1)).inPercent(), 1e-12);
  }

  private Diameter emt(String size) {
    return bores.diameter(wallbook.record.ConduitType.EMT, size).orElseThrow();
  }

  private double largest(List<Diameter> inPlace, double boreInches, FillRule rule) {
    return Fill.largestFurther(inPlace, Diameter.inches(boreInches), rule).orElseThrow().inInches();
  }

  private static Diameter ofArea(double squareInches) {
    return Diameter.inches(Math.sqrt(squareInches * 4 / Math.PI));
  }

  private static List<Diameter> inches(double... diameters) {
    return DoubleStream.of(diameters).mapToObj(Diameter::inches).toList();
  }
}
