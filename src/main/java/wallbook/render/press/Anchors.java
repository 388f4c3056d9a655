package wallbook.render.press;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;

/** Where the anchors of a document are, and the links that lead to them. */
final class Anchors {
  private final Map<String, Place> places = new HashMap<>();
  private final List<Waiting> waiting = new ArrayList<>();

  private record Place(COSDictionary page, int number, float top) {}

  private record Waiting(COSDictionary from, String anchor) {}

  /**
   * @param number of the page, from 1
   * @param top in points from the page's lower edge
   */
  void put(String anchor, COSDictionary page, int number, float top) {
    places.putIfAbsent(anchor, new Place(page, number, top));
  }

  /** The number of the page that an anchor is on, if that page is written. */
  OptionalInt page(String anchor) {
    Place place = places.get(anchor);
    return place == null ? OptionalInt.empty() : OptionalInt.of(place.number());
  }

  /** Makes a link or bookmark lead to an anchor, at once or when the anchor's page is written. */
  void lead(COSDictionary from, String anchor) {
    if (places.containsKey(anchor)) {
      from.setItem(COSName.DEST, destination(places.get(anchor)));
    } else {
      waiting.add(new Waiting(from, anchor));
    }
  }

  private static COSArray destination(Place place) {
    COSArray destination = new COSArray();
    destination.add(place.page());
    destination.add(COSName.getPDFName("XYZ"));
    destination.add(COSNull.NULL);
    destination.add(Numbers.of(place.top()));
    destination.add(COSNull.NULL);
    return destination;
  }

  /** Lets the links lead that still wait; the anchor of each must be known by now. */
  void finish() {
    for (Waiting one : waiting) {
      Place place = places.get(one.anchor());
      if (place == null) {
        throw new IllegalStateException("no page has the anchor " + one.anchor());
      }
      one.from().setItem(COSName.DEST, destination(place));
    }
    waiting.clear();
  }
}
