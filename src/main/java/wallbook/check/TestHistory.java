package wallbook.check;

import java.util.List;
import java.util.stream.IntStream;
import wallbook.record.RunTest;
import wallbook.record.TestKind;
import wallbook.record.TestResult;

/** Which of a run's tests counts. */
final class TestHistory {
  private TestHistory() {}

  /** The latest test; of those of one day the one that stands last in the record. */
  static RunTest latest(List<RunTest> tests) {
    RunTest latest = tests.get(0);
    for (RunTest test : tests) {
      if (!test.date().isBefore(latest.date())) {
        latest = test;
      }
    }
    return latest;
  }

  /** Failed tests that no later test of at least the same depth has made good, in order. */
  static List<RunTest> standingFailures(List<RunTest> tests) {
    return tests.stream()
        .filter(test -> test.result() == TestResult.FAIL)
        .filter(test -> tests.stream().noneMatch(later -> makesGood(later, test, tests)))
        .toList();
  }

  private static boolean makesGood(RunTest later, RunTest failed, List<RunTest> tests) {
    boolean after =
        later.date().isAfter(failed.date())
            || (later.date().equals(failed.date()) && index(tests, later) > index(tests, failed));
    boolean asDeep = later.kind() == failed.kind() || depth(later.kind()) > depth(failed.kind());
    return later.result() == TestResult.PASS && after && asDeep;
  }

  private static int index(List<RunTest> tests, RunTest test) {
    return IntStream.range(0, tests.size())
        .filter(i -> tests.get(i).id().equals(test.id()))
        .findFirst()
        .orElse(-1);
  }

  /** How much a kind of test includes of those before it. */
  private static int depth(TestKind kind) {
    return switch (kind) {
      case TONING -> 0;
      case CONTINUITY, LENGTH, RESISTANCE -> 1;
      case WIRE_MAP -> 2;
      case VERIFICATION -> 3;
      case QUALIFICATION -> 4;
      case CERTIFICATION, LIGHT_SOURCE -> 5;
    };
  }
}
