package wallbook.compose.trades;

import java.util.List;
import java.util.Optional;
import wallbook.compose.FactView;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.result.SourceView;

/**
 * The service provider's sheet.
 *
 * @param points where a provider's lines end
 * @param conduits conduits that reach such a point
 * @param singleMode what the house's fibre says to a provider's: single-mode links with their share
 *     of a provider's loss, and joins of another class
 */
public record EntranceView(
    TradeHead head,
    List<Point> points,
    List<SpareConduit> conduits,
    List<String> singleMode,
    boolean hasSingleMode,
    List<String> assumed,
    List<SourceView> sources) {

  /**
   * A point where a provider's lines end.
   *
   * @param panels name and ports of its panels
   */
  public record Point(
      String name, String where, Optional<String> note, List<String> panels, List<Line> lines) {}

  /** A cable of the house that begins or ends there. */
  public record Line(
      String label,
      String cable,
      String here,
      String otherEnd,
      String length,
      String state,
      String tested) {}

  /** A conduit that a provider may use. */
  public record SpareConduit(
      String label,
      String name,
      Optional<Drawing> section,
      List<FactView> facts,
      Optional<String> path,
      List<String> answers) {}
}
