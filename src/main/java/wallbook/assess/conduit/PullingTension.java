package wallbook.assess.conduit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import wallbook.quantity.Angle;
import wallbook.quantity.Factor;
import wallbook.quantity.Force;
import wallbook.quantity.Length;
import wallbook.quantity.LinearForce;

/**
 * Tension along a pull of cables through one section of conduit, from pull point to pull point.
 *
 * @param weight W of all cables together, per length
 * @param correction w for how the cables press on the bore, 1 for one cable
 * @param friction f between jackets and conduit
 */
public record PullingTension(LinearForce weight, Factor correction, Factor friction) {

  /**
   * Tension after a straight length: {@code T = T₀ + L·W·(sin φ + w·f·cos φ)}, φ the slope upward;
   * zero where the formula is negative, because a cable does not push. Cable-engineering texts.
   */
  public Force afterStraight(Force before, PullPiece.Straight straight) {
    double slope = straight.rise().inRadians();
    double perLength = Math.sin(slope) + grip() * Math.cos(slope);
    double newtons =
        before.inNewtons() + straight.length().inMetres() * weight.inNewtonsPerMetre() * perLength;
    return Force.newtons(Math.max(0, newtons));
  }

  /**
   * Tension after a bend, the usual form, without the weight in the bend: {@code T = T₀·e^(w·f·θ)}.
   * Cable-engineering texts.
   */
  public Force afterBend(Force before, Angle bend) {
    return before.times(Math.exp(grip() * bend.inRadians()));
  }

  /**
   * One-line estimate on the safe side for level conduit, as though all bends came last: {@code T =
   * L·W·K′·e^(K′·A)} with {@code K′ = w·f} and A the sum of the bends. IEEE 1185-2019 annex C
   * equation (C.1).
   *
   * @param straights length of the straight parts together
   */
  public Force estimate(Length straights, Angle bends) {
    double level = straights.inMetres() * weight.inNewtonsPerMetre() * grip();
    return Force.newtons(level * Math.exp(grip() * bends.inRadians()));
  }

  /**
   * Tension after each piece, pulled from the first to the last and fed without back tension.
   *
   * @return one tension for each piece, in its order
   */
  public List<Force> along(List<PullPiece> pieces) {
    List<Force> after = new ArrayList<>();
    Force tension = Force.newtons(0);
    for (PullPiece piece : pieces) {
      if (piece instanceof PullPiece.Straight straight) {
        tension = afterStraight(tension, straight);
      } else if (piece instanceof PullPiece.Bend bend) {
        tension = afterBend(tension, bend.angle());
      }
      after.add(tension);
    }
    return List.copyOf(after);
  }

  /** Greatest tension anywhere along the pieces; zero without pieces. */
  public Force greatest(List<PullPiece> pieces) {
    return along(pieces).stream().max(Force::compareTo).orElse(Force.newtons(0));
  }

  /** The pieces as met from the other end. */
  public static List<PullPiece> reversed(List<PullPiece> pieces) {
    List<PullPiece> other = new ArrayList<>(pieces.stream().map(PullPiece::reversed).toList());
    Collections.reverse(other);
    return List.copyOf(other);
  }

  private double grip() {
    return correction.value() * friction.value();
  }
}
