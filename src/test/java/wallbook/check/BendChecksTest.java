package wallbook.check;

import static wallbook.check.SmallHouse.house;

import org.junit.jupiter.api.Test;

/**
 * Four quarter bends pass NFPA 70 (NEC) 358.26 and 362.26 and fail ANSI/TIA-569, which ends at two
 * and at 30 m (100 ft); both are published figures.
 */
class BendChecksTest {
  private static SmallHouse conduit(String type, String path) {
    return house()
        .with(
            "conduits",
            "- {id: c1, label: C-1, name: C, type: "
                + type
                + ", trade_size: 1, from: {head: rack}, to: {place: d1}, pull_string: both_ends, condition: clear, "
                + path
                + "}");
  }

  private static String bends(int... degrees) {
    StringBuilder path = new StringBuilder("path: [¶{bend: " + degrees[0] + " deg}");
    for (int i = 1; i < degrees.length; i++) {
      path.append(", {bend: ").append(degrees[i]).append(" deg}");
    }
    return path + "]";
  }

  @Test
  void fourQuarterBendsAreWithinTheCode() {
    conduit("emt", bends(90, 90, 90, 90)).findsNo("bends-beyond-code");
    conduit("emt", bends(90, 90, 90, 90, 10)).finds("bends-beyond-code");
  }

  @Test
  void offsetsCountLikeBends() {
    conduit("ent", bends(90, 90, 45, 45, 45, 45)).findsNo("bends-beyond-code");
    conduit("ent", bends(90, 90, 45, 45, 45, 45, 30)).finds("bends-beyond-code");
  }

  @Test
  void twoQuarterBendsAreGoodPractice() {
    conduit("emt", bends(90, 90)).findsNo("bends-beyond-practice");
    conduit("emt", bends(90, 90, 10)).finds("bends-beyond-practice");
  }

  @Test
  void whatTheCodeForbidsIsNotRemarkedOnTwice() {
    conduit("emt", bends(90, 90, 90, 90, 10)).findsNo("bends-beyond-practice");
  }

  @Test
  void familiesWithoutAnArticleAreJudgedByPracticeOnly() {
    conduit("iec_rigid", bends(90, 90, 90, 90, 10)).findsNo("bends-beyond-code");
    conduit("iec_rigid", bends(90, 90, 90, 90, 10)).finds("bends-beyond-practice");
  }

  @Test
  void aPullBoxPartsTheBends() {
    conduit(
            "emt",
            "path: [{bend: 90 deg}, {bend: 90 deg}, {pull_box: PB-1}, {bend: 90 deg}, {bend: 90 deg}]")
        .findsNo("bends-beyond-practice");
    conduit(
            "emt",
            "path: [{bend: 90 deg}, {pull_box: PB-1}, ¶{bend: 90 deg}, {bend: 90 deg}, {bend: 10 deg}]")
        .finds("bends-beyond-practice");
  }

  @Test
  void oneBendIsAQuarterAtMost() {
    conduit("emt", "path: [{straight: 5 ft}, {bend: 90 deg}]").findsNo("bend-beyond-practice");
    conduit("emt", "path: [{straight: 5 ft}, {bend: ¶91 deg}]").finds("bend-beyond-practice");
  }

  @Test
  void aHundredFeetAreGoodPractice() {
    conduit("emt", "path: [{straight: 100 ft}]").findsNo("section-beyond-practice");
    conduit("emt", "path: [¶{straight: 101 ft}]").finds("section-beyond-practice");
    conduit("emt", "path: [{straight: 60 ft}, {pull_box: PB-1}, {straight: 60 ft}]")
        .findsNo("section-beyond-practice");
  }

  @Test
  void thePiecesAddUpToTheLength() {
    conduit("emt", "length: ¶50 ft, path: [{straight: 56 ft}]").finds("path-length-differs");
    conduit("emt", "length: 50 ft, path: [{straight: 55 ft}]").findsNo("path-length-differs");
    conduit("emt", "length: ¶50 ft, path: [{straight: 44 ft}]").finds("path-length-differs");
    conduit("emt", "length: 50 ft, path: [{straight: 45 ft}]").findsNo("path-length-differs");
  }

  @Test
  void aBendOfUnknownRadiusMayExplainWhatIsMissing() {
    conduit("emt", "length: 50 ft, path: [{straight: 40 ft}, {bend: 90 deg}]")
        .findsNo("path-length-differs");
  }

  /** A quarter bend of 24 in radius is π/2 × 2 ft = 3.14 ft long: 40 + 3.14 is short of 45. */
  @Test
  void aBendIsAsLongAsItsArc() {
    conduit("emt", "length: ¶50 ft, path: [{straight: 40 ft}, {bend: 90 deg, radius: 24 in}]")
        .finds("path-length-differs");
    conduit("emt", "length: 50 ft, path: [{straight: 42 ft}, {bend: 90 deg, radius: 24 in}]")
        .findsNo("path-length-differs");
  }
}
