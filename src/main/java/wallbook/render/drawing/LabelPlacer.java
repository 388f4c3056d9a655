package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Finds a place for every label of a plan so that no label meets another label or a symbol, and no
 * leader crosses a label, a symbol or another leader. Each label starts at its cheapest place;
 * labels then move in turn to where they cost least, and pairs that keep meeting grow more
 * expensive until one of them gives way. Nothing is random: equal input gives equal output.
 */
final class LabelPlacer {
  private static final int MAX_SWEEPS = 90;
  private static final double MEETING_PRICE = 60;

  private final List<List<LabelCandidates.Candidate>> candidates = new ArrayList<>();
  private final int[] chosen;
  private final double[][] meetingPrice;

  private LabelPlacer(Surroundings around, List<LabelWish> wishes) {
    LabelCandidates lists = new LabelCandidates(around, wishes);
    for (int i = 0; i < wishes.size(); i++) {
      candidates.add(lists.of(i));
    }
    chosen = new int[wishes.size()];
    meetingPrice = new double[wishes.size()][wishes.size()];
    for (double[] row : meetingPrice) {
      Arrays.fill(row, MEETING_PRICE);
    }
  }

  /** The places in the order of the wishes; empty when there is no room for all of them. */
  static Optional<List<PlacedLabel>> place(Surroundings around, List<LabelWish> wishes) {
    LabelPlacer placer = new LabelPlacer(around, wishes);
    if (placer.candidates.stream().anyMatch(List::isEmpty)) {
      return Optional.empty();
    }
    return placer.settle() ? Optional.of(placer.placed()) : Optional.empty();
  }

  /** Whether two placed labels disturb each other. */
  static boolean disturb(PlacedLabel one, PlacedLabel other) {
    Box clear = one.box().grown(LabelCandidates.CLEAR_MM);
    if (clear.overlaps(other.box())) {
      return true;
    }
    boolean crossed = other.leader().filter(clear::isCrossedBy).isPresent();
    boolean crosses =
        one.leader().filter(other.box().grown(LabelCandidates.CLEAR_MM)::isCrossedBy).isPresent();
    boolean meet =
        one.leader().isPresent()
            && other.leader().isPresent()
            && one.leader().get().meets(other.leader().get());
    return crossed || crosses || meet;
  }

  private boolean settle() {
    for (int sweep = 0; sweep < MAX_SWEEPS; sweep++) {
      boolean moved = false;
      for (int i = 0; i < chosen.length; i++) {
        int best = cheapest(i);
        moved |= best != chosen[i];
        chosen[i] = best;
      }
      if (!moved && !raisePrices()) {
        return true;
      }
    }
    return !raisePrices();
  }

  private int cheapest(int index) {
    List<LabelCandidates.Candidate> own = candidates.get(index);
    int best = chosen[index];
    double bestPrice = own.get(best).price() + meetings(index, own.get(best).label());
    for (int c = 0; c < own.size() && own.get(c).price() < bestPrice; c++) {
      double price = own.get(c).price() + meetings(index, own.get(c).label());
      if (price < bestPrice) {
        best = c;
        bestPrice = price;
      }
    }
    return best;
  }

  private double meetings(int index, PlacedLabel label) {
    double price = 0;
    for (int other = 0; other < chosen.length; other++) {
      if (other != index && disturb(label, placed(other))) {
        price += meetingPrice[index][other];
      }
    }
    return price;
  }

  /** Makes every pair that still meets dearer; false when there is none. */
  private boolean raisePrices() {
    boolean any = false;
    for (int i = 0; i < chosen.length; i++) {
      for (int j = i + 1; j < chosen.length; j++) {
        if (disturb(placed(i), placed(j))) {
          meetingPrice[i][j] += MEETING_PRICE;
          meetingPrice[j][i] += MEETING_PRICE;
          any = true;
        }
      }
    }
    return any;
  }

  private PlacedLabel placed(int index) {
    return candidates.get(index).get(chosen[index]).label();
  }

  private List<PlacedLabel> placed() {
    List<PlacedLabel> labels = new ArrayList<>();
    for (int i = 0; i < chosen.length; i++) {
      labels.add(placed(i));
    }
    return labels;
  }
}
