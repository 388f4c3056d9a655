package wallbook.render.drawing;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import wallbook.compose.drawing.ScaleUnit;

/**
 * A round drawing scale: one millimetre on paper stands for {@code ratio} millimetres in the house.
 */
record Scale(int ratio, ScaleUnit unit) {
  /** The international foot. */
  static final double METRES_PER_FOOT = 0.3048;

  private static final int[] METRIC = {20, 25, 40, 50, 75, 100, 150, 200, 250, 300, 400, 500, 750};
  // A whole or half, quarter, eighth ... of an inch to the foot, then whole tens of feet to the
  // inch.
  private static final int[] FEET = {24, 32, 48, 64, 96, 192, 240, 360, 480, 600};

  private static final Map<Integer, String> INCHES_PER_FOOT =
      Map.of(24, "1/2", 32, "3/8", 48, "1/4", 64, "3/16", 96, "1/8", 192, "1/16");

  /** Every scale from the largest drawing to the smallest. */
  static List<Scale> all(ScaleUnit unit) {
    int[] first = unit == ScaleUnit.FOOT ? FEET : METRIC;
    IntStream next = IntStream.of(1000, 2000, 5000, 10_000, 20_000, 50_000, 100_000);
    return IntStream.concat(IntStream.of(first), next).mapToObj(r -> new Scale(r, unit)).toList();
  }

  /** Paper millimetres of a length in metres. */
  double mm(double metres) {
    return metres * 1000 / ratio;
  }

  /** One unit of the scale bar in metres. */
  double unitM() {
    return unit == ScaleUnit.FOOT ? METRES_PER_FOOT : 1;
  }

  /** The ratio, and for scales a fraction of an inch to the foot that fraction as well. */
  String text() {
    String ratioText = "1 : " + ratio;
    return unit == ScaleUnit.FOOT && INCHES_PER_FOOT.containsKey(ratio)
        ? ratioText + "  (" + INCHES_PER_FOOT.get(ratio) + " in = 1 ft)"
        : ratioText;
  }

  String symbol() {
    return unit == ScaleUnit.FOOT ? "ft" : "m";
  }
}
