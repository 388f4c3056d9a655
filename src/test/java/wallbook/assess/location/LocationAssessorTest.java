package wallbook.assess.location;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.assess.Assessment;
import wallbook.assess.Said;
import wallbook.assess.Verdict;
import wallbook.quantity.Angle;
import wallbook.quantity.Length;
import wallbook.quantity.TapedLength;
import wallbook.wording.Phrase;

class LocationAssessorTest {
  /** A plate straight across the house from the rack: (0, 10, 4) to (40, 10, 4), 40 ft. */
  private static final String ACROSS = "kind: wall_plate, wall: C, offset: 20 ft, height: 4 ft";

  @ParameterizedTest
  @CsvSource({ // 40 ft between the ends; half a foot of rounding is allowed
    "41 ft,WITHIN,location.straight-line.longer",
    "40.01 ft,WITHIN,location.straight-line.longer",
    "39.9 ft,CONDITIONAL,location.straight-line.tolerance",
    "39.51 ft,CONDITIONAL,location.straight-line.tolerance",
    "39.49 ft,BEYOND,location.straight-line.shorter",
    "30 ft,BEYOND,location.straight-line.shorter"
  })
  void aRunCannotBeShorterThanTheStraightLine(String length, Verdict verdict, String reason) {
    Assessment line =
        Grounds.drawn()
            .place("p", "house", ACROSS)
            .run("r", "p", ", length: " + length)
            .answer("r", "location.straight-line");
    assertEquals(verdict, line.verdict());
    assertEquals(reason, line.limitedBy().orElseThrow().key());
    assertEquals(40, feet(line.limit().orElseThrow()), 1e-9);
  }

  @Test
  void theStraightLineGoesUpTheStoreysToo() {
    // rack (0, 10, 4); loft, wall C: (40, 30 − 8 = 22); 10 + 6 = 16 ft up:
    // √(40² + 12² + 12²) = √1888 = 43.451
    Assessment line =
        Grounds.drawn()
            .place("p", "loft", "kind: box, wall: C, offset: 8 ft, height: 6 ft")
            .run("r", "p", ", length: 60 ft")
            .answer("r", "location.straight-line");
    assertEquals(43.451, feet(line.limit().orElseThrow()), 0.001);
    assertEquals(16.549, feet(line.margin().orElseThrow()), 0.001);
  }

  @Test
  void withoutAHeightTheLineOnThePlanIsTheLeast() {
    Assessment line =
        Grounds.drawn()
            .place("p", "loft", "kind: box, wall: C, offset: 20 ft")
            .run("r", "p", ", length: 39 ft")
            .answer("r", "location.straight-line");
    assertEquals(40, feet(line.limit().orElseThrow()), 1e-9);
    assertEquals(Verdict.BEYOND, line.verdict());
    assertTrue(line.assumptions().contains(Phrase.of("location.assume.flat")));
  }

  @Test
  void whatIsMissingForTheLineIsNamed() {
    Assessment line =
        Grounds.drawn()
            .place("p", "house", "kind: box")
            .run("r", "p", "")
            .answer("r", "location.straight-line");
    assertEquals(Verdict.NOT_STATED, line.verdict());
    assertEquals(
        List.of("location.missing.place", "location.missing.height", "location.missing.length"),
        line.missing().stream().map(Phrase::key).toList());
  }

  @ParameterizedTest
  @CsvSource({ // 40 ft; half a foot and 5 % of what was measured: 37.6 + 0.5 + 1.88 = 39.98 no
    "37.6 ft,BEYOND",
    "37.7 ft,CONDITIONAL",
    "40 ft,WITHIN"
  })
  void aMeasuredLengthCannotBeShorterEither(String length, Verdict verdict) {
    Assessment line =
        Grounds.drawn()
            .place("p", "house", ACROSS)
            .run("r", "p", ", length: 50 ft")
            .test("t", "r", ", length: " + length)
            .answer("r", "location.measured-line.t");
    assertEquals(verdict, line.verdict());
  }

