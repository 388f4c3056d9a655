package wallbook.assess.conduit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.quantity.Diameter;
import wallbook.reference.Tables;

class WeightCorrectionTest {
  private final WeightCorrection correction = new WeightCorrection(new Tables());

  @ParameterizedTest
  @CsvSource({ // 1/√(1 − x²), 1 + 4/3·x², 1 + 2·x² with x = d/(D − d)
    "2.067,0.6,1.0958,1.2230,1.3346",
    "1.049,0.25,1.0529,1.1305,1.1958"
  })
  void cablesThatWedgePressBeyondTheirWeight(
      double bore, double cable, double triangular, double cradled, double diamond) {
    Diameter d = Diameter.inches(cable);
    Diameter whole = Diameter.inches(bore);
    assertEquals(triangular, WeightCorrection.triangular(d, whole).value(), 0.0001);
    assertEquals(cradled, WeightCorrection.cradled(d, whole).value(), 0.0001);
    assertEquals(diamond, WeightCorrection.diamond(d, whole).value(), 0.0001);
  }

  @Test
  void threeThatJustFitPressTwiceTheirWeightInEitherArrangement() {
    // D/d = 2.1547: x = 0.866, x² = 3/4: 1/√(1/4) = 2 and 1 + (4/3)(3/4) = 2
    Diameter bore = Diameter.inches(1 + 2 / Math.sqrt(3));
    assertEquals(2, WeightCorrection.triangular(Diameter.inches(1), bore).value(), 1e-9);
    assertEquals(2, WeightCorrection.cradled(Diameter.inches(1), bore).value(), 1e-9);
  }

  @Property
  void cradledIsNeverBelowTriangular(@ForAll @DoubleRange(min = 2.16, max = 20) double ratio) {
    Diameter cable = Diameter.inches(0.25);
    Diameter bore = cable.times(ratio);
    assertTrue(
        WeightCorrection.cradled(cable, bore).compareTo(WeightCorrection.triangular(cable, bore))
            >= 0);
  }

  @Test
  void theFactorFollowsTheNumberOfLikeCables() {
    Diameter bore = Diameter.inches(2.067);
    assertEquals(1, of(1, 0.6, bore), 0);
    assertEquals(1.0958, of(2, 0.6, bore), 0.0001); // as triangular, engineering reference
    assertEquals(1.2230, of(3, 0.6, bore), 0.0001); // cradled
    assertEquals(1.3346, of(4, 0.6, bore), 0.0001); // diamond, D/d = 3.445
    assertEquals(1.4, of(5, 0.6, bore), 0); // engineering reference
    assertEquals(1.4, of(6, 0.6, bore), 0); // engineering reference
    assertEquals(1, correction.of(List.of(), bore).value(), 0);
  }

  @Test
  void fourThatDoNotTouchTakeTheCautiousFactor() {
    // D/d = 4.196: x = 0.313, below 0.354
    assertEquals(1.4, of(4, 0.25, Diameter.inches(1.049)), 0);
    // D/d = 3.82: x = 0.3546, touching: 1 + 2·0.12574 = 1.2515
    assertEquals(1.2515, of(4, 0.25, Diameter.inches(0.955)), 0.0002);
  }

  @Test
  void twoThatFillTheBoreTakeTheCautiousFactor() {
    assertEquals(1.4, of(2, 0.5, Diameter.inches(1)), 0);
  }

  @Test
  void mixedCablesTakeTheCautiousFactor() {
    Diameter bore = Diameter.inches(1);
    assertEquals(
        1.4, correction.of(List.of(Diameter.inches(0.25), Diameter.inches(0.28)), bore).value(), 0);
    // within a hundredth they count as alike: cradled with x = 0.25/0.75: 1.1481
    assertEquals(
        1.1481,
        correction
            .of(
                List.of(Diameter.inches(0.25), Diameter.inches(0.252), Diameter.inches(0.248)),
                bore)
            .value(),
        0.0001);
  }

  private double of(int cables, double inches, Diameter bore) {
    return correction.of(Collections.nCopies(cables, Diameter.inches(inches)), bore).value();
  }
}
