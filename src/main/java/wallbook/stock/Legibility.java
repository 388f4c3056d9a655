package wallbook.stock;

import java.util.List;
import wallbook.reference.Row;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/**
 * What keeps labels legible, by the reference tables {@code label-legibility} and {@code
 * label-type-sizes}.
 */
public final class Legibility {
  private static final double MM_PER_PT = 25.4 / 72;

  private final Table figures;
  private final Table sizes;

  public Legibility(Tables tables) {
    this.figures = tables.table("label-legibility");
    this.sizes = tables.table("label-type-sizes");
  }

  /**
   * Sizes for a role of type, the largest first.
   *
   * @param role {@code identifier} for the label itself, {@code text} for all else, {@code number}
   *     for numbers that stand on the panel as well
   * @param capHeightEm height of a capital as a share of the size; sizes whose capitals are too low
   *     are left out
   */
  public List<TypeSize> sizes(String role, double capHeightEm) {
    double leastMm = millimetres(role + "-cap-height");
    return sizes.rows().stream()
        .filter(row -> row.text("role").equals(role))
        .map(row -> new TypeSize(row.number("size_pt"), row.yes("usual")))
        .filter(size -> size.pt() * capHeightEm * MM_PER_PT >= leastMm)
        .sorted((a, b) -> Double.compare(b.pt(), a.pt()))
        .toList();
  }

  /** Side of the smallest square of a code. */
  public double leastModuleMm() {
    return millimetres("code-module");
  }

  /** Side of the smallest square beyond which a code isn't enlarged. */
  public double largestModuleMm() {
    return millimetres("code-module-largest");
  }

  /** White border of a code on each side, in its smallest squares. */
  public int quietZoneModules() {
    return (int) row("code-quiet-zone").number("value");
  }

  /** Letters of the levels of error correction to try, the best first. */
  public List<String> correctionLevels() {
    return List.of(
        row("code-correction").text("value"), row("code-correction-least").text("value"));
  }

  /** Length of the bar by which the size of a print is checked. */
  public double rulerMm() {
    return millimetres("ruler");
  }

  /** Margin that head and bar need. */
  public double marginForPrintMm() {
    return millimetres("margin-for-print");
  }

  private double millimetres(String figure) {
    return row(figure).number("value");
  }

  private Row row(String figure) {
    return figures.row(figure);
  }
}
