package wallbook.compose.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.RunTest;

/**
 * One test of a run of balanced pairs with what was found of it.
 *
 * @param parts its quantities in the order they were judged, without the whole
 * @param whole what the test comes to; absent where tests of the run are not judged as tests
 */
public record TestParts(RunTest test, List<Assessment> parts, Optional<Assessment> whole) {
  private static final String PREFIX = "pairs.test.";
  private static final String WHOLE = "pairs.test.result";

  public TestParts {
    parts = List.copyOf(parts);
  }

  /**
   * The tests of a run in the order of the record. Assessments of balanced pairs come test by test,
   * each test's ending with the whole of it.
   */
  public static List<TestParts> of(Job job, Run run, Assessments assessments) {
    List<List<Assessment>> groups = new ArrayList<>();
    List<Assessment> group = new ArrayList<>();
    for (Assessment assessment : assessments.of(run.id(), PREFIX)) {
      group.add(assessment);
      if (assessment.topic().equals(WHOLE)) {
        groups.add(group);
        group = new ArrayList<>();
      }
    }
    List<RunTest> tests = job.testsOf(run);
    List<TestParts> all = new ArrayList<>();
    for (int i = 0; i < tests.size(); i++) {
      List<Assessment> its = i < groups.size() ? groups.get(i) : List.of();
      all.add(
          its.isEmpty()
              ? new TestParts(tests.get(i), List.of(), Optional.empty())
              : new TestParts(
                  tests.get(i),
                  its.subList(0, its.size() - 1),
                  Optional.of(its.get(its.size() - 1))));
    }
    return all;
  }

  /** The part with the given topic behind {@code pairs.test.}, if the test has it. */
  public Optional<Assessment> part(String name) {
    return parts.stream().filter(part -> part.topic().equals(PREFIX + name)).findFirst();
  }
}
