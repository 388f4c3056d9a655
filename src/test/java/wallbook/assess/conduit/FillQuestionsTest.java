package wallbook.assess.conduit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Area;
import wallbook.quantity.Factor;
import wallbook.quantity.Ratio;
import wallbook.reference.Standing;
import wallbook.wording.Phrase;

class FillQuestionsTest {

  @Test
  void fillCarriesValueLimitAndMargin() {
    // three of 0.25 in in 1 in ENT: 3 × 0.0625 = 18.75 %; over two 40 % (NEC chapter 9 table 1)
    Assessment fill =
        ConduitHouse.ent1("").holding("cat6", "cat6", "cat6").answer("conduit.fill.table-1");
    assertEquals(18.75, percent(fill.value()), 1e-6);
    assertEquals(40, percent(fill.limit()), 1e-6);
    assertEquals(21.25, percent(fill.margin()), 1e-6);
    assertEquals(Verdict.WITHIN, fill.verdict());
  }

  @Test
  void twoCablesMayKeepPracticeAndFailTheTable() {
    // two of 0.25 in in 1/2 ENT fill 39.86 %: above 31 %, below 40 %
    ConduitHouse house =
        ConduitHouse.with("type: ent, trade_size: 1/2, pull_string: none, condition: clear")
            .holding("cat6", "cat6");
    Assessment byTable = house.answer("conduit.fill.table-1");
    Assessment byPractice = house.answer("conduit.fill.flat-40");
    assertEquals(Verdict.BEYOND, byTable.verdict());
    assertEquals(31, percent(byTable.limit()), 1e-6);
    assertEquals(-8.86, percent(byTable.margin()), 0.01);
    assertEquals(Verdict.WITHIN, byPractice.verdict());
    assertEquals(0.14, percent(byPractice.margin()), 0.01);
  }

  @ParameterizedTest
  @CsvSource({"24 in,60,conduit.fill.asked.nipple", "25 in,31,conduit.fill.asked.table-1"})
  void aConduitOfTwoFeetIsANipple(String length, double limit, String asked) {
    // NEC chapter 9 table 1 note 4: up to 24 in 60 %
    Assessment fill =
        ConduitHouse.ent1("length: " + length)
            .holding("cat6", "cat6")
            .answer("conduit.fill.table-1");
    assertEquals(limit, percent(fill.limit()), 1e-6);
    assertEquals(asked, fill.asked().key());
  }

  @Test
  void aConduitWithoutRecordedLengthIsNoNipple() {
    Assessment fill = ConduitHouse.ent1("").holding("cat6").answer("conduit.fill.table-1");
    assertEquals(53, percent(fill.limit()), 1e-6); // NEC chapter 9 table 1
  }

  @Test
  void whoseRuleTheTableIsIsSaid() {
    assertEquals("conduit.law.exempt", law("cat6")); // NEC 800.110(B)
    assertEquals("conduit.law.exempt", law("cat6", "series-6")); // NEC 820.110(B)
    assertEquals("conduit.law.exempt-with-fibre", law("cat6", "om3-2")); // NEC 770.110(B)
    assertEquals("conduit.law.class-2", law("cat6", "speaker-16-2")); // NEC 725.3(A)
    assertEquals("conduit.law.class-2", law("control-22-4"));
    assertEquals("conduit.law.class-2", law("power-18-2"));
    assertEquals(
        "conduit.fill.practice",
        ConduitHouse.ent1("")
            .holding("cat6")
            .answer("conduit.fill.flat-40")
            .limitedBy()
            .get()
            .key());
  }

  @Test
  void aFourPairCableThatFeedsSomethingIsAClassTwoCircuit() {
    Assessment fill =
        ConduitHouse.ent1("")
            .holding("cat6")
            .runsAlso("feed: {voltage: 12 V, current: 150 mA}")
            .answer("conduit.fill.table-1");
    assertEquals("conduit.law.class-2", fill.limitedBy().orElseThrow().key());
  }

