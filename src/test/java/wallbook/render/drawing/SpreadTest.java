package wallbook.render.drawing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class SpreadTest {
  @Test
  void positionsFarEnoughApartStay() {
    assertArrayEquals(
        new double[] {9, 2, 5}, Spread.apart(new double[] {9, 2, 5}, 3, 0, 10), 1e-12);
  }

  @Test
  void aPairGivesWayEvenly() {
    assertArrayEquals(new double[] {4, 6}, Spread.apart(new double[] {5, 5}, 2, 0, 10), 1e-12);
  }

  @Property
  void positionsKeepOrderStepAndBounds(
      @ForAll @Size(max = 20) List<@DoubleRange(min = 0, max = 100) Double> wanted) {
    double[] values = wanted.stream().mapToDouble(Double::doubleValue).toArray();
    double[] sorted = Spread.apart(values, 4, 0, 100).clone();
    double[] inOrder = Arrays.stream(Spread.order(values)).mapToDouble(i -> sorted[i]).toArray();
    for (int i = 0; i < inOrder.length; i++) {
      assertTrue(inOrder[i] >= -1e-9 && inOrder[i] <= 100 + 1e-9);
      assertTrue(i == 0 || inOrder[i] - inOrder[i - 1] >= 4 - 1e-9);
    }
  }
}
