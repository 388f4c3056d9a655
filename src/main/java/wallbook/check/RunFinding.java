package wallbook.check;

import wallbook.finding.Finding;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;
import wallbook.record.Run;

/** Findings about a run; their words call it by its label. */
final class RunFinding {
  private RunFinding() {}

  /**
   * A finding about a run.
   *
   * @param namesAndValues what else its words tell, as in {@link Finding#of}
   */
  static Finding of(
      Severity severity, String name, SourcePosition position, Run run, Object... namesAndValues) {
    Object[] all = new Object[namesAndValues.length + 2];
    all[0] = "run";
    all[1] = run.label();
    System.arraycopy(namesAndValues, 0, all, 2, namesAndValues.length);
    return Finding.of(severity, name, position, all);
  }
}
