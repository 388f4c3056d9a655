package wallbook.assess.conduit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.quantity.Angle;
import wallbook.quantity.Factor;
import wallbook.quantity.Force;
import wallbook.quantity.Length;
import wallbook.quantity.LinearForce;
import wallbook.quantity.LinearMass;

class PullingTensionTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/wallbook/assess/conduit/bend-factors.csv", numLinesToSkip = 2)
  void aBendMultipliesTheTensionAsPublished(
      double degrees, double f07, double f06, double f05, double f04, double f03, double f015) {
    // a cable maker's conduit construction manual, 36 values, tolerance 0.01
    assertEquals(f07, factor(0.7, degrees), 0.01);
    assertEquals(f06, factor(0.6, degrees), 0.01);
    assertEquals(f05, factor(0.5, degrees), 0.01);
    assertEquals(f04, factor(0.4, degrees), 0.01);
    assertEquals(f03, factor(0.3, degrees), 0.01);
    assertEquals(f015, factor(0.15, degrees), 0.01);
  }

  @ParameterizedTest
  @CsvSource({"0.2,1.369", "0.35,1.733", "0.5,2.193"}) // e^(f·π/2), handbook factors of 90°
  void aQuarterBendMultipliesTheTension(double friction, double factor) {
    assertEquals(factor, factor(friction, 90), 0.001);
  }

  @Test
  void thePublishedExampleOf500FeetAndAQuarterBendIsReproduced() {
    // same manual: 0.144 lb/ft, f 0.5: 500 ft give 36 lb, a 90° bend then 79 lb
    PullingTension pull = pull(0.144, 0.5);
    List<Force> after = pull.along(List.of(straight(500), bend(90)));
    assertEquals(36, after.get(0).inPoundsForce(), 0.01);
    assertEquals(79, after.get(1).inPoundsForce(), 0.5);
    assertEquals(78.96, after.get(1).inPoundsForce(), 0.02); // 36 × 2.193
  }

  @Test
  void thePublishedLongestStraightPullReachesItsTension() {
    // same manual: 4722 ft at 340 lb, 0.144 lb/ft, f 0.5
    double atEnd = pull(0.144, 0.5).greatest(List.of(straight(4722))).inPoundsForce();
    assertEquals(340, atEnd, 0.1);
  }

  @ParameterizedTest
  @CsvSource({ // IEEE 1185-2019 equation (C.1): L·W_c·N·K′·e^(K′·π)
    "150,0.026,4,0.5,180,37.52",
    "100,0.026,3,0.4,180,10.96"
  })
  void theOneLineEstimateOfTheStandardIsReproduced(
      double feet, double poundsPerFoot, int cables, double friction, double bends, double lbf) {
    PullingTension pull = pull(poundsPerFoot * cables, friction);
    assertEquals(lbf, pull.estimate(Length.feet(feet), Angle.degrees(bends)).inPoundsForce(), 0.01);
  }

  @Test
  void theOneLineEstimateGivesNewtonsToo() {
    // 45.72 m, 4 × 0.0387 kg/m, K′ 0.5, π: 166.8 N with g = 9.8; here g = 9.80665
    LinearForce weight = LinearMass.kilogramsPerMetre(0.0387).times(4).weight();
    PullingTension pull = new PullingTension(weight, Factor.of(1), Factor.of(0.5));
    double newtons = pull.estimate(Length.metres(45.72), Angle.degrees(180)).inNewtons();
    assertEquals(166.8, newtons * 9.8 / 9.80665, 0.1);
  }

  @Test
  void tensionIsFollowedPieceByPiece() {
    // three at 0.026 lb/ft: 20·0.078·0.5 = 0.78; ×2.1933 = 1.711; + 1.17 = 2.881; 6.318; + 0.39
    List<PullPiece> pieces = List.of(straight(20), bend(90), straight(30), bend(90), straight(10));
    List<Force> after = pull(0.078, 0.5).along(pieces);
    double[] expected = {0.78, 1.711, 2.881, 6.318, 6.708};
    for (int i = 0; i < expected.length; i++) {
      assertEquals(expected[i], after.get(i).inPoundsForce(), 0.001);
    }
    assertEquals(3.332, pull(0.078, 0.35).greatest(pieces).inPoundsForce(), 0.001);
    assertEquals(1.382, pull(0.078, 0.2).greatest(pieces).inPoundsForce(), 0.001);
  }

  @Test
  void theEndItIsPulledFromMatters() {
    // four at 0.026 lb/ft: 20/90/30/90/10 gives 8.944, the other way 6.963: 22 % less
    List<PullPiece> there = List.of(straight(20), bend(90), straight(30), bend(90), straight(10));
    PullingTension pull = pull(0.104, 0.5);
    assertEquals(8.944, pull.greatest(there).inPoundsForce(), 0.001);
    assertEquals(6.963, pull.greatest(PullingTension.reversed(there)).inPoundsForce(), 0.001);
  }

  @ParameterizedTest
  @CsvSource({ // 25/(0.026·f), less by e^(fπ) for two quarter bends at the end
    "0.5,1923,0",
    "0.5,399.8,180",
    "0.2,2564.8,180"
  })
  void oneFourPairCableReachesItsLimit(double friction, double feet, double bends) {
    PullingTension pull = pull(0.026, friction);
    List<PullPiece> pieces =
        bends == 0 ? List.of(straight(feet)) : List.of(straight(feet), bend(bends));
    assertEquals(25, pull.greatest(pieces).inPoundsForce(), 0.01);
  }

  @ParameterizedTest
  @CsvSource({ // 20 ft at 0.104 lb/ft, f 0.5: 2.08·(sin φ + 0.5·cos φ); down −0.139 is no push
    "20,30,1.941",
    "20,-30,0",
    "10,90,1.04",
    "20,0,1.04",
    "10,-90,0"
  })
  void aSlopeAddsOrTakesItsShareOfTheWeight(double feet, double degrees, double lbf) {
    PullPiece slope = new PullPiece.Straight(Length.feet(feet), Angle.degrees(degrees));
    assertEquals(lbf, pull(0.104, 0.5).along(List.of(slope)).get(0).inPoundsForce(), 0.001);
  }

  @Test
  void theGreatestTensionMayLieBeforeASlopeDown() {
    List<PullPiece> overTheTop =
        List.of(straight(100), new PullPiece.Straight(Length.feet(40), Angle.degrees(-60)));
    PullingTension pull = pull(0.1, 0.5);
    // 100·0.1·0.5 = 5 lbf before the slope; after it 5 + 4·(−0.8660 + 0.25) = 2.536
    assertEquals(5, pull.greatest(overTheTop).inPoundsForce(), 1e-9);
    assertEquals(2.536, pull.along(overTheTop).get(1).inPoundsForce(), 0.001);
  }

  @Test
  void theWeightCorrectionMultipliesTheFriction() {
    // 500 ft, 0.144 lb/ft, w·f = 1.4 × 0.5 = 0.7: 50.4 lbf, × e^(0.7·π/2) = 3.003 → 151.3
    PullingTension pull =
        new PullingTension(LinearForce.poundsForcePerFoot(0.144), Factor.of(1.4), Factor.of(0.5));
    assertEquals(151.3, pull.greatest(List.of(straight(500), bend(90))).inPoundsForce(), 0.1);
  }

  @Test
  void noPiecesTakeNoTension() {
    assertEquals(0, pull(0.1, 0.5).greatest(List.of()).inNewtons(), 0);
  }

  @ParameterizedTest
  @CsvSource({"25,111.2", "50,222.4", "100,444.8"}) // 1 lbf = 4.4482 N
  void poundsForceAreNewtons(double lbf, double newtons) {
    assertEquals(newtons, Force.poundsForce(lbf).inNewtons(), 0.05);
  }

  @Test
  void aPoundPerFootIsWeightAndMass() {
    assertEquals(14.594, LinearForce.poundsForcePerFoot(1).inNewtonsPerMetre(), 0.001);
    assertEquals(1.4882, LinearMass.poundsPerThousandFeet(1000).inKilogramsPerMetre(), 0.0001);
    assertEquals(1, LinearMass.poundsPerThousandFeet(1000).weight().inPoundsForcePerFoot(), 1e-9);
  }

  @Test
  void thePressureOnTheInsideOfABendIsTensionOverRadius() {
    // 6.318 lbf leaving a bend of 0.5 ft inside radius: 12.64 lbf/ft
    LinearForce pressure = SidewallPressure.single(Force.poundsForce(6.318), Length.feet(0.5));
    assertEquals(12.64, pressure.inPoundsForcePerFoot(), 0.01);
  }

  @Test
  void severalCablesShareThePressure() {
    Force tension = Force.poundsForce(300);
    Length radius = Length.feet(3);
    // (3·1.2 − 2)·300/(3·3) = 53.33; 1.2·300/(2·3) = 60
    assertEquals(
        53.33,
        SidewallPressure.cradled(tension, radius, Factor.of(1.2)).inPoundsForcePerFoot(),
        0.01);
    assertEquals(
        60,
        SidewallPressure.triangular(tension, radius, Factor.of(1.2)).inPoundsForcePerFoot(),
        0.01);
  }

  @Property
  void theOneLineEstimateIsNeverBelowThePullPieceByPiece(@ForAll("pieces") List<PullPiece> pieces) {
    PullingTension pull = pull(0.1, 0.5);
    double feet = 0;
    double degrees = 0;
    for (PullPiece piece : pieces) {
      if (piece instanceof PullPiece.Straight straight) {
        feet += straight.length().inFeet();
      } else if (piece instanceof PullPiece.Bend bend) {
        degrees += bend.angle().inDegrees();
      }
    }
    double bound = pull.estimate(Length.feet(feet), Angle.degrees(degrees)).inPoundsForce();
    assertTrue(pull.greatest(pieces).inPoundsForce() <= bound * (1 + 1e-9) + 1e-9);
  }

  @Property
  void moreFrictionNeverPullsEasier(@ForAll("pieces") List<PullPiece> pieces) {
    assertTrue(pull(0.1, 0.2).greatest(pieces).compareTo(pull(0.1, 0.5).greatest(pieces)) <= 0);
  }

  @Provide
  Arbitrary<List<PullPiece>> pieces() {
    Arbitrary<PullPiece> straights =
        Arbitraries.doubles().between(1, 200).map(PullingTensionTest::straight);
    Arbitrary<PullPiece> bends = Arbitraries.doubles().between(5, 90).map(PullingTensionTest::bend);
    return Arbitraries.oneOf(straights, bends).list().ofMaxSize(8);
  }

  private static double factor(double friction, double degrees) {
    return pull(1, friction)
        .afterBend(Force.poundsForce(1), Angle.degrees(degrees))
        .inPoundsForce();
  }

  private static PullingTension pull(double poundsPerFoot, double friction) {
    return new PullingTension(
        LinearForce.poundsForcePerFoot(poundsPerFoot), Factor.of(1), Factor.of(friction));
  }

  private static PullPiece straight(double feet) {
    return PullPiece.Straight.level(Length.feet(feet));
  }

  private static PullPiece bend(double degrees) {
    return new PullPiece.Bend(Angle.degrees(degrees), Optional.empty());
  }
}
