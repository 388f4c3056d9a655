package wallbook.render.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ConduitPackingTest {
  @Property(tries = 150)
  void cablesStayInsideTheBoreAndOffOneAnother(
      @ForAll @Size(min = 1, max = 30) List<@DoubleRange(min = 2, max = 12) Double> diameters) {
    double area = diameters.stream().mapToDouble(d -> d * d).sum();
    double bore = Math.max(Math.sqrt(area / 0.4), 1.05 * Collections.max(diameters));
    Optional<List<ConduitPacking.Circle>> packed = ConduitPacking.pack(bore, diameters);
    packed.ifPresent(circles -> assertPacked(bore, diameters, circles));
    // At 40 per cent fill and three or more cables of like size there is room; two thick ones may
    // need more.
    if (Collections.max(diameters) < bore / 4) {
      assertTrue(packed.isPresent());
    }
  }

  // Least bore for n equal circles of diameter 1: 2; 2.1547; 2.4142; 2.7013; 3; 3. Published as
  // "circle packing in a circle"
  // (R. L. Graham 1968 and earlier proofs up to n = 7).
  @ParameterizedTest
  @CsvSource({"2, 2.0", "3, 2.1547", "4, 2.4143", "5, 2.7014", "6, 3.0", "7, 3.0"})
  void knownLeastBoresAreTheBorder(int count, double leastBore) {
    List<Double> cables = Collections.nCopies(count, 1.0);
    double tight = leastBore * 1.01;
    assertPacked(tight, cables, ConduitPacking.pack(tight, cables).orElseThrow());
    assertTrue(ConduitPacking.pack(leastBore * 0.99, cables).isEmpty());
  }

  @ParameterizedTest
  @ValueSource(doubles = {10.1, 50})
  void cableThickerThanTheBoreIsNotPacked(double diameter) {
    assertTrue(ConduitPacking.pack(10, List.of(diameter)).isEmpty());
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 100})
  void manyThinCablesAreDrawnToo(int count) {
    List<Double> cables = Collections.nCopies(count, 5.0);
    double bore = 5 * Math.sqrt(count / 0.5);
    assertPacked(bore, cables, ConduitPacking.pack(bore, cables).orElseThrow());
  }

  private static void assertPacked(
      double bore, List<Double> diameters, List<ConduitPacking.Circle> circles) {
    assertEquals(diameters.size(), circles.size());
    for (int i = 0; i < circles.size(); i++) {
      ConduitPacking.Circle a = circles.get(i);
      assertEquals(diameters.get(i), 2 * a.radius(), 1e-12);
      assertTrue(Math.hypot(a.x(), a.y()) + a.radius() <= bore / 2 + 1e-9, "outside the bore");
      for (int j = i + 1; j < circles.size(); j++) {
        ConduitPacking.Circle b = circles.get(j);
        double gap = Math.hypot(a.x() - b.x(), a.y() - b.y()) - a.radius() - b.radius();
        assertTrue(gap >= -1e-9, "two cables overlap");
      }
    }
  }
}