  @ParameterizedTest
  @CsvSource({ // 100 ft recorded: 5 % and half a foot, 5.5 ft either way
    "105.4 ft,WITHIN,agrees",
    "105.6 ft,BEYOND,differs",
    "94.6 ft,WITHIN,agrees",
    "94.4 ft,BEYOND,differs"
  })
  void theMeasuredLengthShouldBeTheRecordedOne(String length, Verdict verdict, String words) {
    Assessment measured =
        Grounds.drawn()
            .place("p", "house", ACROSS)
            .run("r", "p", ", length: 100 ft")
            .test("t", "r", ", length: " + length)
            .answer("r", "location.measured-length.t");
    assertEquals(verdict, measured.verdict());
    assertEquals(5.5, feet(measured.limit().orElseThrow()), 1e-9);
    assertEquals("location.measured-length." + words, measured.limitedBy().orElseThrow().key());
  }

  @Test
  void aMeasuredLengthWithoutPlacesOrRecordIsLeftOpen() {
    Grounds grounds =
        Grounds.drawn()
            .place("p", "house", "kind: box")
            .run("r", "p", "")
            .test("t", "r", ", length: 40 ft")
            .test("u", "r", "");
    assertEquals(Verdict.NOT_STATED, grounds.answer("r", "location.measured-line.t").verdict());
    assertFalse(grounds.asks("r", "location.measured-length.t"));
    assertFalse(grounds.asks("r", "location.measured-line.u"));
  }

  @Test
  void twoTiesThatMeetAreGood() {
    Grounds grounds = Grounds.drawn().tied("a 13 ft, b 15 ft");
    assertEquals(Verdict.WITHIN, grounds.answer("so", "location.ties").verdict());
    Assessment angle = grounds.answer("so", "location.angle");
    assertEquals(59.49, ((Angle) angle.value().orElseThrow()).inDegrees(), 0.01);
    assertEquals(29.49, ((Angle) angle.margin().orElseThrow()).inDegrees(), 0.01);
    assertEquals(Verdict.WITHIN, angle.verdict());
    Assessment error = grounds.answer("so", "location.error");
    assertEquals(0.0821, taped(error.value().orElseThrow()), 0.0001); // e·√2/sin γ, e 0.05 ft
  }

  @ParameterizedTest
  @CsvSource({ // surveying custom, 30° to 150°; isosceles over 14 ft: γ = 2·asin(7/r): 30° at
    // 27.046, 150° at 7.2469
    "27.0,WITHIN,location.angle.good",
    "27.1,CONDITIONAL,location.angle.sharp",
    "7.26,WITHIN,location.angle.good",
    "7.24,CONDITIONAL,location.angle.flat"
  })
  void sharpAndFlatCrossingsAreFlagged(double tie, Verdict verdict, String reason) {
    Assessment angle =
        Grounds.drawn().tied("a " + tie + " ft, b " + tie + " ft").answer("so", "location.angle");
    assertEquals(verdict, angle.verdict());
    assertEquals(reason, angle.limitedBy().orElseThrow().key());
    double margin = ((Angle) angle.margin().orElseThrow()).inDegrees();
    assertEquals(verdict == Verdict.WITHIN, margin >= 0);
  }

  @Test
  void contradictionIsSaidWithBothTies() {
    Assessment ties = Grounds.drawn().tied("a 4 ft, b 3 ft").answer("so", "location.ties");
    assertEquals(Verdict.BEYOND, ties.verdict());
    assertEquals(7, taped(ties.value().orElseThrow()), 1e-9);
    assertEquals(-6.9, taped(ties.margin().orElseThrow()), 1e-9); // 0.1 ft allowed
    assertEquals(
        "4 ft from the corner A and 3 ft from the corner B cannot meet: the corners are 14 ft apart",
        Said.english(ties.limitedBy().orElseThrow()));
  }