  @Test
  void theLawsOwnSourceAndStandingAreCited() {
    Assessment exempt = ConduitHouse.ent1("").holding("cat6").answer("conduit.fill.table-1");
    assertTrue(exempt.source().citation().contains("chapter 9 table 1"));
    assertTrue(exempt.source().citation().contains("800.110(B)"));
    Assessment classTwo =
        ConduitHouse.ent1("").holding("speaker-16-2").answer("conduit.fill.table-1");
    assertTrue(classTwo.source().citation().contains("725.3(A)"));
    assertEquals(Standing.FROM_MEMORY, classTwo.source().standing());
  }

  @Test
  void familiesOutsideTheCodeAreOnlyCompared() {
    Assessment fill =
        ConduitHouse.with(
                "type: iec_rigid, trade_size: '25', bore: 21 mm, pull_string: none, condition: clear")
            .holding("cat6")
            .answer("conduit.fill.table-1");
    assertEquals("conduit.law.elsewhere", fill.limitedBy().orElseThrow().key());
  }

  @Test
  void anEmptyConduitHasNoLimitToKeep() {
    Assessment fill = ConduitHouse.ent1("").answer("conduit.fill.table-1");
    assertEquals(Verdict.INFORMATION, fill.verdict());
    assertEquals(0, percent(fill.value()), 0);
    assertEquals(Optional.empty(), fill.limit());
    assertEquals("conduit.law.empty", fill.limitedBy().orElseThrow().key());
  }

  @Test
  void anUnknownDiameterIsNamedAndNothingIsComputed() {
    Assessment fill =
        ConduitHouse.ent1("")
            .cable("odd", "medium: balanced_pair, pairs: 4")
            .holding("cat6", "odd", "odd")
            .answer("conduit.fill.table-1");
    assertEquals(Verdict.NOT_STATED, fill.verdict());
    assertEquals(List.of(Phrase.of("conduit.missing.diameter", "cable", "odd")), fill.missing());
    assertEquals(Optional.empty(), fill.value());
  }

  @Test
  void anUnknownBoreIsNamedAndNothingIsComputed() {
    ConduitHouse house =
        ConduitHouse.with(
                "type: iec_pliable, trade_size: '25', pull_string: none, condition: clear")
            .holding("cat6");
    Phrase missing = Phrase.of("conduit.missing.bore", "size", "25");
    for (String topic :
        List.of(
            "conduit.bore",
            "conduit.fill.table-1",
            "conduit.fill.flat-40",
            "conduit.free-bore",
            "conduit.largest-cable.table-1",
            "conduit.more.cat6.flat-40",
            "conduit.head.8p8c",
            "conduit.largest-head")) {
      assertEquals(List.of(missing), house.answer(topic).missing(), topic);
    }
    // from memory: typically 18.3 mm, for the reader only
    Phrase typical = house.answer("conduit.bore").assumptions().get(0);
    assertEquals("conduit.bore.typical", typical.key());
  }

  @Test
  void genericDimensionsAreSaidToBeGeneric() {
    Assessment generic = ConduitHouse.ent1("").holding("cat6").answer("conduit.fill.flat-40");
    assertTrue(keys(generic.assumptions()).contains("conduit.assume.generic"));
    assertEquals(Standing.FROM_MEMORY, generic.source().standing());
    Assessment own =
        ConduitHouse.ent1("")
            .cable("own", "medium: balanced_pair, pairs: 4, diameter: 0.24 in")
            .holding("own")
            .answer("conduit.fill.flat-40");
    assertFalse(keys(own.assumptions()).contains("conduit.assume.generic"));
    assertEquals(Standing.CONFIRMED, own.source().standing());
  }

  @Test
  void aCableOfTheJobsOwnIsNotGenericThoughItHasTheCataloguesName() {
    Assessment own =
        ConduitHouse.ent1("")
            .cable("cat6", "medium: balanced_pair, pairs: 4, diameter: 0.24 in")
            .holding("cat6")
            .answer("conduit.fill.flat-40");
    assertFalse(keys(own.assumptions()).contains("conduit.assume.generic"));
    assertEquals(5.76, percent(own.value()), 1e-6); // 0.24²/1²
  }

  @Test
  void genericTypesAreNamedOnceEach() {
    Assessment fill =
        ConduitHouse.ent1("").holding("cat6", "cat6", "series-6").answer("conduit.fill.flat-40");
    assertEquals(
        Phrase.of(
            "conduit.assume.generic", "cables", "Category 6, four pairs; Coax series 6, 75 ohm"),
        fill.assumptions().get(1));
  }

