package wallbook.assess.copper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Count;
import wallbook.record.Job;
import wallbook.record.RunTest;
import wallbook.wording.Phrase;

class WireMapTest {
  private final WireMap wireMap = new WireMap(Jobs.TABLES);

  private static RunTest test(String keys) {
    return PairJobs.job(
            "cat6", "length: 20 m", "date: 2026-04-20, kind: wire_map, result: not_judged, " + keys)
        .tests()
        .get(0);
  }

  private String faults(String keys) {
    return wireMap.faults(test(keys)).orElseThrow().stream()
        .map(fault -> fault.kind() + " " + fault.where())
        .collect(Collectors.joining(", "));
  }

  /** Names as a page of cable-testing definitions gives them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[1, 2, 3, 4, 5, 6, 7, 8] | ''",
        "[1, 2, open, 4, 5, 6, 7, 8] | OPEN 3",
        "[1, 2, open, 4, 5, open, 7, 8] | OPEN 3, OPEN 6",
        "[2, 1, 3, 4, 5, 6, 7, 8] | REVERSED 12",
        "[1, 2, 3, 5, 4, 6, 8, 7] | REVERSED 45, REVERSED 78",
        "[3, 6, 1, 4, 5, 2, 7, 8] | CROSSED 12/36",
        "[6, 3, 1, 4, 5, 2, 7, 8] | CROSSED 12/36",
        "[1, 2, 3, 7, 8, 6, 4, 5] | CROSSED 45/78",
        "[3, 6, 4, 1, 2, 5, 7, 8] | CROSSED 12/36, CROSSED 36/45, CROSSED 45/12",
        "[1, 3, 2, 4, 5, 6, 7, 8] | MISWIRED 1-2 → 1-3, MISWIRED 3-6 → 2-6",
        "[1, 3, open, 4, 5, 6, 7, 8] | MISWIRED 1-2 → 1-3, OPEN 3"
      })
  void eachFaultHasItsName(String map, String expected) {
    assertEquals(expected, faults("wire_map: " + map));
  }

  @Test
  void shortsAndSplitsAreFaultsAsDeclared() {
    assertEquals(
        "SHORT 3-6, SPLIT 36-45",
        faults("wire_map: [1, 2, 3, 4, 5, 6, 7, 8], shorts: [3-6], split_pairs: [36-45]"));
  }

  @Test
  void aFaultTouchesThePairsOfItsPins() {
    assertEquals(Set.of("36"), pairs("wire_map: [1, 2, open, 4, 5, 6, 7, 8]"));
    assertEquals(Set.of("12", "36"), pairs("shorts: [2-3]"));
    assertEquals(Set.of("36", "45"), pairs("split_pairs: [36-45]"));
    assertEquals(Set.of("12", "36"), pairs("wire_map: [3, 6, 1, 4, 5, 2, 7, 8]"));
    assertEquals(Set.of("12", "36"), pairs("wire_map: [1, 3, 2, 4, 5, 6, 7, 8]"));
  }

  @Test
  void aSplitThatNamesNoPairTouchesAll() {
    assertEquals(Set.of("12", "36", "45", "78"), pairs("split_pairs: [somewhere]"));
  }

  private Set<String> pairs(String keys) {
    return wireMap.faults(test(keys)).orElseThrow().stream()
        .flatMap(fault -> fault.pairs().stream())
        .collect(Collectors.toSet());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[1, 2, 3, 4, 5, 6, 7]",
        "[1, 2, 3, 4, 5, 6, 7, 8, 9]",
        "[1, 2, 3, 4, 5, 6, 7, 9]",
        "[1, 2, 3, 4, 5, 6, 7, cut]"
      })
  void aMapThatIsNotOfEightPinsIsNotGuessedAt(String map) {
    assertTrue(wireMap.faults(test("wire_map: " + map)).isEmpty());
  }

  @Test
  void upperCaseOpenIsOpen() {
    assertEquals("OPEN 8", faults("wire_map: [1, 2, 3, 4, 5, 6, 7, Open]"));
  }

  private static Job tested(String keys) {
    return PairJobs.job(
        "cat6", "length: 20 m", "date: 2026-04-20, kind: wire_map, result: pass, " + keys);
  }

  @Test
  void aStraightMapIsWithin() {
    Assessment assessment =
        PairJobs.only(tested("wire_map: [1, 2, 3, 4, 5, 6, 7, 8]"), "pairs.test.wire-map");
    assertEquals(Verdict.WITHIN, assessment.verdict());
    assertEquals(new Count(0), assessment.value().orElseThrow());
    assertEquals("pairs.wire.straight", assessment.limitedBy().orElseThrow().key());
  }

  @Test
  void withoutCrosstalkSplitPairsAreNotRuledOut() {
    Assessment assessment =
        PairJobs.only(tested("wire_map: [1, 2, 3, 4, 5, 6, 7, 8]"), "pairs.test.wire-map");
    assertTrue(keys(assessment.assumptions()).contains("pairs.wire.split-not-ruled-out"));
    Assessment measured =
        PairJobs.only(
            tested(
                "wire_map: [1, 2, 3, 4, 5, 6, 7, 8], worst: [{parameter: next, margin: 4 dB}],"
                    + PairJobs.LIMIT_SIX),
            "pairs.test.wire-map");
    assertTrue(measured.assumptions().isEmpty());
  }

  @Test
  void everyFaultIsNamedAndCounted() {
    Assessment assessment =
        PairJobs.only(
            tested("wire_map: [2, 1, open, 4, 5, 6, 7, 8], shorts: [7-8]"), "pairs.test.wire-map");
    assertEquals(Verdict.BEYOND, assessment.verdict());
    assertEquals(new Count(3), assessment.value().orElseThrow());
    assertEquals("pairs.list", assessment.limitedBy().orElseThrow().key());
  }

  @Test
  void faultsWithoutAMapSaySo() {
    Assessment assessment = PairJobs.only(tested("shorts: [7-8]"), "pairs.test.wire-map");
    assertEquals(Verdict.BEYOND, assessment.verdict());
    assertTrue(keys(assessment.assumptions()).contains("pairs.wire.pins-not-recorded"));
  }

  @Test
  void anUnreadableMapIsNotStated() {
    Assessment assessment = PairJobs.only(tested("wire_map: [1, 2, 3]"), "pairs.test.wire-map");
    assertEquals(List.of("pairs.missing.wire-map"), keys(assessment.missing()));
  }

  @Test
  void aTestWithoutPinsHasNoWireMap() {
    assertTrue(PairJobs.any(tested("length: 20 m"), "pairs.test.wire-map").isEmpty());
  }

  private static List<String> keys(List<Phrase> phrases) {
    return phrases.stream().map(Phrase::key).toList();
  }
}
