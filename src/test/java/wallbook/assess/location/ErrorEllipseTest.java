package wallbook.assess.location;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.quantity.Angle;
import wallbook.quantity.Length;
import wallbook.record.Point;

class ErrorEllipseTest {

  @ParameterizedTest
  @CsvSource({ // e·√2/sin γ with e = 0.05 ft; Monte Carlo of the reference gave 0.0708, 0.0821,
    // 0.1547
    "10,6,8,0.0707,0.0708",
    "14,13,15,0.0821,0.0821",
    "40,28,13,0.1542,0.1547"
  })
  void theErrorGrowsAsTheTiesCrossFlatter(
      double base, double r, double s, double feet, double monteCarlo) {
    double rms = ellipse(base, r, s).rootMeanSquare().inFeet();
    assertEquals(feet, rms, 0.00006);
    assertEquals(monteCarlo, rms, 0.005 * monteCarlo);
  }

  @ParameterizedTest
  @CsvSource({ // 1/sin γ
    "90,1.00",
    "60,1.155",
    "45,1.414",
    "30,2.00",
    "20,2.92",
    "10,5.76"
  })
  void theErrorFollowsTheSineOfTheAngle(double degrees, double times) {
    assertEquals(times, rms(degrees) / rms(90), 0.005);
    assertEquals(times, rms(180 - degrees) / rms(90), 0.005);
  }

  @Test
  void aQuarterInchAtThirtyDegreesIsSevenTenthsOfAnInch() {
    // 0.25 in · √2 / 0.5 = 0.707 in
    ErrorEllipse ellipse =
        ErrorEllipse.of(at(0), List.of(at(1, 0), at(1, 30)), Length.inches(0.25)).orElseThrow();
    assertEquals(0.707, ellipse.rootMeanSquare().inInches(), 0.0005);
  }

  @Test
  void theAxesFollowFromTheAngle() {
    // e/√(1 ∓ cos γ): at 60° 1.4142·e and 0.8165·e
    ErrorEllipse ellipse = turned(0, 60);
    assertEquals(1.4142, ellipse.semiMajor().inFeet(), 0.0001);
    assertEquals(0.8165, ellipse.semiMinor().inFeet(), 0.0001);
  }

  @ParameterizedTest
  @CsvSource({
    // corners to the right and to 60° above it: they hold along 30° above the right, so that the
    // worst direction is 120° above the right, 30° before the top: 150° clockwise
    "0,60,150",
    "-30,30,0",
    "60,120,90",
    "15,75,135"
  })
  void theWorstDirectionLiesAcrossTheTies(double first, double second, double direction) {
    assertEquals(direction, turned(first, second).direction().inDegrees() % 180, 1e-6);
  }

  @Test
  void aFlatCrossingIsWorstAcrossTheLine() {
    // corners left and right of the point: worst is up and down, 0° from the top
    ErrorEllipse ellipse = turned(5, 175);
    assertEquals(0, ellipse.direction().inDegrees(), 1e-6);
    // e/√(1 − |cos 170°|) = 8.114·e
    assertEquals(8.114, ellipse.semiMajor().inFeet(), 0.001);
  }

  @Test
  void cornersInLineWithThePointGiveNoEllipse() {
    assertTrue(ErrorEllipse.of(at(0), List.of(at(1, 0), at(1, 180)), Length.feet(1)).isEmpty());
    assertTrue(ErrorEllipse.of(at(0), List.of(at(1, 0), at(2, 0)), Length.feet(1)).isEmpty());
  }

  @Test
  void aThirdTieNarrowsTheEllipse() {
    ErrorEllipse two = turned(0, 60);
    ErrorEllipse three =
        ErrorEllipse.of(at(0), List.of(at(1, 0), at(1, 60), at(1, 120)), Length.feet(1))
            .orElseThrow();
    assertTrue(three.semiMajor().compareTo(two.semiMajor()) < 0);
    // three at 60°: JᵀJ = diag(1.5, 1.5): both axes √(1/1.5) = 0.8165
    ErrorEllipse even =
        ErrorEllipse.of(at(0), List.of(at(1, 0), at(1, 120), at(1, 240)), Length.feet(1))
            .orElseThrow();
    assertEquals(0.8165, even.semiMajor().inFeet(), 0.0001);
    assertEquals(0.8165, even.semiMinor().inFeet(), 0.0001);
  }

  @Test
  void tapingManyTimesScattersAsComputed() {
    // 20,000 pairs of ties with normal errors, seed fixed: within 2 % of the formula
    Random random = new Random(20260214);
    double sum = 0;
    for (int i = 0; i < 20_000; i++) {
      TieFix.Crossing crossing =
          (TieFix.Crossing)
              TwoTies.solve(
                  TwoTiesTest.feet(0, 0),
                  Length.feet(13 + 0.05 * random.nextGaussian()),
                  TwoTiesTest.feet(14, 0),
                  Length.feet(15 + 0.05 * random.nextGaussian()),
                  Length.feet(0));
      double dx = crossing.left().x().inFeet() - 5;
      double dy = crossing.left().y().inFeet() - 12;
      sum += dx * dx + dy * dy;
    }
    double scattered = Math.sqrt(sum / 20_000);
    assertEquals(scattered, ellipse(14, 13, 15).rootMeanSquare().inFeet(), 0.02 * scattered);
  }

  private static double rms(double degrees) {
    return turned(0, degrees).rootMeanSquare().inFeet();
  }

  /** Ellipse for two corners a foot away in the directions said, counted from the right upwards. */
  private static ErrorEllipse turned(double first, double second) {
    return ErrorEllipse.of(at(0), List.of(at(1, first), at(1, second)), Length.feet(1))
        .orElseThrow();
  }

  private static Point at(double distance) {
    return at(distance, 0);
  }

  private static Point at(double distance, double degrees) {
    double radians = Angle.degrees(degrees).inRadians();
    return TwoTiesTest.feet(distance * Math.cos(radians), distance * Math.sin(radians));
  }

  private static ErrorEllipse ellipse(double base, double r, double s) {
    TieFix.Crossing crossing =
        (TieFix.Crossing)
            TwoTies.solve(
                TwoTiesTest.feet(0, 0),
                Length.feet(r),
                TwoTiesTest.feet(base, 0),
                Length.feet(s),
                Length.feet(0));
    return ErrorEllipse.of(
            crossing.left(),
            List.of(TwoTiesTest.feet(0, 0), TwoTiesTest.feet(base, 0)),
            Length.feet(0.05))
        .orElseThrow();
  }
}
