package wallbook.assess.copper;

import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.record.PairCategory;
import wallbook.record.RunTest;

/**
 * A test with what it comes to.
 *
 * @param parts what was judged of it, one by one, the whole last
 * @param whole verdict of the whole
 * @param faults of the wire map
 * @param lower category below that of the limit that a failing sweep meets in full
 */
record JudgedTest(
    RunTest test,
    List<Assessment> parts,
    Verdict whole,
    List<WireFault> faults,
    Optional<PairCategory> lower) {
  JudgedTest {
    parts = List.copyOf(parts);
    faults = List.copyOf(faults);
  }
}
