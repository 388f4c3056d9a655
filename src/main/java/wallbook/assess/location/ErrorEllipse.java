package wallbook.assess.location;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Angle;
import wallbook.quantity.Length;
import wallbook.record.Point;

/**
 * How far a tied point may lie from where it was computed, if every tie has the same independent
 * standard error.
 *
 * @param semiMajor standard error in the worst direction
 * @param semiMinor standard error across it
 * @param direction of the worst direction, clockwise from the top of the plan, from 0° up to but
 *     not including 180°
 */
public record ErrorEllipse(Length semiMajor, Length semiMinor, Angle direction) {

  /**
   * The ellipse of a point tied to two or more corners: the covariance {@code e²·(JᵀJ)⁻¹}, with the
   * rows of J the unit directions from the corners to the point. For two ties this gives the axes
   * {@code e/√(1 ∓ cos γ)} and the root mean square {@code e·√2/sin γ}, γ the angle between them.
   *
   * @param tieError standard error e of each tie
   * @return empty if all directions are one line, so that the point may lie anywhere across it
   */
  public static Optional<ErrorEllipse> of(Point point, List<Point> corners, Length tieError) {
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (Point corner : corners) {
      PlanVector way = PlanVector.of(point).minus(PlanVector.of(corner));
      double ux = way.xMetres() / way.length();
      double uy = way.yMetres() / way.length();
      xx += ux * ux;
      xy += ux * uy;
      yy += uy * uy;
    }
    double mean = (xx + yy) / 2;
    double spread = Math.hypot((xx - yy) / 2, xy);
    double weak = mean - spread;
    if (!(weak > 1e-9)) {
      return Optional.empty();
    }
    double e = tieError.inMetres();
    double strongDirection = Math.atan2(2 * xy, xx - yy) / 2;
    double fromTop = Math.toDegrees(-strongDirection) % 180;
    return Optional.of(
        new ErrorEllipse(
            Length.metres(e / Math.sqrt(weak)),
            Length.metres(e / Math.sqrt(mean + spread)),
            Angle.degrees(fromTop < 0 ? fromTop + 180 : fromTop)));
  }

  /** Root mean square error of the position: {@code √(a² + b²)}. */
  public Length rootMeanSquare() {
    return Length.metres(Math.hypot(semiMajor.inMetres(), semiMinor.inMetres()));
  }
}
