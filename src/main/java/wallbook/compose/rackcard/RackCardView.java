package wallbook.compose.rackcard;

import java.util.List;
import java.util.Optional;
import wallbook.compose.ContactView;

/**
 * The card for the rack's door, ready to print on one sheet.
 *
 * @param label one label of the house explained, in a sentence
 * @param heads where cables come home
 * @param more how many panels the sheet has no room for, in words; absent if none
 * @param keep what must stay plugged in
 * @param contacts whom to call
 */
public record RackCardView(
    Optional<String> label,
    List<HeadLines> heads,
    Optional<String> more,
    List<KeepLine> keep,
    List<ContactView> contacts,
    List<String> cautions) {

  /**
   * A head with its panels.
   *
   * @param where space and wall
   */
  public record HeadLines(String name, String where, List<PanelLines> panels) {}

  /**
   * A panel in two lines, or in one where the card would not hold two of each.
   *
   * @param shortName as schedules call it
   * @param name name, kind and number of ports
   * @param holds labels behind its ports, and how many are free
   */
  public record PanelLines(String shortName, String name, Optional<String> holds) {}

  /** A cable that must stay plugged in, and why. */
  public record KeepLine(String label, String why) {}
}
