package wallbook.compose.asbuilt;

import java.util.List;
import wallbook.compose.FactView;
import wallbook.compose.drawing.Drawing;

/**
 * Test results beside their limits.
 *
 * @param figures how many runs were tested how
 * @param failed tests that failed, the latest of a run marked
 * @param certified tests of balanced pairs judged by a category's limits
 * @param parameters heads of the certified tests' columns
 * @param sweeps the worst quantity of each full sweep
 * @param losses optical losses beside their budget
 * @param readings every optical loss as it was read
 * @param measured other tests with a figure
 * @param plain tests without a figure, alike together
 * @param untested runs without any test
 * @param instruments what was tested with
 */
public record TestsView(
    List<FactView> figures,
    List<FailedRow> failed,
    List<String> parameters,
    List<CertifiedRow> certified,
    List<Sweep> sweeps,
    List<LossRow> losses,
    List<ReadingRow> readings,
    List<MeasuredRow> measured,
    List<PlainRow> plain,
    List<UntestedRow> untested,
    List<InstrumentRow> instruments) {

  /** A failed test and what came after. */
  public record FailedRow(
      String label, String kind, String date, String what, String judged, String since) {}

  /**
   * A certification.
   *
   * @param cells one for each parameter
   */
  public record CertifiedRow(
      String label, String date, String limit, String result, String verdict, List<Cell> cells) {}

  /** A quantity: margin, value beside limit, where, number of the source. */
  public record Cell(String margin, String value, String where, String source) {}

  /** A plotted sweep. */
  public record Sweep(String caption, Drawing plot) {}

  /** An optical loss beside its budget. */
  public record LossRow(
      String label,
      String asked,
      String value,
      String limit,
      String margin,
      String verdict,
      String decides,
      String source) {}

  /** An optical loss as read. */
  public record ReadingRow(
      String label, String date, String fibre, String wavelength, String direction, String loss) {}

  /** A test with figures that is no certification. */
  public record MeasuredRow(
      String label,
      String kind,
      String date,
      String result,
      String wireMap,
      String length,
      String resistance,
      String margin,
      String source) {}

  /** Tests without figures. */
  public record PlainRow(
      String kind, String date, String result, String instrument, String labels) {}

  /** Runs without a test, by their state. */
  public record UntestedRow(String state, String labels) {}

  /** An instrument. */
  public record InstrumentRow(String name, String calibrated, String used, String tests) {}
}
