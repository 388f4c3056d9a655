package wallbook.compose.trades;

import java.util.List;
import java.util.Optional;

/**
 * The builder's sheet.
 *
 * @param walls notes on rooms that say what lies in their walls
 * @param blanks plates without sockets that stay where they are
 * @param hidden what waits behind a finished surface
 * @param seals where low-voltage wiring passes fire-rated walls and floors, and how it is sealed
 * @param conduits conduits that are crushed, blocked or never proved
 * @param exceptions what is not as promised
 */
public record BuilderView(
    TradeHead head,
    List<Row> walls,
    List<Row> blanks,
    List<Row> hidden,
    List<Row> seals,
    List<ConduitRow> conduits,
    List<ExceptionRow> exceptions) {

  /** Something, where it is, and what is to be known of it. */
  public record Row(String name, String where, String note) {}

  /** A conduit that can't be relied on. */
  public record ConduitRow(
      String label, String name, String from, String to, String state, String note) {}

  /** Something that is not as promised. */
  public record ExceptionRow(
      String what, String kind, Optional<String> standsIn, String state, Optional<String> note) {}
}
