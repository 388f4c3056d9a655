package wallbook.compose.trades;

import java.util.List;
import wallbook.compose.result.SourceView;

/**
 * The electrician's sheet.
 *
 * @param heads where low-voltage equipment stands
 * @param equipment places made for equipment that is plugged into an outlet
 * @param supplies low-voltage supplies and what they feed
 * @param bonding what is or has to be bonded
 * @param conduits conduits that never take mains, by label and name
 * @param tasks what the record leaves to the electrician
 */
public record ElectricalView(
    TradeHead head,
    List<Equipment> heads,
    List<Equipment> equipment,
    List<Supply> supplies,
    List<Equipment> bonding,
    List<String> conduits,
    List<String> tasks,
    List<String> assumed,
    List<SourceView> sources) {

  /** Something with its place and what is noted of it. */
  public record Equipment(String name, String where, String note) {}

  /**
   * A low-voltage supply.
   *
   * @param from where the supply stands
   * @param answers the class of the source, the voltage at the far end, the drop
   */
  public record Supply(
      String label, String serves, String from, String to, String load, List<String> answers) {}
}
