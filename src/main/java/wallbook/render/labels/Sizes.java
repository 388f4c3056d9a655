package wallbook.render.labels;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wallbook.stock.TypeSize;

/**
 * The size of a label and of the text beneath it.
 *
 * @param labelPt size of the label itself
 * @param textPt size of all else, always smaller
 */
record Sizes(double labelPt, double textPt) {
  /** No limit. */
  static final Sizes ANY = new Sizes(Double.MAX_VALUE, Double.MAX_VALUE);

  /** How many times the text the label should be, so that both are read with ease. */
  private static final double RATIO = 2.2;

  /** All pairs of two lists, the largest balanced ones first. */
  static List<Sizes> pairs(List<TypeSize> labels, List<TypeSize> texts) {
    List<Sizes> pairs = new ArrayList<>();
    for (TypeSize label : labels) {
      for (TypeSize text : texts) {
        if (text.pt() < label.pt()) {
          pairs.add(new Sizes(label.pt(), text.pt()));
        }
      }
    }
    pairs.sort(
        Comparator.comparingDouble(Sizes::balance)
            .thenComparingDouble(s -> s.labelPt + s.textPt)
            .reversed());
    return pairs;
  }

  private double balance() {
    return Math.min(labelPt / RATIO, textPt);
  }

  boolean within(Sizes limit) {
    return labelPt <= limit.labelPt && textPt <= limit.textPt;
  }
}
