package wallbook.check;

import java.util.List;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.record.Job;
import wallbook.reference.Tables;

/**
 * All checks of a job. Errors and warnings stand in the way of a handover, in this order; remarks
 * don't.
 *
 * <pre>{@code List<Finding> findings = new Checks(new Tables()).check(job);}</pre>
 */
public final class Checks {
  private final List<Check> checks;

  /**
   * @param tables where limits lie
   */
  public Checks(Tables tables) {
    CheckFigures figures = new CheckFigures(tables);
    this.checks =
        List.of(
            new LabelChecks(figures),
            new PortChecks(),
            new FitChecks(tables),
            new OutlineChecks(figures),
            new PlaceChecks(figures),
            new RunChecks(),
            new RunGapChecks(),
            new TestChecks(),
            new TestedRunChecks(figures),
            new DateChecks(figures),
            new EnvironmentChecks(tables),
            new ConduitChecks(tables),
            new ConduitGapChecks(),
            new BendChecks(tables, figures),
            new StubOutChecks(tables, figures),
            new TieChecks(tables),
            new FibreChecks(),
            new CableChecks(),
            new CableGapChecks(),
            new ZoneChecks(),
            new GapChecks(),
            new ExceptionChecks(),
            new JobFactChecks(),
            new LookChecks(tables, figures),
            new PhotoChecks(),
            new OpeningChecks(figures),
            new PositionGapChecks(figures),
            new StraightLineChecks(tables),
            new PlausibleChecks(tables));
  }

  /** Everything found in a job that was read whole, in report order; uses all processors. */
  public List<Finding> check(Job job) {
    return run(job, checks);
  }

  /**
   * The errors alone of a job that was read whole, in report order: for those who answer from a
   * sound record and have no use for its gaps.
   */
  public List<Finding> errors(Job job) {
    return run(job, checks.stream().filter(Check::findsErrors).toList()).stream()
        .filter(finding -> finding.severity() == Severity.ERROR)
        .toList();
  }

  /**
   * What is found in the sound part of a record with mistakes, in report order. Gaps are not
   * reported: what seems to be missing may stand in the part that could not be read.
   */
  public List<Finding> checkSoundPart(Job job) {
    return run(job, checks.stream().filter(c -> !c.needsWholeRecord()).toList());
  }

  private static List<Finding> run(Job job, List<Check> chosen) {
    Findings findings = new Findings();
    chosen.parallelStream().map(check -> found(check, job)).toList().forEach(findings::addAll);
    return findings.inReportOrder();
  }

  private static List<Finding> found(Check check, Job job) {
    Findings own = new Findings();
    check.look(job, own);
    return own.inReportOrder();
  }
}
