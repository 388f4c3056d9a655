package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Lists the places where one label may stand, each with its price, cheapest first; places that are
 * never allowed are left out.
 */
final class LabelCandidates {
  /** A label farther than this from its symbol gets a leader. */
  static final double LEADER_FROM_MM = 1.6;

  /** Clear space around a label and around a symbol. */
  static final double CLEAR_MM = 0.5;

  private static final double[] DISTANCES_MM = {0.7, 3.2, 6, 9, 12.5, 16.5, 21, 27, 34, 42, 52, 64};
  private static final int DIRECTIONS = 16;
  private static final double CROSSED_LINE_PRICE = 12;
  private static final double LEADER_PRICE = 2;
  private static final double AMBIGUITY_PRICE = 10;

  private final Surroundings around;
  private final List<LabelWish> wishes;

  LabelCandidates(Surroundings around, List<LabelWish> wishes) {
    this.around = around;
    this.wishes = wishes;
  }

  /** One place for a label. */
  record Candidate(PlacedLabel label, double price) {}

  List<Candidate> of(int index) {
    LabelWish wish = wishes.get(index);
    List<Candidate> found = new ArrayList<>();
    for (double distance : DISTANCES_MM) {
      for (int d = 0; d < DIRECTIONS; d++) {
        double angle = 2 * Math.PI * d / DIRECTIONS;
        addIfAllowed(found, index, ringed(wish, Math.cos(angle), Math.sin(angle), distance));
      }
    }
    addColumns(found, index, wish);
    found.sort(Comparator.comparingDouble(Candidate::price));
    return found;
  }

  /** A box that lies at a clear distance from the symbol in a direction. */
  private static Box ringed(LabelWish wish, double ux, double uy, double distance) {
    double reachX = (wish.symbol().width() + wish.widthMm()) / 2;
    double reachY = (wish.symbol().height() + wish.heightMm()) / 2;
    double x = Math.max(-1, Math.min(1, ux * Math.sqrt(2))) * reachX + ux * distance;
    double y = Math.max(-1, Math.min(1, uy * Math.sqrt(2))) * reachY + uy * distance;
    return Box.around(wish.symbol().centre().plus(new Pt(x, y)), wish.widthMm(), wish.heightMm());
  }

  /** Places along the left and right edge of the sheet, for plans whose inside is full. */
  private void addColumns(List<Candidate> found, int index, LabelWish wish) {
    Box sheet = around.sheet();
    double step = Math.max(1.5, wish.heightMm() / 2);
    for (double top = sheet.top(); top + wish.heightMm() <= sheet.bottom(); top += step) {
      for (double left : new double[] {sheet.left(), sheet.right() - wish.widthMm()}) {
        addIfAllowed(
            found, index, new Box(left, top, left + wish.widthMm(), top + wish.heightMm()));
      }
    }
  }

  private void addIfAllowed(List<Candidate> found, int index, Box box) {
    if (!around.sheet().holds(box)) {
      return;
    }
    Box clear = box.grown(CLEAR_MM);
    Box own = wishes.get(index).symbol();
    if (own.overlaps(box)
        || Polygons.isOverlapped(clear, around.solid())
        || Polygons.isCrossed(clear, around.lines())) {
      return;
    }
    for (LabelWish other : wishes) {
      if (other.symbol().overlaps(clear)) {
        return;
      }
    }
    leader(own, box)
        .ifPresentOrElse(
            seg -> addLed(found, index, box, seg),
            () -> {
              double price = aside(own, box) + (isAmbiguous(index, box) ? AMBIGUITY_PRICE : 0);
              found.add(new Candidate(new PlacedLabel(box, Optional.empty()), price));
            });
  }

  private void addLed(List<Candidate> found, int index, Box box, Seg leader) {
    if (around.solid().stream().anyMatch(solid -> solid.isCrossedBy(leader))) {
      return;
    }
    for (int other = 0; other < wishes.size(); other++) {
      if (other != index && wishes.get(other).symbol().grown(0.2).isCrossedBy(leader)) {
        return;
      }
    }
    long crossed = around.lines().stream().filter(leader::meets).count();
    double price =
        LEADER_PRICE
            + aside(wishes.get(index).symbol(), box)
            + leader.length()
            + CROSSED_LINE_PRICE * crossed;
    found.add(new Candidate(new PlacedLabel(box, Optional.of(leader)), price));
  }

  /** Whether somebody could take a label without a leader for that of another symbol. */
  private boolean isAmbiguous(int index, Box box) {
    Box near = box.grown(LEADER_FROM_MM);
    for (int other = 0; other < wishes.size(); other++) {
      if (other != index && wishes.get(other).symbol().overlaps(near)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Text reads best on the line of its symbol; the price grows with the distance from that line.
   */
  private static double aside(Box symbol, Box box) {
    return 0.3 * Math.min(6, Math.abs(symbol.centre().y() - box.centre().y()));
  }

  /**
   * From the edge of the symbol to the middle of a side of the label that faces it, unless the two
   * stand together.
   */
  private static Optional<Seg> leader(Box symbol, Box box) {
    Pt from = symbol.centre();
    if (box.nearest(from).minus(symbol.nearest(box.nearest(from))).length() <= LEADER_FROM_MM) {
      return Optional.empty();
    }
    List<Pt> ends = new ArrayList<>();
    if (from.x() <= box.left() || from.x() >= box.right()) {
      ends.add(new Pt(from.x() <= box.left() ? box.left() : box.right(), box.centre().y()));
    }
    if (from.y() <= box.top() || from.y() >= box.bottom()) {
      ends.add(new Pt(box.centre().x(), from.y() <= box.top() ? box.top() : box.bottom()));
    }
    Pt end =
        ends.stream()
            .min(Comparator.comparingDouble(point -> point.minus(from).length()))
            .orElseThrow();
    Pt direction = end.minus(from).unit();
    double out =
        Math.min(
            reach(direction.x(), symbol.width() / 2), reach(direction.y(), symbol.height() / 2));
    return Optional.of(new Seg(from.plus(direction.times(out)), end));
  }

  private static double reach(double share, double half) {
    return share == 0 ? Double.POSITIVE_INFINITY : half / Math.abs(share);
  }
}
