package wallbook.compose.page;

import java.util.List;
import java.util.Optional;
import wallbook.compose.figure.PhotoView;
import wallbook.compose.page.RoomCard.CableLine;

/**
 * A place where cables come home, with its panels.
 *
 * @param photos what was photographed of it
 * @param loose cables that end here without a port
 */
public record HeadCard(
    String anchor,
    String name,
    String kind,
    Link room,
    String where,
    List<PhotoView> photos,
    List<PanelCard> panels,
    List<CableLine> loose,
    Optional<String> note) {
  public HeadCard {
    photos = List.copyOf(photos);
    panels = List.copyOf(panels);
    loose = List.copyOf(loose);
  }

  /**
   * A panel as seen from the front.
   *
   * @param rows ports row by row from the top
   */
  public record PanelCard(
      String anchor,
      String name,
      String kind,
      Optional<String> rackUnit,
      List<List<PortView>> rows,
      Optional<String> note) {
    public PanelCard {
      rows = rows.stream().map(List::copyOf).toList();
    }
  }

  /**
   * A port with the cable behind it, or several side by side without a cable that the reader is
   * told of.
   */
  public record PortView(
      String anchor, String number, Sign state, Optional<Link> run, Optional<Link> otherEnd) {}
}
