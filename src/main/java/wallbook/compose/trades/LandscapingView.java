package wallbook.compose.trades;

import java.util.List;
import java.util.Optional;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.result.SourceView;

/**
 * The landscaper's sheet.
 *
 * @param plan the grounds with the ends that are his; absent if none has a position
 * @param ends exterior cable ends
 * @param ducts conduits that run outside
 * @param buried cables that lie in the ground without a conduit
 */
public record LandscapingView(
    TradeHead head,
    Optional<Drawing> plan,
    Optional<Drawing> legend,
    List<ExteriorEnd> ends,
    List<Duct> ducts,
    List<Buried> buried,
    List<String> assumed,
    List<SourceView> sources) {

  /** An exterior end with what is to be known of it. */
  public record ExteriorEnd(String name, String area, List<FactLines> facts) {}

  /** A conduit that runs outside. */
  public record Duct(
      String label, String name, String from, String to, String length, String state) {}

  /** A cable in the ground. */
  public record Buried(String label, String from, String to, String length) {}
}
