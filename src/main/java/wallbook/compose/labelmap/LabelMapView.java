package wallbook.compose.labelmap;

import java.util.List;
import java.util.Optional;
import wallbook.compose.CautionView;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.figure.PhotoView;

/**
 * The label map, ready to print: a plan a floor, a sheet a room, a sheet a head, and the grounds.
 *
 * @param floors storeys from below
 * @param rooms spaces with places or photographs, by floor from below
 * @param heads where cables come home
 * @param grounds outdoor places on a plan; absent if the house has none with a position
 */
public record LabelMapView(
    List<FloorSheet> floors,
    List<RoomSheet> rooms,
    List<HeadSheet> heads,
    Optional<GroundsSheet> grounds,
    List<CautionView> cautions) {

  /** One storey with all its rooms. */
  public record FloorSheet(String name, Drawing plan, Optional<Drawing> legend) {}

  /**
   * One room.
   *
   * @param plan the room from above, if its outline is recorded
   * @param elevations walls that hold a place
   * @param unplaced places whose position is not recorded, by name
   * @param photos what the room looked like, before drywall first
   */
  public record RoomSheet(
      String name,
      String floor,
      Optional<Drawing> plan,
      List<Drawing> elevations,
      Optional<Drawing> legend,
      List<PlaceRow> places,
      List<String> unplaced,
      List<PhotoView> photos) {}

  /** A place of a room with its cables. */
  public record PlaceRow(String name, String kind, String where, List<CableRow> cables) {}

  /** A cable as seen from the place. */
  public record CableRow(
      String label, String cable, String jack, String otherEnd, String state, String tested) {}

  /** A head with its panels. */
  public record HeadSheet(
      String name,
      String where,
      List<PanelSheet> panels,
      List<CableRow> loose,
      List<PhotoView> photos) {}

  /** A panel with a drawing and a line for each port in use. */
  public record PanelSheet(String name, String kind, Drawing map, List<PortRow> ports) {}

  /** A port in use. */
  public record PortRow(
      String port, String label, String cable, String otherEnd, String state, String tested) {}

  /** The grounds with every exterior end. */
  public record GroundsSheet(Optional<Drawing> plan, Optional<Drawing> legend, List<TieRow> ties) {}

  /** An exterior place and how a tape finds it. */
  public record TieRow(
      String name, String space, String ties, String height, String cables, String agreement) {}
}
