package wallbook.assess.conduit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallbook.quantity.Diameter;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/**
 * The circle that holds a bundle of cables: what has to pass a bushing, whatever the fill. Exact
 * for one, two and three cables and for up to nine equal ones (reference table {@code
 * circle-packings}); beyond that an upper bound, so that a bundle said to pass does pass.
 */
public final class Bundle {
  /** Diameters that differ by less count as equal; cables are not made more exactly. */
  private static final double EQUAL = 1e-9;

  private final Table packings;

  public Bundle(Tables tables) {
    this.packings = tables.table("circle-packings");
  }

  public Source source() {
    return packings.source();
  }

  /**
   * Diameter of a circle that holds all cables side by side; zero without cables. For mixed cables
   * the least of two bounds: as many of the largest, and the largest beside the bundle of the rest.
   */
  public Diameter enclosing(List<Diameter> cables) {
    List<Diameter> sorted = cables.stream().sorted(Comparator.reverseOrder()).toList();
    return Diameter.metres(enclosingMetres(sorted));
  }

  private double enclosingMetres(List<Diameter> sorted) {
    int n = sorted.size();
    if (n == 0) {
      return 0;
    }
    double largest = sorted.get(0).inMetres();
    if (n == 1) {
      return largest;
    } else if (n == 2) {
      return largest + sorted.get(1).inMetres();
    } else if (n == 3) {
      return 2
          * enclosingThree(largest / 2, sorted.get(1).inMetres() / 2, sorted.get(2).inMetres() / 2);
    }
    double asEqual = ratio(n) * largest;
    boolean equal = largest - sorted.get(n - 1).inMetres() < EQUAL;
    return equal ? asEqual : Math.min(asEqual, largest + enclosingMetres(sorted.subList(1, n)));
  }

  /** Ratio for n equal circles; past the table the hexagon of whole rings that holds n. */
  private double ratio(int n) {
    Optional<Row> row = packings.find(Integer.toString(n));
    if (row.isPresent()) {
      return row.get().number("ratio");
    }
    int rings = 2;
    while (1 + 3 * rings * (rings + 1) < n) {
      rings++;
    }
    return 2 * rings + 1.0;
  }

  /**
   * Radius of the least circle round three: the two largest side by side if the third fits into the
   * gap beside them, else the circle that touches all three (Descartes' theorem on curvatures).
   */
  private static double enclosingThree(double r1, double r2, double r3) {
    double k1 = 1 / r1;
    double k2 = 1 / r2;
    double k3 = 1 / r3;
    double pair = r1 + r2;
    if (k3 >= k1 + k2 - 1 / pair) {
      return pair;
    }
    return 1 / (2 * Math.sqrt(k1 * k2 + k2 * k3 + k3 * k1) - k1 - k2 - k3);
  }
}
