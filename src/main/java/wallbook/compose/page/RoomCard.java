package wallbook.compose.page;

import java.util.List;
import java.util.Optional;
import wallbook.compose.FactView;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.figure.PhotoView;

/**
 * One room or outdoor area.
 *
 * @param plan the room from above, if a position is recorded in it
 * @param walls walls that hold a place, each seen from inside
 * @param photos what was photographed here
 * @param heads where cables come home, if that is here
 * @param conduits those with an end here
 * @param cautions cautions to read before working here
 */
public record RoomCard(
    String anchor,
    String name,
    String floor,
    Optional<Drawing> plan,
    List<Drawing> walls,
    List<PhotoView> photos,
    List<PlaceCard> places,
    List<Link> heads,
    List<Link> conduits,
    List<Link> cautions,
    Optional<String> note) {
  public RoomCard {
    walls = List.copyOf(walls);
    photos = List.copyOf(photos);
    places = List.copyOf(places);
    heads = List.copyOf(heads);
    conduits = List.copyOf(conduits);
    cautions = List.copyOf(cautions);
  }

  /**
   * A plate, box, ceiling point or exterior end with its cables.
   *
   * @param onPlan whether it is marked on the plan of its room
   * @param facts of an exterior end: its cover, what is coiled there, what stands in the way
   */
  public record PlaceCard(
      String anchor,
      String name,
      Optional<String> label,
      String kind,
      String where,
      boolean onPlan,
      List<FactView> facts,
      List<CableLine> cables,
      Optional<String> note) {
    public PlaceCard {
      facts = List.copyOf(facts);
      cables = List.copyOf(cables);
    }
  }

  /**
   * A cable as seen from where one stands.
   *
   * @param jack jack or port it is on here
   */
  public record CableLine(
      Link run, String cable, Optional<String> jack, Link otherEnd, Sign state) {}
}
