package wallbook.assess.conduit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import wallbook.Jobs;
import wallbook.quantity.Diameter;

class FillPropertiesTest {
  private static final Diameter BORE = Diameter.inches(1.049);

  private final FillRule table1 = FillRule.table1(Jobs.TABLES);
  private final FillRule flat = FillRule.flat(Jobs.TABLES);
  private final Bundle bundle = new Bundle(Jobs.TABLES);

  @Property
  void addingACableNeverLowersTheFill(
      @ForAll("cables") List<Diameter> cables, @ForAll("cable") Diameter further) {
    assertTrue(Fill.of(plus(cables, 1, further), BORE).compareTo(Fill.of(cables, BORE)) > 0);
  }

  @Property
  void asManyMoreAsSaidFitAndByPracticeNotOneMore(
      @ForAll("cables") List<Diameter> cables, @ForAll("cable") Diameter further) {
    int more = Fill.more(cables, further, BORE, flat);
    if (more > 0) {
      assertTrue(Fill.keeps(plus(cables, more, further), BORE, flat));
    }
    assertFalse(Fill.keeps(plus(cables, more + 1, further), BORE, flat));
    int byTable = Fill.more(cables, further, BORE, table1);
    if (byTable > 0) {
      assertTrue(Fill.keeps(plus(cables, byTable, further), BORE, table1));
    }
    assertFalse(Fill.keeps(plus(cables, byTable + 1, further), BORE, table1));
  }

  @Property
  void theLargestFurtherCableJustFits(@ForAll("cables") List<Diameter> cables) {
    Fill.largestFurther(cables, BORE, table1)
        .ifPresent(
            largest -> {
              assertTrue(Fill.keeps(plus(cables, 1, largest.times(0.9999)), BORE, table1));
              assertFalse(Fill.keeps(plus(cables, 1, largest.times(1.0001)), BORE, table1));
            });
  }

  @Property
  void aBundleIsAtLeastItsAreaAndNeverShrinksByACable(
      @ForAll("cables") List<Diameter> cables, @ForAll("cable") Diameter further) {
    List<Diameter> all = plus(cables, 1, further);
    Diameter circle = bundle.enclosing(all);
    double area = all.stream().mapToDouble(d -> Fill.area(d).inSquareMetres()).sum();
    assertTrue(Fill.area(circle).inSquareMetres() >= area * (1 - 1e-9));
    assertTrue(circle.compareTo(Collections.max(all)) >= 0);
  }

  @Property
  void theOrderOfCablesDoesNotMatter(@ForAll("cables") List<Diameter> cables) {
    List<Diameter> turned = new ArrayList<>(cables);
    Collections.reverse(turned);
    assertEquals(Fill.of(cables, BORE).inFraction(), Fill.of(turned, BORE).inFraction(), 1e-12);
    assertEquals(bundle.enclosing(cables), bundle.enclosing(turned));
  }

  @Provide
  Arbitrary<Diameter> cable() {
    return Arbitraries.doubles().between(0.12, 0.45).ofScale(3).map(Diameter::inches);
  }

  @Provide
  Arbitrary<List<Diameter>> cables() {
    return cable().list().ofMaxSize(8);
  }

  private static List<Diameter> plus(List<Diameter> cables, int more, Diameter further) {
    List<Diameter> all = new ArrayList<>(cables);
    all.addAll(Collections.nCopies(more, further));
    return all;
  }
}
