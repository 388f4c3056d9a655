package wallbook.assess.location;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Length;
import wallbook.record.Point;

/**
 * The point that fits three or more ties best, by least squares of what is left over, all ties
 * counting the same: Gauss-Newton steps from a first guess.
 *
 * @param point that fits best
 * @param residuals tie as taped less distance from corner to point, in the order of the ties
 */
public record TieAdjustment(Point point, List<Length> residuals) {
  private static final int MOST_STEPS = 100;

  /** A step below this no longer moves the point: a thousandth of a millimetre. */
  private static final double SETTLED_METRES = 1e-9;

  public TieAdjustment {
    residuals = List.copyOf(residuals);
  }

  /**
   * Adjusts from a first guess; with corners in one line the guess decides the side.
   *
   * @return empty if the steps do not settle: the guess lies in line with all corners, or the ties
   *     are far from agreeing
   */
  public static Optional<TieAdjustment> from(Point guess, List<CornerTie> ties) {
    PlanVector here = PlanVector.of(guess);
    for (int i = 0; i < MOST_STEPS; i++) {
      Optional<PlanVector> step = step(here, ties);
      if (step.isEmpty()) {
        return Optional.empty();
      }
      here = here.plus(step.get(), 1);
      if (step.get().length() < SETTLED_METRES) {
        return Optional.of(at(here, ties));
      }
    }
    return Optional.empty();
  }

  /** What is left over of the ties at a point that is not adjusted. */
  static TieAdjustment unadjusted(Point point, List<CornerTie> ties) {
    return at(PlanVector.of(point), ties);
  }

  /** Greatest residual of all, without its sign. */
  public Length worst() {
    return residuals.stream()
        .map(length -> Length.metres(Math.abs(length.inMetres())))
        .max(Length::compareTo)
        .orElse(Length.metres(0));
  }

  /** Index of the tie with the greatest residual, from 0. */
  public int worstIndex() {
    int worst = 0;
    for (int i = 1; i < residuals.size(); i++) {
      if (Math.abs(residuals.get(i).inMetres()) > Math.abs(residuals.get(worst).inMetres())) {
        worst = i;
      }
    }
    return worst;
  }

  /** Root mean square of the residuals. */
  public Length rootMeanSquare() {
    double sum = residuals.stream().mapToDouble(r -> r.inMetres() * r.inMetres()).sum();
    return Length.metres(Math.sqrt(sum / residuals.size()));
  }

  private static TieAdjustment at(PlanVector here, List<CornerTie> ties) {
    return new TieAdjustment(
        here.toPoint(),
        ties.stream().map(tie -> Length.metres(residualMetres(here, tie))).toList());
  }

  private static double residualMetres(PlanVector here, CornerTie tie) {
    return tie.distance().inMetres() - here.minus(PlanVector.of(tie.at())).length();
  }

  /** Solves the normal equations of one step; empty if they have no single solution. */
  private static Optional<PlanVector> step(PlanVector here, List<CornerTie> ties) {
    double xx = 0;
    double xy = 0;
    double yy = 0;
    double xr = 0;
    double yr = 0;
    for (CornerTie tie : ties) {
      PlanVector way = here.minus(PlanVector.of(tie.at()));
      double length = way.length();
      if (length == 0) {
        return Optional.empty();
      }
      double ux = way.xMetres() / length;
      double uy = way.yMetres() / length;
      double residual = tie.distance().inMetres() - length;
      xx += ux * ux;
      xy += ux * uy;
      yy += uy * uy;
      xr += ux * residual;
      yr += uy * residual;
    }
    double determinant = xx * yy - xy * xy;
    if (!(determinant > 1e-9)) {
      return Optional.empty();
    }
    return Optional.of(
        new PlanVector((yy * xr - xy * yr) / determinant, (xx * yr - xy * xr) / determinant));
  }
}
