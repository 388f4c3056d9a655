package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallbook.compose.drawing.Mark;
import wallbook.compose.drawing.Outline;
import wallbook.compose.drawing.PointM;
import wallbook.compose.drawing.Spot;

/**
 * Finds where each symbol is drawn. Places above one another on a wall coincide in plan: their
 * symbols are stacked into the room, tied to the true point of the wall by a thin line.
 */
final class SymbolSpots {
  private static final double OFF_WALL_MM = Symbols.SIZE_MM / 2 + 0.5;
  private static final double STEP_MM = Symbols.SIZE_MM + 0.7;
  private static final double GAP_MM = 0.4;
  private static final int REACH = 14;

  private final PlanView view;
  private final Outline outline;
  private final Box sheet;
  private final double tagMm;
  private final List<Pt> walls;
  private final List<Placed> placed = new ArrayList<>();

  private SymbolSpots(PlanView view, Outline outline, Box sheet, double tagMm) {
    this.view = view;
    this.outline = outline;
    this.sheet = sheet;
    this.tagMm = tagMm;
    this.walls = view.polygon(outline);
  }

  /**
   * A symbol's place.
   *
   * @param truePoint the point of the plan it stands for
   * @param moved whether the symbol had to make room for another
   */
  record Placed(Pt truePoint, Pt centre, boolean moved) {}

  /**
   * The places in the order of the marks; empty when the sheet is full.
   *
   * @param tagMm clear paper kept at the right of each symbol, for a number that stands there; 0
   *     for none
   */
  static Optional<List<Placed>> place(
      PlanView view, Outline outline, List<Mark> marks, Box sheet, double tagMm) {
    SymbolSpots spots = new SymbolSpots(view, outline, sheet, tagMm);
    for (Mark mark : marks) {
      if (!spots.add(mark.spot())) {
        return Optional.empty();
      }
    }
    return Optional.of(List.copyOf(spots.placed));
  }

  private boolean add(Spot spot) {
    if (spot instanceof Spot.OnWall on) {
      return addOnWall(on);
    }
    Pt point = view.at(((Spot.At) spot).point());
    return add(point, point, new Pt(1, 0), new Pt(0, 1));
  }

  private boolean addOnWall(Spot.OnWall on) {
    PointM inwardM = outline.inward(on.wall());
    Pt inward = new Pt(inwardM.xM(), -inwardM.yM());
    Pt along =
        view.at(outline.wallEnd(on.wall())).minus(view.at(outline.wallStart(on.wall()))).unit();
    Pt point = view.at(outline.onWall(on.wall(), on.offsetM()));
    return add(point, point.plus(inward.times(OFF_WALL_MM)), inward, along);
  }

  /**
   * Tries the wanted centre, then ever farther from it: away from the wall first, then along it.
   */
  private boolean add(Pt truePoint, Pt wanted, Pt away, Pt along) {
    List<int[]> steps = new ArrayList<>();
    for (int deep = 0; deep <= REACH; deep++) {
      for (int side = -REACH; side <= REACH; side++) {
        steps.add(new int[] {deep, side});
      }
    }
    steps.sort(Comparator.comparingInt(step -> 10 * step[0] + 13 * Math.abs(step[1])));
    for (boolean insideOnly : new boolean[] {true, false}) {
      for (int[] step : steps) {
        Pt centre = wanted.plus(away.times(step[0] * STEP_MM)).plus(along.times(step[1] * STEP_MM));
        if (isFree(centre) && (!insideOnly || Polygons.holds(walls, cell(centre)))) {
          placed.add(new Placed(truePoint, centre, step[0] != 0 || step[1] != 0));
          return true;
        }
      }
    }
    return false;
  }

  private boolean isFree(Pt centre) {
    Box box = cell(centre).grown(GAP_MM);
    return sheet.holds(box)
        && placed.stream().noneMatch(other -> cell(other.centre()).overlaps(box));
  }

  private Box cell(Pt centre) {
    Box symbol = Symbols.box(centre);
    return new Box(symbol.left(), symbol.top(), symbol.right() + tagMm, symbol.bottom());
  }
}
