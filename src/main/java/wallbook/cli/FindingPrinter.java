package wallbook.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import wallbook.finding.Finding;
import wallbook.finding.Severity;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Prints findings for a person at a terminal: place, what, what was expected, the remedy. */
final class FindingPrinter {
  private final Wording wording;

  FindingPrinter(Wording wording) {
    this.wording = wording;
  }

  void print(List<Finding> findings, PrintWriter out) {
    for (Finding finding : findings) {
      out.println(
          finding.position()
              + ": "
              + wording.say("severity." + finding.severity().name().toLowerCase(Locale.ROOT))
              + ": "
              + wording.say(finding.message())
              + " ["
              + finding.name()
              + "]");
      finding.found().ifPresent(f -> out.println("    " + say("report.found", "text", f)));
      finding.expected().ifPresent(e -> out.println("    " + say("report.expected", "text", e)));
      finding.nearest().ifPresent(n -> out.println("    " + say("report.nearest", "text", n)));
      out.println("    " + wording.say(finding.remedy()));
    }
  }

  /** One line that counts them by severity. */
  String summary(List<Finding> findings) {
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

  private static int count(List<Finding> findings, Severity severity) {
    return (int) findings.stream().filter(f -> f.severity() == severity).count();
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
