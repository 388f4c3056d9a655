package wallbook.assess.conduit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.quantity.Diameter;
import wallbook.reference.Tables;

class BundleTest {
  private final Bundle bundle = new Bundle(new Tables());

  @ParameterizedTest
  @CsvSource({ // known optima of equal circles in a circle
    "1,1",
    "2,2",
    "3,2.1547",
    "4,2.4142",
    "5,2.7013",
    "6,3",
    "7,3",
    "8,3.3048",
    "9,3.6131"
  })
  void equalCablesTakeTheKnownOptimum(int cables, double ratio) {
    assertEquals(ratio, of(Collections.nCopies(cables, 0.25)) / 0.25, 0.0001);
  }

  @ParameterizedTest
  @CsvSource({ // whole hexagonal rings: 19 in a circle of 5 diameters, 37 in one of 7
    "10,5", "19,5", "20,7", "37,7", "38,9"
  })
  void moreThanNineTakeWholeRings(int cables, double ratio) {
    assertEquals(ratio, of(Collections.nCopies(cables, 0.25)) / 0.25, 1e-9);
  }

  @Test
  void threeMixedTouchTheCircleRoundThem() {
    // the integral gasket with curvatures −3, 5, 8, 8: radii 1/5, 1/8, 1/8 in a circle of 1/3
    assertEquals(2.0 / 3, of(List.of(0.4, 0.25, 0.25)), 1e-9);
    assertEquals(2.0 / 3, of(List.of(0.25, 0.4, 0.25)), 1e-9);
  }

  @Test
  void aThinCableLiesInTheGapOfTwo() {
    // gap beside two of radius 1 in a circle of radius 2: 1/(1 + 1 − 1/2) = 2/3
    assertEquals(4, of(List.of(2.0, 2.0, 4.0 / 3)), 1e-9);
    assertTrue(of(List.of(2.0, 2.0, 1.4)) > 4);
  }

  @Test
  void mixedCablesTakeNoMoreThanAsManyOfTheLargestNorThanTheLargestBesideTheRest() {
    // four: 0.5 and three of 0.1: 0.5 + 0.21547 = 0.71547, below 2.4142 × 0.5
    assertEquals(0.71547, of(List.of(0.5, 0.1, 0.1, 0.1)), 0.00002);
    // four nearly alike: 2.4142 × 0.26, below 0.26 + 2.1547 × 0.25
    assertEquals(0.62769, of(List.of(0.26, 0.25, 0.25, 0.25)), 0.00002);
  }

  @Test
  void nothingTakesNothing() {
    assertEquals(0, of(List.of()), 0);
  }

  private double of(List<Double> inches) {
    return bundle
        .enclosing(
            inches.stream().flatMapToDouble(DoubleStream::of).mapToObj(Diameter::inches).toList())
        .inInches();
  }
}
