package wallbook.compose.report;

import java.util.List;
import java.util.Optional;

/**
 * The check report: everything that was found in the record.
 *
 * @param summary how many findings of each severity
 * @param groups findings by severity, the gravest first; without the empty ones
 */
public record CheckReportView(String summary, List<Group> groups) {

  /** The findings of one severity. */
  public record Group(String severity, String meaning, List<Line> lines) {}

  /** One finding. */
  public record Line(
      String place,
      String name,
      String message,
      Optional<String> found,
      Optional<String> expected,
      String remedy) {}
}
