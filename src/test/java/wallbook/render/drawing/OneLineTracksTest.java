package wallbook.render.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import wallbook.compose.drawing.Frame;
import wallbook.compose.drawing.OneLine;
import wallbook.compose.drawing.OneLine.Link;
import wallbook.compose.drawing.OneLine.LinkKind;
import wallbook.compose.drawing.SymbolKind;

class OneLineTracksTest {
  private static final int FLOORS = 8;

  /** A house of eight floors with one node each, and lines between floors by their numbers. */
  private static OneLine house(List<Integer> ends) {
    List<OneLine.Band> bands = new ArrayList<>();
    for (int floor = 0; floor < FLOORS; floor++) {
      OneLine.Node node =
          new OneLine.Node("n" + floor, SymbolKind.RACK, "Node " + floor, List.of());
      bands.add(new OneLine.Band("Floor " + floor, List.of(node)));
    }
    List<Link> links = new ArrayList<>();
    for (int i = 0; i + 1 < ends.size(); i += 2) {
      links.add(new Link("n" + ends.get(i), "n" + ends.get(i + 1), LinkKind.CONDUIT, "Line " + i));
    }
    return new OneLine(Frame.pageWide("House", "A house.", 190), bands, links);
  }

  @Property(tries = 200)
  void noTwoLinesOnATrackHaveARowInCommon(
      @ForAll @Size(min = 2, max = 40) List<@IntRange(max = FLOORS - 1) Integer> ends) {
    OneLine house = house(ends);
    OneLineTracks tracks = OneLineTracks.of(house, 3);
    List<Link> links = house.links();
    for (int i = 0; i < links.size(); i++) {
      for (int j = i + 1; j < links.size(); j++) {
        if (!within(links.get(i)) && !within(links.get(j)) && tracks.of(i) == tracks.of(j)) {
          assertTrue(
              high(links.get(i)) < low(links.get(j)) || high(links.get(j)) < low(links.get(i)));
        }
      }
    }
  }

  @Test
  void linesThatDoNotMeetShareATrack() {
    OneLineTracks tracks = OneLineTracks.of(house(List.of(0, 1, 2, 3, 4, 6, 0, 7)), 3);
    assertEquals(List.of(0, 0, 0, 1), tracks.tracks());
    assertEquals(2, tracks.count());
  }

  @Test
  void aDiagramOfManyLinesKeepsToItsHeight() {
    List<Integer> ends = new ArrayList<>();
    for (int i = 0; i < 18; i++) {
      ends.add(i % FLOORS);
      ends.add((i * 3 + 1) % FLOORS);
    }
    String svg = new DrawingSvg().svg(house(ends));
    double height = Double.parseDouble(svg.replaceAll("(?s).*? height=\"([0-9.]+)mm\".*", "$1"));
    assertTrue(height <= 190.1, height + " mm");
  }

  private static boolean within(Link link) {
    return link.from().equals(link.to());
  }

  private static int low(Link link) {
    return Math.min(floor(link.from()), floor(link.to()));
  }

  private static int high(Link link) {
    return Math.max(floor(link.from()), floor(link.to()));
  }

  private static int floor(String node) {
    return Integer.parseInt(node.substring(1));
  }
}
