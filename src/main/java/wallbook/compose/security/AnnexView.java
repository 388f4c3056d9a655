package wallbook.compose.security;

import java.util.List;
import java.util.Optional;
import wallbook.compose.CautionView;
import wallbook.compose.ContactView;
import wallbook.compose.FactView;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.result.SourceView;

/**
 * The owner's security annex, ready to print.
 *
 * @param figures devices by kind and state
 * @param systems what security and cameras do today
 * @param plans floors with the number of each device at its place
 * @param kinds devices by kind
 * @param panels where their cables come home
 * @param replaced what is not as promised, and what stands in for it
 * @param blindSides what the record says of what a camera does not see
 * @param assumed what computed answers take for granted
 */
public record AnnexView(
    List<FactView> figures,
    List<SystemLines> systems,
    List<Plan> plans,
    List<Kind> kinds,
    List<PanelLines> panels,
    List<Replaced> replaced,
    List<String> blindSides,
    List<ContactView> contacts,
    List<CautionView> cautions,
    List<String> assumed,
    List<SourceView> sources) {

  /** A system in the words used with the owner. */
  public record SystemLines(
      String name,
      Optional<String> works,
      Optional<String> later,
      Optional<String> demonstrated,
      Optional<String> note) {}

  /** A floor and its drawing. */
  public record Plan(String floor, Drawing drawing) {}

  /** All devices of one kind. */
  public record Kind(String name, List<Device> devices) {}

  /**
   * A device.
   *
   * @param number as on the plans
   * @param cables its cables; empty for one without a wire
   */
  public record Device(
      String number,
      String name,
      String room,
      String where,
      Optional<String> note,
      List<Wire> cables) {}

  /**
   * A cable of a device.
   *
   * @param home where it comes home
   * @param computed its supply or power, each answer in a line
   */
  public record Wire(
      String label,
      String cable,
      String home,
      String length,
      String state,
      String tested,
      List<String> computed) {}

  /** A panel that the cables come home to. */
  public record PanelLines(String name, String where, Optional<String> note, List<Port> ports) {}

  /** A port or terminal in use. */
  public record Port(String panel, String port, String label, String device) {}

  /** Something that is not as promised. */
  public record Replaced(
      String what, String kind, String standsIn, String state, Optional<String> note) {}
}
