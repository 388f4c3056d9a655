package wallbook.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

class LabelRangesTest {
  private static final Wording WORDING =
      new Wording(
          Locale.US, Map.of("labels.range", "{first} to {last}"), UnitSystem.FEET_AND_INCHES);

  private static String said(String... labels) {
    return LabelRanges.of(List.of(labels), WORDING);
  }

  @Test
  void threeThatCountOnBecomeARange() {
    assertEquals("K-01 to K-03, K-07", said("K-01", "K-02", "K-03", "K-07"));
  }

  @Test
  void twoStayAsTheyAre() {
    assertEquals("K-01, K-02", said("K-01", "K-02"));
  }

  @Test
  void aMissingNumberEndsARange() {
    assertEquals(
        "K-01 to K-03, K-05 to K-07", said("K-01", "K-02", "K-03", "K-05", "K-06", "K-07"));
  }

  @Test
  void numbersOfAnotherWidthOrBeginningDoNotCountOn() {
    assertEquals("K-8, K-9, K-10", said("K-8", "K-9", "K-10"));
    assertEquals("K-01, L-02, M-03", said("K-01", "L-02", "M-03"));
  }

  @Test
  void labelsWithoutANumberStandAlone() {
    assertEquals("attic, K-01, cellar", said("attic", "K-01", "cellar"));
  }

  @Test
  void nothingIsSaidOfNoLabels() {
    assertEquals("", said());
  }

  @Test
  void withItsBeginningSaidOnceNoLabelIsLost() {
    assertEquals(
        "A-01–03, 05 · B-02 · plain",
        LabelRanges.byBeginning(List.of("B-02", "A-05", "A-01", "plain", "A-02", "A-03")));
  }
}
