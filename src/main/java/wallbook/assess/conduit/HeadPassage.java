package wallbook.assess.conduit;

import java.util.Optional;
import wallbook.quantity.Diameter;
import wallbook.quantity.Length;

/**
 * Geometry of a connector in a bore, without play for tape, sock or a corrugated wall: allow 2 to 3
 * mm for those. The area it fills never decides: a connector passes or it does not.
 */
public final class HeadPassage {
  private HeadPassage() {}

  /**
   * Largest round thing that can lie in the bore while the connector passes: the connector sits on
   * the chord of its own width, {@code top = b − √(D²/4 − a²/4)}, and the circle above it has the
   * diameter {@code D/2 − top}; the better of its two positions, flat and on end. A round connector
   * leaves {@code D − a}.
   *
   * @return empty if the connector does not pass the empty bore
   */
  public static Optional<Diameter> freeCircleBeside(HeadSize head, Diameter bore) {
    if (head.diagonal().compareTo(bore) > 0) {
      return Optional.empty();
    }
    if (head.round()) {
      return Optional.of(bore.minus(head.width()));
    }
    double flat = freeAbove(head.width().inMetres(), head.height().inMetres(), bore.inMetres());
    double onEnd = freeAbove(head.height().inMetres(), head.width().inMetres(), bore.inMetres());
    return Optional.of(Diameter.metres(Math.max(flat, onEnd)));
  }

  private static double freeAbove(double aMetres, double bMetres, double boreMetres) {
    return boreMetres / 2 - (bMetres - halfChordHeight(aMetres, boreMetres));
  }

  /**
   * Greatest thickness, in the plane of a bend, of a stiff thing that passes it: {@code t = √((R +
   * h)² − (L/2)²) − (R − h)} with {@code h = √(D²/4 − a²/4)}.
   *
   * @param across width a of the thing at right angles to the plane of the bend, not above the bore
   * @param stiff length L of the part that does not bend
   * @param radius R of the bend, to the conduit's centre line
   */
  public static Diameter greatestThicknessInBend(
      Diameter across, Length stiff, Length radius, Diameter bore) {
    double h = halfChordHeight(across.inMetres(), bore.inMetres());
    double outer = radius.inMetres() + h;
    double half = stiff.inMetres() / 2;
    double reach = Math.sqrt(Math.max(0, outer * outer - half * half));
    return Diameter.metres(reach - (radius.inMetres() - h));
  }

  /**
   * A connector in a bend, in one of its two positions.
   *
   * @param thickness of the connector in the plane of the bend
   * @param greatest thickness that the bend passes
   */
  public record BendFit(Diameter thickness, Diameter greatest) {
    /** Thickness left over; negative if the connector sticks. */
    public Diameter margin() {
      return greatest.minus(thickness);
    }
  }

  /** The better of a connector's two positions in a bend, flat or on end. */
  public static BendFit inBend(HeadSize head, Length stiff, Length radius, Diameter bore) {
    BendFit flat =
        new BendFit(head.height(), greatestThicknessInBend(head.width(), stiff, radius, bore));
    BendFit onEnd =
        new BendFit(head.width(), greatestThicknessInBend(head.height(), stiff, radius, bore));
    return flat.margin().compareTo(onEnd.margin()) >= 0 ? flat : onEnd;
  }

  /** Height of a chord of length a above the bore's centre; zero if the chord is no shorter. */
  private static double halfChordHeight(double aMetres, double boreMetres) {
    return Math.sqrt(Math.max(0, boreMetres * boreMetres - aMetres * aMetres)) / 2;
  }
}
