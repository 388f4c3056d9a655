package wallbook.compose.asbuilt;

import java.util.List;
import java.util.Optional;

/**
 * What each run may carry, each statement with limit, margin and source.
 *
 * @param groups runs of pairs and of fibre with the same results
 * @param otherUses what pairs may carry besides, runs with the same results together
 * @param fibreFigures budgets, usual losses and round-trip times of fibre runs
 * @param coax losses of coaxial runs by use: reception and data, then cellular repeaters
 * @param coaxLengths lengths of coaxial runs against their limit
 * @param speakers speaker lines at their loads
 * @param supplies low-voltage supplies at the loads recorded
 * @param wires wires that may become a supply, no load being recorded
 * @param marks whether cables are marked for where they lie
 */
public record CapacityView(
    List<Group> groups,
    List<Group> otherUses,
    Optional<Matrix> fibreFigures,
    List<Matrix> coax,
    List<SharedRow> coaxLengths,
    Optional<Matrix> speakers,
    Optional<Matrix> supplies,
    Optional<Matrix> wires,
    List<SharedRow> marks) {

  /**
   * Runs with the same results.
   *
   * @param code how schedules refer to it
   * @param runs their labels
   * @param assumptions what all of them take for granted
   * @param varying how many further assumptions differ from run to run, in words; absent if none
   */
  public record Group(
      String code,
      String runs,
      List<GroupRow> rows,
      List<String> assumptions,
      Optional<String> varying) {}

  /**
   * One result of a group.
   *
   * @param margin the least of all its runs
   * @param at label of the run with the least margin
   */
  public record GroupRow(
      String asked,
      String verdict,
      String value,
      String limit,
      String margin,
      String at,
      String decides,
      String source) {}

  /** One result that several runs share. */
  public record SharedRow(
      String asked,
      String verdict,
      String margin,
      String decides,
      String runs,
      List<String> assumptions,
      String source) {}

  /**
   * Results of many runs for several questions.
   *
   * @param code how schedules refer to it
   * @param columns the questions
   * @param reasons whether what decides is worth a column
   * @param assumptions what the results take for granted
   */
  public record Matrix(
      String code,
      List<Column> columns,
      boolean reasons,
      List<MatrixRow> rows,
      List<String> assumptions) {}

  /** A question of a matrix, with the numbers of its sources. */
  public record Column(String asked, String sources) {}

  /**
   * A run of a matrix.
   *
   * @param use what it feeds
   * @param decides what decides its results
   * @param cells an answer for each question: value, margin to the limit and verdict
   */
  public record MatrixRow(
      String label, String use, String cable, String length, String decides, List<String> cells) {}
}