  @Test
  void tiesThatOnlyTouchWantOneMore() {
    Grounds grounds = Grounds.drawn().tied("a 6 ft, b 8 ft");
    Assessment ties = grounds.answer("so", "location.ties");
    assertEquals(Verdict.CONDITIONAL, ties.verdict());
    assertFalse(grounds.asks("so", "location.angle"));
  }

  @Test
  void anUnknownSideIsNamed() {
    Assessment ties = Grounds.with("", "").tied("a 13 ft, b 15 ft").answer("so", "location.ties");
    assertEquals(List.of(Phrase.of("location.missing.side")), ties.missing());
  }

  @Test
  void tiesThatFitNowhereAreSaidSo() {
    Assessment ties =
        Grounds.with(
                Grounds.HOUSE,
                ", outline: [[0 ft, -50 ft], [0 ft, -20 ft], [70 ft, -20 ft], [70 ft, -50 ft]]")
            .tied("d 30 ft, c 40 ft")
            .answer("so", "location.ties");
    assertEquals(Verdict.BEYOND, ties.verdict());
    assertTrue(ties.value().isEmpty());
  }

  @Test
  void aThirdTieIsHeldAgainstTheOthers() {
    // (5, −12): 13 from a, 15 from b, 37 from c
    Assessment good =
        Grounds.drawn().tied("a 13 ft, b 15 ft, c 37 ft").answer("so", "location.ties");
    assertEquals(Verdict.WITHIN, good.verdict());
    assertEquals(0, taped(good.value().orElseThrow()), 1e-6);
    assertEquals(0.15, taped(good.limit().orElseThrow()), 1e-9); // 3 × 0.05 ft
    Assessment off =
        Grounds.drawn().tied("a 13 ft, b 15 ft, c 38 ft").answer("so", "location.ties");
    assertEquals(Verdict.BEYOND, off.verdict());
    assertEquals("location.ties.off", off.limitedBy().orElseThrow().key());
  }

  @Test
  void theTapeInstructionNamesCornersLengthsAndSide() {
    Assessment two = Grounds.drawn().tied("a 13 ft, b 15 ft").answer("so", "location.tape");
    assertEquals(
        "Swing 13 ft from the corner A and 15 ft from the corner B. The place is where both meet, on the"
            + " right when you look from the first corner to the second.",
        Said.english(two.asked()));
    Assessment three =
        Grounds.drawn().tied("b 15 ft, a 13 ft, c 37 ft").answer("so", "location.tape");
    assertEquals(
        "Swing 13 ft from the corner A and 37 ft from the corner C. The place is where both meet, on the"
            + " right when you look from the first corner to the second. Check: 15 ft from"
            + " the corner B.",
        Said.english(three.asked()));
  }

  @Test
  void coordinatesAreSaid() {
    Grounds grounds = Grounds.drawn().place("p", "house", ACROSS).place("q", "house", "kind: box");
    Assessment known = grounds.answer("p", "location.position");
    assertEquals(
        "place on the plan: 40 ft to the right, 10 ft up; height above the entrance floor",
        Said.english(known.asked()));
    assertEquals(4, taped(known.value().orElseThrow()), 1e-9);
    assertEquals(Verdict.NOT_STATED, grounds.answer("q", "location.position").verdict());
  }

  @Test
  void coordinatesAreSaidWithoutAHeightToo() {
    Assessment onPlan =
        Grounds.drawn()
            .place("p", "loft", "kind: ceiling_point, at: [10 ft, 7 ft]")
            .answer("p", "location.position");
    assertEquals("location.position.on-plan", onPlan.asked().key());
    assertTrue(onPlan.value().isEmpty());
  }

  @Test
  void placesWithoutTiesAreNotAskedForThem() {
    assertFalse(Grounds.drawn().place("p", "house", ACROSS).asks("p", "location.ties"));
  }

  private static double feet(Object length) {
    return ((Length) length).inFeet();
  }

  private static double taped(Object length) {
    return ((TapedLength) length).asLength().inFeet();
  }
}
