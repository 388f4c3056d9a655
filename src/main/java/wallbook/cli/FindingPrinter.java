package wallbook.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import wallbook.compose.report.CheckReportComposer;
import wallbook.finding.Finding;
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

  /** Why something was refused: the findings, and how many there are. */
  void printRefusal(List<Finding> findings, PrintWriter err) {
    print(findings, err);
    err.println(summary(findings));
  }

  /** One line that counts them by severity. */
  String summary(List<Finding> findings) {
    return CheckReportComposer.summary(findings, wording);
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
