package wallbook.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import wallbook.Jobs;
import wallbook.finding.Finding;
import wallbook.finding.Severity;
import wallbook.record.Job;

class ChecksTest {
  private static final Checks CHECKS = new Checks(Jobs.TABLES);
  private static final Job JOB =
      Jobs.job(
          """
          floors: [{id: g, name: G, level: 0, elevation: 0 ft}]
          spaces: [{id: den, name: Den, floor: g, kind: living, ceiling_height: 9 ft}]
          places:
            - {id: p1, name: One, space: den, kind: wall_plate, use: data}
            - {id: p2, name: Two, space: den, kind: wall_plate, use: data, height: 10 ft}
          runs:
            - {id: r1, label: A, cable: cat6, condition: in_service, from: {place: p1, finish: terminated}, to: {place: p2, finish: terminated}}
            - {id: r2, label: A, cable: cat6, condition: abandoned, from: {place: p1, finish: cut}, to: {place: p2, finish: cut}}
          """);

  @Test
  void theGravestComesFirstAndThenTheOrderOfTheFile() {
    List<Finding> findings = CHECKS.check(JOB);

    assertEquals(findings.stream().sorted(Finding.REPORT_ORDER).toList(), findings);
    assertEquals(
        List.of("height-above-ceiling", "duplicate-label"),
        findings.stream().filter(f -> f.severity() == Severity.ERROR).map(Finding::name).toList());
  }

  @Test
  void theErrorsAloneAreThoseOfTheWholeReport() {
    assertEquals(
        CHECKS.check(JOB).stream().filter(f -> f.severity() == Severity.ERROR).toList(),
        CHECKS.errors(JOB));
  }

  @Test
  void ofAPartOfARecordNothingIsSaidToBeMissing() {
    List<String> whole = CHECKS.check(JOB).stream().map(Finding::name).toList();
    List<String> part = CHECKS.checkSoundPart(JOB).stream().map(Finding::name).toList();

    assertTrue(whole.containsAll(List.of("run-without-test", "position-incomplete")));
    assertTrue(part.contains("duplicate-label"));
    assertTrue(!part.contains("run-without-test") && !part.contains("position-incomplete"));
    assertTrue(whole.containsAll(part));
  }
}
