package wallbook.render.press;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import org.junit.jupiter.api.Test;

/** Worked by hand after CSS 2.1, 17.5.2.1 (fixed layout) and 17.5.2.2 (automatic layout). */
class ColumnWidthsTest {
  private static final float TOLERANCE = 0.001f;

  private static Length[] given(float... shares) {
    Length[] given = new Length[shares.length];
    for (int i = 0; i < shares.length; i++) {
      given[i] = shares[i] == 0 ? Length.AUTO : new Length(0, shares[i], false);
    }
    return given;
  }

  @Test
  void aFixedTableFollowsItsShares() {
    assertArrayEquals(
        new float[] {100, 300, 100}, ColumnWidths.fixed(given(0.2f, 0.6f, 0.2f), 500), TOLERANCE);
  }

  @Test
  void aFixedTableGivesWhatIsLeftToTheOthersInEqualParts() {
    assertArrayEquals(
        new float[] {200, 150, 150}, ColumnWidths.fixed(given(0.4f, 0, 0), 500), TOLERANCE);
  }

  @Test
  void sharesThatDontMakeAWholeStillFillTheTable() {
    assertArrayEquals(
        new float[] {250, 250}, ColumnWidths.fixed(given(0.4f, 0.4f), 500), TOLERANCE);
  }

  @Test
  void roomBeyondTheLongestTextsGoesByTheirLengths() {
    // 100 + 300 fill 400 of 600; the other 200 are shared 1 : 3.
    assertArrayEquals(
        new float[] {150, 450},
        ColumnWidths.auto(new float[] {20, 30}, new float[] {100, 300}, given(0, 0), 600),
        TOLERANCE);
  }

  @Test
  void betweenWordsAndTextsEachColumnGetsTheSameShareOfWhatItWants() {
    // Words 50 + 50, texts 100 + 350: of the 350 wanted beyond the words there are 200.
    assertArrayEquals(
        new float[] {50 + 50 * 4 / 7f, 50 + 300 * 4 / 7f},
        ColumnWidths.auto(new float[] {50, 50}, new float[] {100, 350}, given(0, 0), 300),
        TOLERANCE);
  }

  @Test
  void whereNotEvenTheWordsFitTheWidestColumnIsCut() {
    assertArrayEquals(
        new float[] {40, 60, 100},
        ColumnWidths.auto(
            new float[] {40, 60, 400}, new float[] {40, 60, 400}, given(0, 0, 0), 200),
        TOLERANCE);
  }

  @Test
  void aGivenShareHoldsUnlessAWordIsWider() {
    assertArrayEquals(
        new float[] {100, 300},
        ColumnWidths.auto(new float[] {20, 30}, new float[] {300, 90}, given(0.25f, 0), 400),
        TOLERANCE);
    assertArrayEquals(
        new float[] {150, 250},
        ColumnWidths.auto(new float[] {150, 30}, new float[] {300, 90}, given(0.25f, 0), 400),
        TOLERANCE);
  }
}
