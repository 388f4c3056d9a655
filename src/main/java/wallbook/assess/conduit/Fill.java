package wallbook.assess.conduit;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Area;
import wallbook.quantity.Diameter;
import wallbook.quantity.Ratio;

/**
 * How much of a conduit's bore its cables take up. Every cable counts as a full circle of its outer
 * diameter; a flat one by its major axis, as NEC chapter 9 table 1 note 9 has it, though its true
 * area is less.
 */
public final class Fill {
  /** Keeps a fill that equals its limit on the good side of rounding in the last binary digit. */
  private static final double ROUNDING = 1e-12;

  /** More cables than any conduit takes, even one that is a mistake of the record. */
  private static final int MOST = 1_000_000_000;

  private Fill() {}

  /** Area of a circle: {@code π/4 · d²}. */
  public static Area area(Diameter across) {
    return Area.squareMetres(Math.PI / 4 * square(across));
  }

  /**
   * Share of the bore taken up: {@code Σ dᵢ² / D²}, with d the cables' outer diameters and D the
   * bore. Zero without cables; above one where the record is wrong.
   *
   * @param bore must be above zero
   */
  public static Ratio of(List<Diameter> cables, Diameter bore) {
    return Ratio.fraction(sumOfSquares(cables) / square(bore));
  }

  /**
   * The same with further cables of one diameter.
   *
   * @param count how many
   */
  public static Ratio of(List<Diameter> cables, Diameter further, int count, Diameter bore) {
    return Ratio.fraction((sumOfSquares(cables) + count * square(further)) / square(bore));
  }

  /** Whether the cables keep within the rule. A conduit without cables does. */
  public static boolean keeps(List<Diameter> cables, Diameter bore, FillRule rule) {
    return cables.isEmpty() || within(sumOfSquares(cables), cables.size(), square(bore), rule);
  }

  /**
   * How many more cables of one diameter the rule allows: the greatest {@code k ≥ 1} with {@code (Σ
   * dᵢ² + k·x²) / D² ≤ p(n + k)}, else 0. Rounded down, though NEC table 1 note 7 would let equal
   * cables round up from 0.8. Because two cables may fill less than three, a greater number may
   * keep the rule where a smaller one does not.
   *
   * @param further outer diameter of each further cable, above zero
   */
  public static int more(List<Diameter> inPlace, Diameter further, Diameter bore, FillRule rule) {
    double used = sumOfSquares(inPlace);
    double share = rule.limit(MOST).inFraction() + ROUNDING;
    // Where the share no longer depends on the number, the greatest number follows from it at once.
    double atThatShare = Math.floor((share * square(bore) - used) / square(further));
    int most = (int) Math.min(atThatShare, MOST - 1) + 1;
    for (int k = Math.max(most, rule.sameFrom() - inPlace.size()); k >= 1; k--) {
      if (within(used + k * square(further), inPlace.size() + k, square(bore), rule)) {
        return k;
      }
    }
    return 0;
  }

  /**
   * Outer diameter of the largest single further cable: {@code √(p(n + 1)·D² − Σ dᵢ²)}; empty if
   * the rule allows none.
   */
  public static Optional<Diameter> largestFurther(
      List<Diameter> inPlace, Diameter bore, FillRule rule) {
    double left =
        rule.limit(inPlace.size() + 1).inFraction() * square(bore) - sumOfSquares(inPlace);
    return left <= 0 ? Optional.empty() : Optional.of(Diameter.metres(Math.sqrt(left)));
  }

  /**
   * Area that the rule still allows at the number of cables in place; negative if they are beyond
   * it.
   */
  public static Area free(List<Diameter> inPlace, Diameter bore, FillRule rule) {
    double allowed = rule.limit(Math.max(1, inPlace.size())).inFraction() * square(bore);
    return Area.squareMetres(Math.PI / 4 * (allowed - sumOfSquares(inPlace)));
  }

  private static boolean within(double used, int cables, double boreSquared, FillRule rule) {
    return used <= (rule.limit(cables).inFraction() + ROUNDING) * boreSquared;
  }

  private static double sumOfSquares(List<Diameter> cables) {
    return cables.stream().mapToDouble(Fill::square).sum();
  }

  private static double square(Diameter across) {
    return across.inMetres() * across.inMetres();
  }
}
