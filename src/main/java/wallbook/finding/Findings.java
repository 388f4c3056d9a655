package wallbook.finding;

import java.util.ArrayList;
import java.util.List;

/**
 * Collects findings, so that a stage reports all of them at once. Not for use by several threads.
 */
public final class Findings {
  private final List<Finding> collected = new ArrayList<>();

  public void add(Finding finding) {
    collected.add(finding);
  }

  public void addAll(List<Finding> findings) {
    collected.addAll(findings);
  }

  public boolean hasErrors() {
    return collected.stream().anyMatch(f -> f.severity() == Severity.ERROR);
  }

  /** All findings so far, in {@linkplain Finding#REPORT_ORDER report order}. */
  public List<Finding> inReportOrder() {
    return collected.stream().sorted(Finding.REPORT_ORDER).distinct().toList();
  }
}
