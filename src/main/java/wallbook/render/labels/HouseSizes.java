package wallbook.render.labels;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Keeps the labels of one order alike: the sizes that most of them reach, taken as a limit for all.
 * A label that is too long for these is set smaller.
 */
final class HouseSizes {
  /** Share of labels that may stay below the common size. */
  private static final double STRAGGLERS = 0.15;

  private final Map<Slot, List<Sizes>> taken = new EnumMap<>(Slot.class);
  private final Map<Slot, Sizes> limits = new EnumMap<>(Slot.class);

  /** Where on a label a block of text stands. */
  enum Slot {
    WHOLE,
    FRONT,
    BACK,
    CELL
  }

  /** The sizes that a block was set in. */
  void take(Slot slot, Sizes sizes) {
    taken.computeIfAbsent(slot, s -> new ArrayList<>()).add(sizes);
  }

  /** Makes what most blocks reached so far the limit of all from now on. */
  void settle() {
    taken.forEach(
        (slot, sizes) ->
            limits.put(
                slot,
                new Sizes(
                    reached(sizes.stream().map(Sizes::labelPt).toList()),
                    reached(sizes.stream().map(Sizes::textPt).toList()))));
  }

  Sizes limit(Slot slot) {
    return limits.getOrDefault(slot, Sizes.ANY);
  }

  private static double reached(List<Double> sizes) {
    return sizes.stream()
        .sorted()
        .skip((long) (STRAGGLERS * sizes.size()))
        .findFirst()
        .orElseThrow();
  }
}
