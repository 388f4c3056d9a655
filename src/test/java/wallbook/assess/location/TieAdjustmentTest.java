package wallbook.assess.location;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;
import org.junit.jupiter.api.Test;
import wallbook.quantity.Length;
import wallbook.record.Point;

class TieAdjustmentTest {
  private static final List<CornerTie> EXACT =
      List.of(tie("A", 0, 0, 13), tie("B", 14, 0, 15), tie("C", 5, 30, 18));

  @Test
  void tiesThatAgreeLeaveNothingOver() {
    // (5, 12): 13 from (0, 0), 15 from (14, 0), 18 from (5, 30)
    TieAdjustment adjusted = adjust(TwoTiesTest.feet(6, 10), EXACT);
    assertEquals(5, adjusted.point().x().inFeet(), 1e-6);
    assertEquals(12, adjusted.point().y().inFeet(), 1e-6);
    assertEquals(0, adjusted.worst().inFeet(), 1e-6);
    assertEquals(0, adjusted.rootMeanSquare().inFeet(), 1e-6);
  }

  @Test
  void aThirdTieThatIsOffShowsInTheResiduals() {
    // opposite corners (0, 0) and (0, 20) with 10 and 11 in line: the point splits the 1 ft
    List<CornerTie> ties = List.of(tie("A", 0, 0, 10), tie("B", 0, 20, 11), tie("C", 50, 10.0, 50));
    TieAdjustment adjusted = adjust(TwoTiesTest.feet(0.1, 10), ties);
    assertEquals(0.5, adjusted.residuals().get(0).inFeet(), 0.01);
    assertEquals(0.5, adjusted.residuals().get(1).inFeet(), 0.01);
    assertEquals(0.0, adjusted.residuals().get(2).inFeet(), 0.01);
    assertEquals(9.5, adjusted.point().y().inFeet(), 0.01);
    // √((0.25 + 0.25 + 0)/3) = 0.408
    assertEquals(0.408, adjusted.rootMeanSquare().inFeet(), 0.01);
  }

  @Test
  void theWorstResidualIsFoundWhateverItsSign() {
    TieAdjustment adjustment =
        new TieAdjustment(
            TwoTiesTest.feet(0, 0), List.of(Length.feet(0.1), Length.feet(-0.3), Length.feet(0.2)));
    assertEquals(1, adjustment.worstIndex());
    assertEquals(0.3, adjustment.worst().inFeet(), 1e-12);
    assertEquals(
        0,
        new TieAdjustment(TwoTiesTest.feet(0, 0), List.of(Length.feet(-1), Length.feet(1)))
            .worstIndex());
  }

  @Test
  void aGuessInLineWithAllCornersGoesNowhere() {
    List<CornerTie> inLine = List.of(tie("A", 0, 0, 13), tie("B", 14, 0, 15), tie("C", 20, 0, 19));
    assertTrue(TieAdjustment.from(TwoTiesTest.feet(5, 0), inLine).isEmpty());
  }

  @Test
  void aGuessOnACornerGoesNowhere() {
    assertTrue(TieAdjustment.from(TwoTiesTest.feet(0, 0), EXACT).isEmpty());
  }

  @Test
  void whatIsNotAdjustedLeavesItsResiduals() {
    TieAdjustment plain = TieAdjustment.unadjusted(TwoTiesTest.feet(5, 11), EXACT);
    assertEquals(18 - 19, plain.residuals().get(2).inFeet(), 1e-9);
  }

  @Property(tries = 200)
  void anIndependentLibraryFindsTheSamePoint(
      @ForAll @DoubleRange(min = 3, max = 35) double x,
      @ForAll @DoubleRange(min = -60, max = -8) double y,
      @ForAll @DoubleRange(min = -0.3, max = 0.3) double e1,
      @ForAll @DoubleRange(min = -0.3, max = 0.3) double e2,
      @ForAll @DoubleRange(min = -0.3, max = 0.3) double e3) {
    List<CornerTie> ties =
        List.of(
            tie("A", 0, 0, Math.hypot(x, y) + e1),
            tie("B", 40, 0, Math.hypot(x - 40, y) + e2),
            tie("C", 60, -20, Math.hypot(x - 60, y + 20) + e3));
    Point guess = TwoTiesTest.feet(x + 0.2, y - 0.3);
    TieAdjustment adjusted = adjust(guess, ties);
    RealVector reference = levenbergMarquardt(guess, ties);
    assertEquals(reference.getEntry(0), adjusted.point().x().inFeet(), 1e-5);
    assertEquals(reference.getEntry(1), adjusted.point().y().inFeet(), 1e-5);
  }

  /** commons-math3, with distances as the model and in feet. */
  private static RealVector levenbergMarquardt(Point guess, List<CornerTie> ties) {
    double[] taped = ties.stream().mapToDouble(t -> t.distance().inFeet()).toArray();
    return new LevenbergMarquardtOptimizer()
        .withCostRelativeTolerance(1e-14)
        .withParameterRelativeTolerance(1e-14)
        .optimize(
            new LeastSquaresBuilder()
                .start(new double[] {guess.x().inFeet(), guess.y().inFeet()})
                .target(taped)
                .model(point -> distances(point, ties))
                .maxEvaluations(1000)
                .maxIterations(1000)
                .build())
        .getPoint();
  }

  private static Pair<RealVector, org.apache.commons.math3.linear.RealMatrix> distances(
      RealVector point, List<CornerTie> ties) {
    double[] values = new double[ties.size()];
    double[][] jacobian = new double[ties.size()][2];
    for (int i = 0; i < values.length; i++) {
      double dx = point.getEntry(0) - ties.get(i).at().x().inFeet();
      double dy = point.getEntry(1) - ties.get(i).at().y().inFeet();
      values[i] = Math.hypot(dx, dy);
      jacobian[i][0] = dx / values[i];
      jacobian[i][1] = dy / values[i];
    }
    return new Pair<>(new ArrayRealVector(values), new Array2DRowRealMatrix(jacobian));
  }

  private static TieAdjustment adjust(Point guess, List<CornerTie> ties) {
    return TieAdjustment.from(guess, ties).orElseThrow();
  }

  private static CornerTie tie(String name, double x, double y, double feet) {
    return new CornerTie(name, TwoTiesTest.feet(x, y), Length.feet(feet));
  }
}
