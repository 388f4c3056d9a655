package wallbook.compose.report;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wallbook.compose.Composition;
import wallbook.compose.report.CheckReportView.Group;
import wallbook.compose.report.CheckReportView.Line;
import wallbook.finding.Finding;
import wallbook.finding.Severity;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Composes the check report. */
public final class CheckReportComposer {
  private final List<Finding> findings;
  private final Wording wording;

  public CheckReportComposer(Composition composition) {
    this.findings = composition.findings();
    this.wording = composition.wording();
  }

  /** The report of all findings. */
  public CheckReportView compose() {
    return new CheckReportView(
        summary(findings, wording),
        Arrays.stream(Severity.values()).map(this::group).flatMap(Optional::stream).toList());
  }

  /** How many findings of each severity, in one line. */
  public static String summary(List<Finding> findings, Wording wording) {
    return wording.say(
        Phrase.of(
            "report.summary",
            "errors",
            Phrase.counted("report.errors", count(findings, Severity.ERROR)),
            "warnings",
            Phrase.counted("report.warnings", count(findings, Severity.WARNING)),
            "remarks",
            Phrase.counted("report.remarks", count(findings, Severity.REMARK))));
  }

  private Optional<Group> group(Severity severity) {
    List<Line> lines =
        findings.stream().filter(f -> f.severity() == severity).map(this::line).toList();
    String key = "check-report." + severity.name().toLowerCase(Locale.ROOT);
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Group(wording.say(key + ".heading"), wording.say(key + ".meaning"), lines));
  }

  private Line line(Finding finding) {
    return new Line(
        finding.position().line() + ":" + finding.position().column(),
        finding.name(),
        wording.say(finding.message()),
        finding.found(),
        finding.nearest().or(() -> finding.expected().map(wording::say)),
        wording.say(finding.remedy()));
  }

  private static int count(List<Finding> findings, Severity severity) {
    return (int) findings.stream().filter(f -> f.severity() == severity).count();
  }
}
