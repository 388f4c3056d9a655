package wallbook.assess.conduit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.quantity.Diameter;
import wallbook.quantity.Length;
import wallbook.reference.Source;
import wallbook.reference.Standing;
import wallbook.reference.Tables;

/** Expected figures follow from plane geometry; bores from NEC chapter 9 table 4. */
class HeadPassageTest {
  private static final double ENT_1 = 25.4;

  @ParameterizedTest
  @CsvSource({ // √(a² + b²); metal shells by four connector pages
    "video-plug,14.6",
    "video-plug-mini,10.7",
    "video-plug-micro,7.0",
    "8p8c,14.3",
    "lc-duplex,16.8",
    "lc-simplex,8.7",
    "sc-simplex,11.7",
    "mpo,14.6",
    "f-male,12.8"
  })
  void aConnectorNeedsItsDiagonal(String name, double millimetres) {
    HeadSize head =
        HeadSize.all(new Tables()).stream().filter(h -> h.name().equals(name)).findFirst().get();
    assertEquals(millimetres, head.diagonal().inMillimetres(), 0.06);
  }

  @Test
  void aDuplexConnectorOfTwoBodiesNeedsTheDiagonalOfBoth() {
    HeadSize head =
        HeadSize.all(new Tables()).stream()
            .filter(h -> h.name().equals("sc-duplex"))
            .findFirst()
            .get();
    // √(21.7² + 9.3²) = √(470.89 + 86.49) = 23.61
    assertEquals(23.61, head.diagonal().inMillimetres(), 0.01);
  }

  @Test
  void aHeadOf21By12PassesOneInchTubingOfPlasticButNotOneInchOfHeavyPlastic() {
    Diameter diagonal = head(21, 12).diagonal();
    assertEquals(24.19, diagonal.inMillimetres(), 0.005);
    assertEquals(1.2, ENT_1 - diagonal.inMillimetres(), 0.05);
    assertTrue(passes(21, 12, 25.4)); // ENT 1
    assertTrue(passes(21, 12, 26.6)); // EMT 1
    assertFalse(passes(21, 12, 23.8)); // PVC 80 1
    assertFalse(passes(21, 12, 21.2)); // RMC 3/4, the widest of that size
    assertFalse(passes(13.9, 4.45, 14.22)); // ENT 1/2
    assertTrue(passes(13.9, 4.45, 15.8)); // EMT 1/2
  }

  @ParameterizedTest
  @CsvSource({ // chord seat: D/2 − b + √(D² − a²)/2
    "21,12,25.40,7.84",
    "21,12,26.64,9.52",
    "21,12,34.04,18.42",
    "21,12,40.89,26.0",
    "11.7,8.3,19.30,9.02",
    "11.7,8.3,25.40,15.67"
  })
  void aCableOfTheFreeCircleMayStayBesideTheHead(double a, double b, double bore, double free) {
    assertEquals(free, free(head(a, b), bore), 0.02);
    assertEquals(free, free(head(b, a), bore), 0.02); // flat or on end, the better is taken
  }

  @Test
  void aRoundHeadLeavesTheRestOfTheBore() {
    assertEquals(12.6, free(round(12.8), ENT_1), 1e-9);
  }

  @Test
  void aHeadThatDoesNotPassLeavesNothing() {
    assertEquals(
        Optional.empty(), HeadPassage.freeCircleBeside(head(21, 12), Diameter.millimetres(24)));
  }

  @ParameterizedTest
  @CsvSource({ // t = √((R + h)² − (L/2)²) − (R − h), h = √(D² − a²)/2
    "21,40,101.6,25.4,12.43",
    "21,50,101.6,25.4,11.38",
    "21,45,146.05,25.4,12.63",
    "21,45,184.15,34.04,25.50",
    "11.7,21.5,127,19.30,14.92"
  })
  void aBendPassesAThicknessThatShrinksWithTheStiffLength(
      double a, double stiff, double radius, double bore, double thickness) {
    Diameter greatest =
        HeadPassage.greatestThicknessInBend(
            Diameter.millimetres(a),
            Length.millimetres(stiff),
            Length.millimetres(radius),
            Diameter.millimetres(bore));
    assertEquals(thickness, greatest.inMillimetres(), 0.01);
  }

  @Test
  void tenMillimetresMoreOfStiffLengthDecide() {
    // greatest thickness 12.43 at 40 mm and 11.38 at 50 mm, for a head 12 mm thick
    assertTrue(throughBend(head(21, 12), 40));
    assertFalse(throughBend(head(21, 12), 50));
    assertTrue(throughBend(head(12, 21), 40)); // turned on its other side
    assertEquals(0.43, bendMargin(head(21, 12), 40), 0.01);
    assertEquals(-0.62, bendMargin(head(21, 12), 50), 0.01);
  }

  @Test
  void aStiffThingLongerThanTheBendIsWideDoesNotPass() {
    assertFalse(throughBend(head(21, 12), 400));
  }

  private static boolean passes(double a, double b, double bore) {
    return HeadPassage.freeCircleBeside(head(a, b), Diameter.millimetres(bore)).isPresent();
  }

  private static double free(HeadSize head, double bore) {
    return HeadPassage.freeCircleBeside(head, Diameter.millimetres(bore))
        .orElseThrow()
        .inMillimetres();
  }

  private static boolean throughBend(HeadSize head, double stiff) {
    return bendMargin(head, stiff) >= 0;
  }

  private static double bendMargin(HeadSize head, double stiff) {
    return HeadPassage.inBend(
            head, Length.millimetres(stiff), Length.millimetres(101.6), Diameter.millimetres(ENT_1))
        .margin()
        .inMillimetres();
  }

  private static HeadSize head(double a, double b) {
    return new HeadSize(
        "test",
        Diameter.millimetres(a),
        Diameter.millimetres(b),
        Optional.empty(),
        false,
        new Source("measured", Standing.CONFIRMED));
  }

  private static HeadSize round(double across) {
    return new HeadSize(
        "test",
        Diameter.millimetres(across),
        Diameter.millimetres(across),
        Optional.empty(),
        true,
        new Source("measured", Standing.CONFIRMED));
  }
}
