package wallbook.assess.conduit;

import java.util.List;
import wallbook.quantity.Diameter;
import wallbook.quantity.Factor;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Tables;

/**
 * Whether three like cables pulled together may wedge side by side in a bend. Two published rules
 * use different ratios and disagree in places, so each result names its rule. Neither speaks of two
 * cables, of four, of cables of unlike size, or of one pulled in beside two that lie there. From
 * the reference table {@code conduit-jam-ratios}.
 */
public final class JamRatio {
  private final List<Row> bands;

  private JamRatio(Tables tables, String rule) {
    bands =
        tables.table("conduit-jam-ratios").rows().stream()
            .filter(row -> row.text("rule").equals(rule))
            .toList();
  }

  /** NEC chapter 9 table 1, informational note 2: the ratio D/d may jam from 2.8 to 3.2. */
  public static JamRatio nec(Tables tables) {
    return new JamRatio(tables, "nec");
  }

  /** Bands of a pulling handbook on 1.05·D/d, which allows for the oval of a bend. */
  public static JamRatio bands(Tables tables) {
    return new JamRatio(tables, "bands");
  }

  /** The ratio the rule looks at: D/d, or 1.05·D/d. */
  public Factor ratio(Diameter bore, Diameter cable) {
    return Factor.of(bands.get(0).number("factor") * bore.ratioTo(cable));
  }

  /**
   * How likely a jam is: for the NEC {@code none} or {@code may-jam} (both ends of its range
   * included), for the bands {@code very-small}, {@code small}, {@code moderate} or {@code
   * significant} (a limit between two bands belongs to the higher).
   */
  public String likelihood(Factor ratio) {
    String band = "";
    for (Row row : bands) {
      double from = row.number("from");
      boolean inBand = row.yes("above") ? ratio.value() > from : ratio.value() >= from;
      if (inBand) {
        band = row.text("band");
      }
    }
    return band;
  }

  /**
   * Whether a likelihood is worth a warning: the code's range, and moderate or more by the bands.
   */
  static boolean isConcern(String likelihood) {
    return List.of("may-jam", "moderate", "significant").contains(likelihood);
  }

  public Source source() {
    return bands.get(0).source();
  }
}
