package wallbook.assess.fibre;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Count;
import wallbook.quantity.Wavelength;
import wallbook.record.FibreClass;
import wallbook.record.RunTest;
import wallbook.record.TestKind;
import wallbook.record.TestResult;
import wallbook.reference.Source;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Whether a link may be called tested: both ends terminated, and every fibre read at every test
 * wavelength of its kind. A fibre without connectors can be shown continuous by light; no loss of a
 * link can be read on it.
 */
final class TestedJudge {
  private final LinkLosses losses;
  private final TestMethods methods;

  TestedJudge(Tables tables, LinkLosses losses) {
    this.losses = losses;
    methods = new TestMethods(tables);
  }

  /**
   * @param tests of the link's run, whatever their kind
   */
  Optional<Assessment> judge(FibreLink link, List<RunTest> tests) {
    return link.fibreClass().map(fibreClass -> judge(link, fibreClass, tests));
  }

  private Assessment judge(FibreLink link, FibreClass fibreClass, List<RunTest> tests) {
    Assessment.Builder result =
        Assessment.of(link.id(), "fibre.tested", Phrase.of("fibre.asked.tested"));
    Source source = methods.source(fibreClass.isSingleMode());
    latest(tests, TestKind.CONTINUITY)
        .filter(test -> test.result() == TestResult.PASS)
        .ifPresent(
            test -> result.assuming(Phrase.of("fibre.assume.continuous", "date", test.date())));
    if (!link.terminated()) {
      if (tests.stream().anyMatch(test -> !test.losses().isEmpty())) {
        result.assuming(Phrase.of("fibre.assume.readings-ignored"));
      }
      return result.notStated(
          List.of(Phrase.of("fibre.missing.termination"), Phrase.of("fibre.missing.test")), source);
    }
    Optional<RunTest> failed =
        latest(tests, TestKind.LIGHT_SOURCE).filter(t -> t.result() == TestResult.FAIL);
    if (failed.isPresent()) {
      return result
          .limitedBy(Phrase.of("fibre.limit.test-failed", "date", failed.get().date()))
          .verdict(Verdict.BEYOND, source);
    }
    if (link.readings().isEmpty()) {
      return result.notStated(List.of(Phrase.of("fibre.missing.test")), source);
    }
    if (link.fibres().isEmpty()) {
      return result.notStated(List.of(Phrase.of("fibre.missing.count")), source);
    }
    int fibres = link.fibres().get();
    List<Phrase> missing = missing(link, fibreClass, fibres);
    if (!missing.isEmpty()) {
      return result.notStated(missing, source);
    }
    return result
        .value(Count.of(fibres))
        .limit(Count.of(fibres), Count.of(0))
        .limitedBy(Phrase.counted("fibre.limit.all-tested", fibres))
        .verdict(Verdict.WITHIN, source);
  }

  private List<Phrase> missing(FibreLink link, FibreClass fibreClass, int fibres) {
    List<Phrase> missing = new ArrayList<>();
    for (Wavelength wavelength : methods.wavelengths(fibreClass.isSingleMode())) {
      Set<Integer> read = new HashSet<>();
      for (Reading reading : losses.all(link, wavelength)) {
        reading.loss().fibre().ifPresent(read::add);
      }
      int unread = 0;
      for (int fibre = 1; fibre <= fibres; fibre++) {
        unread += read.contains(fibre) ? 0 : 1;
      }
      if (unread > 0) {
        missing.add(Phrase.counted("fibre.missing.readings", unread, "wavelength", wavelength));
      }
      if (losses.latest(link, wavelength).stream().anyMatch(LinkLosses::isImpossible)) {
        missing.add(Phrase.of("fibre.missing.possible-reading"));
      }
    }
    return missing;
  }

  private static Optional<RunTest> latest(List<RunTest> tests, TestKind kind) {
    return tests.stream()
        .filter(test -> test.kind() == kind)
        .reduce((earlier, later) -> later.date().isBefore(earlier.date()) ? earlier : later);
  }
}