  @Test
  void howTheBoreIsKnownIsSaid() {
    Assessment byTable = ConduitHouse.ent1("").answer("conduit.bore");
    assertEquals(List.of("conduit.bore.by-table"), keys(byTable.assumptions()));
    assertEquals("c", byTable.subject());
    Assessment declared = ConduitHouse.ent1("bore: 0.9 in").answer("conduit.bore");
    assertEquals(List.of("conduit.bore.declared"), keys(declared.assumptions()));
    Assessment unknown =
        ConduitHouse.with("type: ent, trade_size: '3', pull_string: none, condition: clear")
            .answer("conduit.bore");
    assertTrue(unknown.source().citation().contains("table 4")); // ENT stops at 2 in
    assertEquals(List.of(), unknown.assumptions());
    Assessment maker =
        ConduitHouse.with("type: iec_rigid, trade_size: '25', pull_string: none, condition: clear")
            .answer("conduit.bore");
    assertTrue(maker.source().citation().contains("IEC 61386-21"));
  }

  @Test
  void theFreeAreaIsWhatPracticeLeaves() {
    // 1 in ENT: 40 % of 0.7854 sq in = 0.3142; one of 0.25 in takes 0.0491: 0.2651 left
    Assessment free = ConduitHouse.ent1("").holding("cat6").answer("conduit.free-bore");
    assertEquals(0.2651, ((Area) free.value().orElseThrow()).inSquareInches(), 0.0001);
    assertEquals(Verdict.WITHIN, free.verdict());
  }

  @Test
  void anOverfullConduitHasNoFreeArea() {
    Assessment free =
        ConduitHouse.with("type: ent, trade_size: 1/2, pull_string: none, condition: clear")
            .holding("cat6", "cat6", "cat6")
            .answer("conduit.free-bore");
    assertEquals(Verdict.BEYOND, free.verdict());
    assertTrue(((Area) free.value().orElseThrow()).inSquareInches() < 0);
  }

  @Test
  void threeLikeCablesAreTestedForJamming() {
    // D/d = 1.000/0.35 = 2.857: in the code's range; 1.05 × that = 3.0: small by the handbook
    ConduitHouse house =
        ConduitHouse.ent1("").holding("speaker-14-2", "speaker-14-2", "speaker-14-2");
    Assessment code = house.answer("conduit.jam.nec");
    assertEquals(2.857, ((Factor) code.value().orElseThrow()).value(), 0.001);
    assertEquals(Verdict.CONDITIONAL, code.verdict());
    assertEquals("conduit.jam.may-jam", code.limitedBy().orElseThrow().key());
    assertEquals(Verdict.WITHIN, house.answer("conduit.jam.bands").verdict());
  }

  @Test
  void onlyThreeLikeCablesAreTestedForJamming() {
    assertFalse(ConduitHouse.ent1("").holding("cat6", "cat6").asks("conduit.jam.nec"));
    assertFalse(
        ConduitHouse.ent1("").holding("cat6", "cat6", "cat6", "cat6").asks("conduit.jam.nec"));
    assertFalse(
        ConduitHouse.ent1("").holding("cat6", "cat6", "speaker-14-2").asks("conduit.jam.nec"));
  }

  @Test
  void aRunListedByTheConduitAndByItselfCountsOnce() {
    Assessment fill =
        ConduitHouse.ent1("contents: [r1]").holding("cat6").answer("conduit.fill.flat-40");
    assertEquals(6.25, percent(fill.value()), 1e-6); // 0.25²/1²
  }

  private static String law(String... cables) {
    return ConduitHouse.ent1("")
        .holding(cables)
        .answer("conduit.fill.table-1")
        .limitedBy()
        .orElseThrow()
        .key();
  }

  private static double percent(Optional<? extends wallbook.quantity.Quantity> ratio) {
    return ((Ratio) ratio.orElseThrow()).inPercent();
  }

  private static List<String> keys(List<Phrase> phrases) {
    return phrases.stream().map(Phrase::key).toList();
  }
}
