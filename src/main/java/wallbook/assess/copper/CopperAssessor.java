package wallbook.assess.copper;

import java.util.ArrayList;
import java.util.List;
import wallbook.assess.Assessment;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.record.Run;
import wallbook.record.RunTest;
import wallbook.reference.Tables;

/**
 * Assesses every run of balanced pairs in a job, in service or dark. The subject is always the run.
 * Topics: {@code pairs.test.*} once for each test, the newest test last where the record has it so;
 * {@code pairs.wiring}; {@code pairs.length*}; {@code pairs.ethernet.<application>} and {@code
 * pairs.ethernet.highest}; {@code pairs.poe.class-<n>} and {@code pairs.poe.highest}; {@code
 * pairs.use.<use>}.
 */
public final class CopperAssessor {
  private final TestAssessor tests;
  private final LengthAssessor lengths;
  private final EthernetAssessor ethernet;
  private final PowerAssessor power;
  private final UsesAssessor uses;

  public CopperAssessor(Tables tables) {
    tests = new TestAssessor(tables);
    lengths = new LengthAssessor(tables);
    ethernet = new EthernetAssessor(tables);
    power = new PowerAssessor(tables);
    uses = new UsesAssessor(tables);
  }

  /** Assessments of all balanced-pair runs, in the order of the record; on all processors. */
  public List<Assessment> assess(Job job) {
    return job.runs().parallelStream().flatMap(run -> assess(job, run).stream()).toList();
  }

  /** Assessments of one run; none if it has no balanced pairs. */
  public List<Assessment> assess(Job job, Run run) {
    if (job.cableOf(run).medium() != Medium.BALANCED_PAIR) {
      return List.of();
    }
    List<Assessment> assessments = new ArrayList<>();
    List<JudgedTest> judged = new ArrayList<>();
    for (RunTest test : job.testsOf(run)) {
      judged.add(tests.assess(run, test, job.sweepOf(test)));
    }
    judged.forEach(test -> assessments.addAll(test.parts()));
    tests.wiring(run).ifPresent(assessments::add);
    PairRun pairs = new PairRun(job, run, judged);
    assessments.addAll(lengths.assess(pairs));
    assessments.addAll(ethernet.assess(pairs));
    assessments.addAll(power.assess(pairs));
    assessments.addAll(uses.assess(pairs));
    return assessments;
  }
}
