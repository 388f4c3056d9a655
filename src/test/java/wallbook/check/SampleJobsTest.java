package wallbook.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import wallbook.finding.Finding;
import wallbook.finding.Severity;
import wallbook.read.JobReader;
import wallbook.read.ReadResult;
import wallbook.record.HouseSystem;
import wallbook.record.PlaceUse;
import wallbook.record.SystemKind;
import wallbook.reference.Tables;

/** The invented jobs that come with the program: read and checked as a user would. */
class SampleJobsTest {
  private static final Path JOBS = Path.of("sample-jobs");
  private static final Pattern MARK = Pattern.compile("\\s*# wrong: .*\\[([a-z-]+)]");
  private static final Tables TABLES = new Tables();

  /** A finding as the broken record announces it: the line it is about and its name. */
  private record Announced(int line, String name) {
    static Announced by(Finding finding) {
      return new Announced(finding.position().line(), finding.name());
    }
  }

  @Test
  void houseByTheLakeHasNoError() {
    assertEquals(List.of(), of(Severity.ERROR, findings("lakeside")));
  }

  @Test
  void houseByTheLakeHasSomethingToSettleAtClosing() {
    assertFalse(of(Severity.WARNING, findings("lakeside")).isEmpty());
  }

  @Test
  void houseByTheLakeHasEveryKindOfSystemOnce() {
    assertEquals(
        List.of(SystemKind.values()),
        read("lakeside").job().orElseThrow().systems().stream()
            .map(HouseSystem::kind)
            .sorted()
            .toList());
  }

  @Test
  void houseByTheLakeHasOneVolumeControl() {
    assertEquals(
        1,
        read("lakeside").job().orElseThrow().places().stream()
            .filter(place -> place.use() == PlaceUse.VOLUME_CONTROL)
            .count());
  }

  @Test
  void flatHasNothingInTheWayOfItsHandover() {
    List<Finding> findings = findings("flat");
    assertEquals(List.of(), of(Severity.ERROR, findings));
    assertEquals(List.of(), of(Severity.WARNING, findings));
  }

  @Test
  void everyMistakeMarkedInTheBrokenRecordIsFoundAtItsLine() throws IOException {
    List<Announced> missed = new ArrayList<>(announced());
    missed.removeAll(findings("broken").stream().map(Announced::by).toList());
    assertEquals(List.of(), missed);
  }

  @Test
  void everyErrorOfTheBrokenRecordIsMarked() throws IOException {
    List<Announced> unmarked =
        new ArrayList<>(
            of(Severity.ERROR, findings("broken")).stream().map(Announced::by).toList());
    unmarked.removeAll(announced());
    assertEquals(List.of(), unmarked);
  }

  private static List<Finding> of(Severity severity, List<Finding> findings) {
    return findings.stream().filter(f -> f.severity() == severity).toList();
  }

  private static List<Announced> announced() throws IOException {
    List<String> lines = Files.readAllLines(JOBS.resolve("broken/job.yaml"));
    List<Announced> announced = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Matcher mark = MARK.matcher(lines.get(i));
      if (mark.matches()) {
        announced.add(new Announced(i + 2, mark.group(1)));
      }
    }
    return announced;
  }

  private static ReadResult read(String job) {
    return new JobReader(TABLES).read(JOBS.resolve(job).resolve("job.yaml"));
  }

  private static List<Finding> findings(String job) {
    ReadResult result = read(job);
    List<Finding> findings = new ArrayList<>(result.findings());
    Checks checks = new Checks(TABLES);
    if (result.job().isPresent()) {
      findings.addAll(checks.check(result.job().get()));
    } else {
      result.soundPart().ifPresent(part -> findings.addAll(checks.checkSoundPart(part)));
    }
    return findings;
  }
}
