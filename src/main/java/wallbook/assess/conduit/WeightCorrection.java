package wallbook.assess.conduit;

import java.util.List;
import wallbook.quantity.Diameter;
import wallbook.quantity.Factor;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/**
 * By how much several cables press on a round bore beyond their weight, because they wedge. The
 * three formulas follow from statics without friction between the cables, with {@code x = d/(D −
 * d)}, d the diameter of each cable and D the bore.
 */
public final class WeightCorrection {
  private final Table practice;

  public WeightCorrection(Tables tables) {
    this.practice = tables.table("pulling-practice");
  }

  /** Three in a triangle: {@code 1/√(1 − x²)}; from D/d = 2.155, where three just fit, upwards. */
  public static Factor triangular(Diameter cable, Diameter bore) {
    double x = crowding(cable, bore);
    return Factor.of(1 / Math.sqrt(1 - x * x));
  }

  /** Three cradled: {@code 1 + (4/3)·x²}; never below the triangular one. */
  public static Factor cradled(Diameter cable, Diameter bore) {
    double x = crowding(cable, bore);
    return Factor.of(1 + 4.0 / 3 * x * x);
  }

  /** Four in a diamond: {@code 1 + 2·x²}; they touch only while x ≥ 0.354 (D/d ≤ 3.83). */
  public static Factor diamond(Diameter cable, Diameter bore) {
    double x = crowding(cable, bore);
    return Factor.of(1 + 2 * x * x);
  }

  /**
   * Factor for cables pulled together: 1 for one; as triangular for two alike; cradled for three
   * alike, the greater of the two, since how they will lie isn't known; diamond for four alike
   * where they touch; 1.4 for more, for mixed ones, and where the formulas have no answer.
   */
  public Factor of(List<Diameter> cables, Diameter bore) {
    Factor mixed = Factor.of(figure("mixed-weight-correction").number("value"));
    if (cables.size() <= 1) {
      return Factor.of(1);
    }
    Diameter cable = cables.get(0);
    if (!alike(cables)) {
      return mixed;
    }
    double x = crowding(cable, bore);
    boolean formulasHold = x > 0 && x < 1;
    if (!formulasHold) {
      return mixed;
    }
    return switch (cables.size()) {
      case 2 -> triangular(cable, bore);
      case 3 -> cradled(cable, bore);
      case 4 -> x >= figure("diamond-least-ratio").number("value") ? diamond(cable, bore) : mixed;
      default -> mixed;
    };
  }

  public Source source() {
    return figure("mixed-weight-correction").source();
  }

  /** Whether all cables have the first one's diameter, within a hundredth of it. */
  static boolean alike(List<Diameter> cables) {
    double first = cables.get(0).inMetres();
    return cables.stream().allMatch(c -> Math.abs(c.inMetres() - first) <= first / 100);
  }

  private Row figure(String name) {
    return practice.row(name);
  }

  private static double crowding(Diameter cable, Diameter bore) {
    return cable.inMetres() / bore.minus(cable).inMetres();
  }
}
