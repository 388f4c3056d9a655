package wallbook.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import wallbook.Jobs;

class LabelSheetsTest {
  private static final LabelSheets SHEETS = LabelSheets.of(Jobs.TABLES);

  static Stream<LabelSheet> sheets() {
    return SHEETS.all().stream();
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void labelsLieOnThePageAndNotOnEachOther(LabelSheet sheet) {
    Envelope page = new Envelope(0, sheet.page().widthMm(), 0, sheet.page().heightMm());
    List<Envelope> labels = new ArrayList<>();
    for (int position = 1; position <= sheet.labels(); position++) {
      LabelArea a = sheet.area(position);
      Envelope label = new Envelope(a.xMm(), a.rightMm(), a.yMm(), a.bottomMm());
      assertTrue(page.contains(label), sheet.name() + " " + position);
      for (Envelope other : labels) {
        assertTrue(label.intersection(other).getArea() < 1e-6, sheet.name() + " " + position);
      }
      labels.add(label);
    }
  }

  /** ISO 216 for A4; ANSI/ASME Y14.1 for Letter, 8 1/2 in by 11 in. */
  @ParameterizedTest
  @MethodSource("sheets")
  void pagesAreOfTheirPaper(LabelSheet sheet) {
    double shorter = Math.min(sheet.page().widthMm(), sheet.page().heightMm());
    double longer = Math.max(sheet.page().widthMm(), sheet.page().heightMm());
    switch (sheet.stock()) {
      case LETTER -> {
        assertEquals(8.5 * 25.4, shorter, 1e-6);
        assertEquals(11 * 25.4, longer, 1e-6);
      }
      case A4 -> {
        assertEquals(210, shorter, 1e-6);
        assertEquals(297, longer, 1e-6);
      }
      case TAPE -> assertTrue(Set.of(9.0, 12.0, 18.0, 24.0).contains(sheet.page().heightMm()));
    }
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void sheetsLeaveRoomForHeadAndBar(LabelSheet sheet) {
    if (sheet.stock() != Stock.TAPE) {
      double room = new Legibility(Jobs.TABLES).marginForPrintMm();
      assertTrue(sheet.area(1).yMm() >= room);
      double below = sheet.page().heightMm() - sheet.area(sheet.labels()).bottomMm();
      assertTrue(below >= room);
    }
  }

  @Test
  void everyKindHasASheetOfEachPaper() {
    for (LabelKind kind : LabelKind.values()) {
      assertEquals(kind, SHEETS.usual(kind, Stock.LETTER).purpose());
      assertEquals(kind, SHEETS.usual(kind, Stock.A4).purpose());
    }
  }

  @Test
  void thereIsATapeOfEachWidth() {
    Set<Double> widths =
        sheets()
            .filter(s -> s.stock() == Stock.TAPE)
            .map(s -> s.page().heightMm())
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of(9.0, 12.0, 18.0, 24.0), widths);
  }

  @Test
  void positionsRunRowByRow() {
    LabelSheet sheet = SHEETS.named("letter-flag").orElseThrow();
    assertEquals(sheet.area(1).yMm(), sheet.area(2).yMm());
    assertEquals(sheet.area(1).xMm(), sheet.area(3).xMm());
    assertTrue(sheet.area(3).yMm() > sheet.area(1).yMm());
  }

  /**
   * Geometry: the girth of a cable is pi times its diameter. 12.7 mm of print hide themselves round
   * less than 4.04 mm; a clear tail of 25.4 mm doesn't go round more than 8.09 mm.
   */
  @Test
  void aSelfLaminatingWrapSuitsCablesThatItsTailGoesRound() {
    LabelSheet.Girth girth = SHEETS.named("letter-wrap").orElseThrow().girth().orElseThrow();
    assertFalse(girth.suits(4.0));
    assertTrue(girth.suits(4.1));
    assertTrue(girth.suits(8.0));
    assertFalse(girth.suits(8.1));
  }

  @Test
  void anOwnSheetTakesThePlaceOfOneOfTheSameName() {
    LabelSheet own = SHEETS.named("a4-tag").orElseThrow();
    LabelSheet renamed =
        new LabelSheet(
            "letter-tag",
            own.purpose(),
            own.stock(),
            own.page(),
            own.grid(),
            own.label(),
            false,
            "");
    LabelSheets joined = SHEETS.with(List.of(renamed));
    assertEquals(Stock.A4, joined.named("letter-tag").orElseThrow().stock());
    assertEquals(SHEETS.all().size(), joined.all().size());
  }
}
