package wallbook.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static wallbook.check.SmallHouse.house;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class DateChecksTest {
  private static final String RUN =
      "- {id: r1, label: K-01, cable: cat6, condition: in_service, from: {head: rack, panel: P1, port: 1, finish: terminated}, to: {place: d1, finish: terminated}}";

  private static SmallHouse test(String handover, String date, String rest) {
    return house()
        .with("job", "{id: small, title: Small, revision: 1, handover: " + handover + "}")
        .with("runs", RUN)
        .with(
            "tests",
            "- {id: t1, run: r1, kind: verification, result: pass, date: " + date + rest + "}");
  }

  private static SmallHouse history(String revision, String... issues) {
    return house()
        .with(
            "job",
            "id: small",
            "title: Small",
            "revision: " + revision,
            "history:",
            String.join("\n", issues));
  }

  @Test
  void aCalibrationComesBeforeTheTest() {
    test("2026-05-14", "2026-04-20", ", calibrated: ¶2026-04-21")
        .finds("test-older-than-calibration");
    test("2026-05-14", "2026-04-20", ", calibrated: 2026-04-20")
        .findsNo("test-older-than-calibration");
  }

  @Test
  void aCalibrationHoldsAYear() {
    test("2026-05-14", "2026-04-20", ", calibrated: 2025-04-20").findsNo("calibration-expired");
    test("2026-05-14", "2026-04-20", ", calibrated: ¶2025-04-19").finds("calibration-expired");
  }

  @Test
  void nothingIsDatedAfterTheHandover() {
    test("2026-05-14", "2026-05-14", "").findsNo("date-after-handover");
    test("2026-05-14", "¶2026-05-15", "").finds("date-after-handover");
  }

  @Test
  void aLaterIssueMayHoldLaterTests() {
    test("2026-05-14", "2026-06-01", "")
        .with(
            "job",
            "{id: small, title: Small, revision: 2, handover: 2026-05-14, history: [{revision: 1, date: 2026-05-14, what: First}, {revision: 2, date: 2026-06-02, what: Retest}]}")
        .findsNo("date-after-handover");
  }

  @Test
  void proofsShowingsAndAgreementsComeBeforeTheHandoverToo() {
    SmallHouse small = house().with("job", "{id: s, title: S, revision: 1, handover: 2026-05-14}");
    small
        .with("systems", "- {id: s1, name: Net, kind: data_network, demonstrated: ¶2026-05-15}")
        .finds("date-after-handover");
    small
        .with("systems", "- {id: s1, name: Net, kind: data_network, demonstrated: 2026-05-14}")
        .with("exceptions", "- {id: x1, kind: changed, what: X, system: s1, agreed: ¶2026-05-15}")
        .finds("date-after-handover");
    small
        .with("exceptions", "- {id: x1, kind: changed, what: X, system: s1, agreed: 2026-05-14}")
        .with(
            "conduits",
            "- {id: c1, label: C-1, name: C, type: ent, trade_size: 1, from: {head: rack}, to: {place: d1}, pull_string: both_ends, condition: clear, proved: {date: ¶2026-05-15, by: string_drawn}}")
        .finds("date-after-handover");
  }

  @Test
  void aTestTwoYearsBeforeTheHandoverIsOld() {
    test("2026-05-14", "2024-05-14", "").findsNo("test-long-before-handover");
    test("2026-05-14", "¶2024-05-13", "").finds("test-long-before-handover");
  }

  @Test
  void issuesFollowEachOther() {
    history(
            "2",
            "  - {revision: 2, date: 2026-05-14, what: Second}",
            "  - ¶{revision: 1, date: 2026-06-02, what: First}")
        .finds("history-out-of-order");
    history(
            "2",
            "  - {revision: 1, date: 2026-05-14, what: First}",
            "  - {revision: 2, date: 2026-05-14, what: Second}")
        .findsNo("history-out-of-order");
  }

  @Test
  void theHistoryEndsWithThisIssue() {
    var finding =
        history("¶2", "  - {revision: 1, date: 2026-05-14, what: First}")
            .finds("revision-not-in-history");
    assertEquals(Optional.of("1"), finding.nearest());

    history("1", "  - {revision: 1, date: 2026-05-14, what: First}")
        .findsNo("revision-not-in-history");
  }
}
