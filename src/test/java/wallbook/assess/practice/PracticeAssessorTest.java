package wallbook.assess.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

  /** Every group counts its own cables and no others; two of each kind end at the place. */
  @ParameterizedTest
  @CsvSource({
    "pairs, 4",
    "pairs_cat6a, 2",
    "coax, 2",
    "fibre, 2",
    "speaker_conductors, 6",
    "control_or_pairs, 6",
    "conduit, 0",
    "fibre_or_conduit, 2"
  })
  void eachGroupCountsItsOwnCables(String group, int count) {
    StringBuilder yaml = new StringBuilder(PLACE);
    int number = 0;
    for (String cable :
        List.of("cat6", "cat6a", "series-6", "om3-2", "speaker-16-2", "control-22-4")) {
      for (int i = 0; i < 2; i++) {
        // The second speaker cable has four conductors, so that conductors count and not cables.
        String type = cable.equals("speaker-16-2") && i == 1 ? "speaker-16-4" : cable;
        yaml.append(
            "  - {id: r%d, label: R%d, cable: %s, from: {head: rack, finish: terminated}, to: {place: it, finish: terminated}, condition: in_service}%n"
                .formatted(number, number, type));
        number++;
      }
    }
    yaml.append("provisions: [{use: other, group: %s, count: 9}]%n".formatted(group));

    Assessment found =
        new Assessments(assess(yaml.toString()))
            .find("it", "practice.other." + group)
            .orElseThrow();
    assertEquals(Optional.of(Count.of(count)), found.value());
    assertEquals(Optional.of(Count.of(count - 9)), found.margin());
  }

  /**
   * A conduit counts by its place, by a place of the same space, by the space, or by a head in it.
   */
  @ParameterizedTest
  @CsvSource({
    "'{place: it}, to: {place: far}', clear, 1",
    "'{place: far}, to: {place: beside}', clear, 1",
    "'{place: far}, to: {space: den}', unknown, 1",
    "'{place: far}, to: {head: inden}', clear, 1",
    "'{place: far}, to: {head: rack}', clear, 0",
    "'{space: util}, to: {place: far}', clear, 0",
    "'{place: it}, to: {place: far}', blocked, 0",
    "'{place: it}, to: {place: far}', crushed, 0"
  })
  void aConduitCountsWhereItReachesTheSpace(String ends, String condition, int count) {
    String yaml =
        PLACE.replace("runs:\n", "")
            + """
            conduits:
              - {id: c1, label: C-01, name: Spare, type: ent, trade_size: "1", from: %s, pull_string: none, condition: %s}
            provisions: [{use: other, group: conduit, count: 1}]
            """
                .formatted(ends, condition);

    assertEquals(
        Optional.of(Count.of(count)),
        new Assessments(assess(yaml)).find("it", "practice.other.conduit").orElseThrow().value());
  }

  private static final String PLACE =
      """
      floors:
        - {id: ground, name: Ground floor, level: 0, elevation: 0 ft}
      spaces:
        - {id: den, name: Den, floor: ground, kind: living}
        - {id: util, name: Utility, floor: ground, kind: utility}
      heads:
        - {id: rack, name: Rack, kind: rack, space: util}
        - {id: inden, name: Small rack, kind: rack, space: den}
      places:
        - {id: it, name: It, space: den, kind: wall_plate, use: other}
        - {id: beside, name: Beside it, space: den, kind: wall_plate, use: fixed_device}
        - {id: far, name: Far, space: util, kind: wall_plate, use: fixed_device}
      runs:
      """;

  private static List<Assessment> assess(String yaml) {
    return new PracticeAssessor(Jobs.TABLES).assess(Jobs.job(yaml));
  }

  private static Optional<Assessment> find(String yaml, String topic) {
    return new Assessments(assess(yaml)).find("tv", topic);
  }
}
