package wallbook.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static wallbook.check.SmallHouse.house;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallbook.finding.Severity;

class LabelChecksTest {
  private static final String REST =
      "cable: cat6, from: {head: rack, finish: coiled}, to: {place: d1, finish: coiled}, condition: dark}";

  @Test
  void twoRunsWithOneLabelAreAnError() {
    var finding =
        house()
            .with("runs", "- {id: r1, label: K-01, " + REST, "- {id: r2, label: ¶k-01, " + REST)
            .finds("duplicate-label");

    assertEquals(Severity.ERROR, finding.severity());
    assertEquals(Optional.of("k-01"), finding.found());
  }

  @Test
  void aRunAndAConduitDoNotShareALabel() {
    house()
        .with("runs", "- {id: r1, label: K-01, " + REST)
        .with(
            "conduits",
            "- {id: c1, label: ¶K-01, name: Chase, type: ent, trade_size: '1', from: {head: rack}, to: {place: d1}, pull_string: both_ends, condition: clear}")
        .finds("duplicate-label");
  }

  @Test
  void aPlateMayHaveTheLabelOfARunThatEndsThere() {
    var small =
        house()
            .with(
                "places",
                "- {id: d1, label: K-01, name: One, space: den, kind: wall_plate, use: data}")
            .with("runs", "- {id: r1, label: K-01, " + REST);

    small.findsNo("duplicate-label");
    small.findsNo("plate-labelled-as-another-run");
  }

  @Test
  void aPlateWithTheLabelOfARunThatEndsElsewhereIsReported() {
    house()
        .with(
            "places",
            "- {id: d1, name: One, space: den, kind: wall_plate, use: data}",
            "- {id: d2, label: ¶K-01, name: Two, space: den, kind: wall_plate, use: data}")
        .with("runs", "- {id: r1, label: K-01, " + REST)
        .finds("plate-labelled-as-another-run");
  }

  @Test
  void anAccentedLabelIsReportedWithItsPlainForm() {
    var finding =
        house().with("runs", "- {id: r1, label: ¶SALÓN–1, " + REST).finds("malformed-label");

    assertEquals(Optional.of("SALON-1"), finding.nearest());
  }

  @Test
  void aLabelOfTwentyFourCharactersIsTheLongest() {
    house()
        .with("runs", "- {id: r1, label: " + "K".repeat(24) + ", " + REST)
        .findsNo("malformed-label");
    house()
        .with("runs", "- {id: r1, label: ¶" + "K".repeat(25) + ", " + REST)
        .finds("malformed-label");
  }
}
