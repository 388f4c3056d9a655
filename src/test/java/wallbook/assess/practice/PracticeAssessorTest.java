package wallbook.assess.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.assess.Verdict;
import wallbook.quantity.Count;
import wallbook.reference.Standing;

/**
 * Counts by the custom for televisions: three four-pair cables, one of them 6A (common practice, no
 * source).
 */
class PracticeAssessorTest {
  private static final String HOUSE =
      """
      floors:
        - {id: ground, name: Ground floor, level: 0, elevation: 0 ft}
      spaces:
        - {id: den, name: Den, floor: ground, kind: living}
        - {id: util, name: Utility, floor: ground, kind: utility}
      heads:
        - {id: rack, name: Rack, kind: rack, space: util}
      places:
        - {id: tv, name: Television, space: den, kind: wall_plate, use: television}
      runs:
        - {id: a, label: A, cable: cat6, from: {head: rack, finish: terminated}, to: {place: tv, finish: terminated}, condition: in_service}
        - {id: b, label: B, cable: cat6a, from: {head: rack, finish: coiled}, to: {place: tv, finish: coiled}, condition: dark, dark_reason: later}
        - {id: c, label: C, cable: cat6, from: {head: rack, finish: cut}, to: {place: tv, finish: cut}, condition: damaged}
      """;

  @Test
  void darkCablesCountAndDamagedOnesDoNot() {
    Assessment pairs = find(HOUSE, "practice.television.pairs").orElseThrow();

    assertEquals(Optional.of(Count.of(2)), pairs.value());
    assertEquals(Optional.of(Count.of(3)), pairs.limit());
    assertEquals(Optional.of(Count.of(-1)), pairs.margin());
  }

  @Test
  void lessThanUsualIsNeverAFault() {
    assertTrue(assess(HOUSE).stream().allMatch(a -> a.verdict() == Verdict.INFORMATION));
  }

  @Test
  void theFigureIsMarkedAsCustom() {
    assertEquals(
        Standing.COMMON_PRACTICE,
        find(HOUSE, "practice.television.pairs_cat6a").orElseThrow().source().standing());
  }

  @Test
  void theRecordsOwnCountGoesBeforeTheTables() {
    String own = HOUSE + "provisions: [{use: television, group: pairs, count: 2}]\n";

    assertEquals(
        Optional.of(Count.of(0)), find(own, "practice.television.pairs").orElseThrow().margin());
  }

  @Test
  void aCountOfNoneAsksForNothing() {
    String own = HOUSE + "provisions: [{use: television, group: coax, count: 0}]\n";

    assertFalse(find(own, "practice.television.coax").isPresent());
  }

  @Test
  void aConduitInTheSameSpaceStandsForFibreUnlessItIsCrushed() {
    String conduit =
        HOUSE
            + """
            conduits:
              - {id: c1, label: C-01, name: To the den, type: ent, trade_size: 1-1/4, from: {head: rack}, to: {space: den}, pull_string: both_ends, condition: clear}
            """;

    assertEquals(
        Optional.of(Count.of(1)),
        find(conduit, "practice.television.fibre_or_conduit").orElseThrow().value());
    assertEquals(
        Optional.of(Count.of(0)),
        find(
                conduit.replace("condition: clear", "condition: crushed"),
                "practice.television.fibre_or_conduit")
            .orElseThrow()
            .value());
  }

  private static List<Assessment> assess(String yaml) {
    return new PracticeAssessor(Jobs.TABLES).assess(Jobs.job(yaml));
  }

  private static Optional<Assessment> find(String yaml, String topic) {
    return new Assessments(assess(yaml)).find("tv", topic);
  }
}
