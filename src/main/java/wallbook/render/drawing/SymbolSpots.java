package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds where each symbol is drawn. Places above one another on a wall coincide in plan: their
 * symbols are stacked away from the wall, tied to the true point by a thin line.
 */
final class SymbolSpots {
  private static final double STEP_MM = Symbols.SIZE_MM + 0.7;
  private static final double GAP_MM = 0.4;
  private static final int REACH = 14;
  private static final List<int[]> STEPS = steps();

  private final List<Pt> area;
  private final Box sheet;
  private final double tagMm;
  private final List<Placed> placed = new ArrayList<>();

  private SymbolSpots(List<Pt> area, Box sheet, double tagMm) {
    this.area = area;
    this.sheet = sheet;
    this.tagMm = tagMm;
  }

  /**
   * Where a symbol would like to be.
   *
   * @param truePoint the point it stands for
   * @param centre where it is drawn when there is room
   * @param away direction in which symbols are stacked
   * @param along direction in which they also may slide
   */
  record Wanted(Pt truePoint, Pt centre, Pt away, Pt along) {}

  /**
   * A symbol's place.
   *
   * @param moved whether the symbol had to make room for another
   */
  record Placed(Pt truePoint, Pt centre, boolean moved) {
    /** Shows what a moved symbol stands for. */
    void drawTie(Canvas canvas) {
      if (moved) {
        canvas.line(Ink.THIN, truePoint, centre);
        canvas.circle(Ink.SOLID, truePoint, 0.4);
      }
    }
  }

  /**
   * The places in the order wanted; empty when the sheet is full.
   *
   * @param area symbols stay inside while they can
   * @param sheet symbols always stay inside
   * @param tagMm clear paper kept at the right of each symbol, for a number that stands there; 0
   *     for none
   */
  static Optional<List<Placed>> place(List<Pt> area, Box sheet, List<Wanted> wanted, double tagMm) {
    SymbolSpots spots = new SymbolSpots(area, sheet, tagMm);
    return wanted.stream().allMatch(spots::add)
        ? Optional.of(List.copyOf(spots.placed))
        : Optional.empty();
  }

  /**
   * Tries the wanted centre, then ever farther from it: away from the wall first, then along it or
   * back.
   */
  private boolean add(Wanted wanted) {
    for (boolean insideOnly : new boolean[] {true, false}) {
      for (int[] step : STEPS) {
        Pt centre =
            wanted
                .centre()
                .plus(wanted.away().times(step[0] * STEP_MM))
                .plus(wanted.along().times(step[1] * STEP_MM));
        if (isFree(centre) && (!insideOnly || Polygons.holds(area, cell(centre)))) {
          placed.add(new Placed(wanted.truePoint(), centre, step[0] != 0 || step[1] != 0));
          return true;
        }
      }
    }
    return false;
  }

  private static List<int[]> steps() {
    List<int[]> steps = new ArrayList<>();
    for (int deep = -REACH; deep <= REACH; deep++) {
      for (int side = -REACH; side <= REACH; side++) {
        steps.add(new int[] {deep, side});
      }
    }
    steps.sort(Comparator.comparingInt(SymbolSpots::farness));
    return steps;
  }

  private static int farness(int[] step) {
    return (step[0] < 0 ? -14 : 10) * step[0] + 13 * Math.abs(step[1]);
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
