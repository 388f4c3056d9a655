package wallbook.compose.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import wallbook.AllWords;
import wallbook.Approval;
import wallbook.Jobs;
import wallbook.ViewText;
import wallbook.assess.outlook.UpgradeHouse;
import wallbook.compose.RunState;
import wallbook.compose.guide.GuideView.ResultTable;
import wallbook.compose.guide.GuideView.ServiceLine;
import wallbook.compose.guide.GuideView.WaitingRow;
import wallbook.compose.guide.GuideView.WishChapter;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

class GuideComposerTest {
  private static final Job LAKESIDE = Jobs.sample("lakeside");
  private static final GuideView GUIDE = guide(LAKESIDE);

  @Test
  void theGuideOfTheSmallFlatIsAsApproved() {
    Wording metric = new Wording(Locale.UK, AllWords.ENGLISH, UnitSystem.METRIC);

    GuideView view = new GuideComposer(Guides.of(Jobs.sample("flat"), metric)).compose();

    Approval.verify("flat/upgrade-guide-view.txt", ViewText.of(view));
  }

  @Test
  void theGuideIsSaidInSpanishToo() {
    Wording spanish =
        new Wording(Locale.forLanguageTag("es-US"), AllWords.SPANISH, UnitSystem.METRIC);

    GuideView view = new GuideComposer(Guides.of(LAKESIDE, spanish)).compose();

    assertEquals(GUIDE.results().size(), view.results().size());
    assertTrue(ViewText.of(view).contains("más Wi-Fi"));
  }

  @Test
  void everyWaitingCableStandsInItsRoomAndInExactlyOneTable() {
    List<String> waiting =
        LAKESIDE.runs().stream()
            .filter(run -> RunState.of(run).isDark())
            .map(Run::label)
            .sorted()
            .toList();

    assertEquals(
        waiting,
        GUIDE.waiting().stream()
            .flatMap(room -> room.cables().stream())
            .map(WaitingRow::label)
            .sorted()
            .toList());
    assertEquals(
        waiting,
        GUIDE.results().stream().flatMap(table -> table.labels().stream()).sorted().toList());
  }

  @Test
  void theNumberBesideACableLeadsToItsTable() {
    for (GuideView.WaitingRoom room : GUIDE.waiting()) {
      for (WaitingRow row : room.cables()) {
        ResultTable table = GUIDE.results().get(row.table() - 1);
        assertEquals(row.table(), table.number());
        assertTrue(table.labels().contains(row.label()), row.label());
      }
    }
  }

  @Test
  void everyDeadCableSaysWhy() {
    assertEquals(
        LAKESIDE.runs().stream()
            .filter(r -> RunState.of(r) == RunState.DEAD || RunState.of(r) == RunState.RETIRED)
            .map(Run::label)
            .toList(),
        GUIDE.dead().stream().map(GuideView.DeadRow::label).toList());
    assertTrue(GUIDE.dead().stream().noneMatch(row -> row.why().equals("not recorded")));
  }

  @Test
  void likeCablesAreToldOfTogetherWithTheirRange() {
    GuideView view =
        guide(
            new UpgradeHouse()
                .run("n", "om3-2", "den-data", "coiled", "dark", "length: 50 ft")
                .run("f", "om3-2", "den-tv", "coiled", "dark", "length: 70 ft")
                .job());

    ResultTable table = view.results().get(0);

    assertEquals(1, view.results().size());
    assertEquals(List.of("n", "f"), table.labels());
    assertEquals("50\u00a0ft to 70\u00a0ft", table.lengths());
    // IEEE 802.3 clause 52: 10GBASE-SR over OM3 may lose 2.6 dB; two connections of 0.75 dB and
    // 3.0 dB/km (ANSI/TIA-568.3-D) over 15.2 m and 21.3 m come to 1.546 dB and 1.564 dB.
    ServiceLine line = line(table, "10 Gb/s network (10GBASE-SR)");
    assertEquals("1.55\u00a0dB to 1.56\u00a0dB", line.value());
    assertEquals("2.60\u00a0dB", line.limit());
    assertEquals("+1.04\u00a0dB to +1.05\u00a0dB", line.margin());
  }

  @Test
  void cablesWithAnotherAnswerStandInATableOfTheirOwn() {
    // TIA TSB-155-A: 10GBASE-T goes 37 m over Category 6 for certain, 55 m under a condition.
    GuideView view =
        guide(
            new UpgradeHouse()
                .dark("near", "cat6", "den-data")
                .run("far", "cat6", "den-tv", "terminated", "dark", "length: 140 ft")
                .job());

    assertEquals(2, view.results().size());
    assertEquals("yes", line(view.results().get(0), "10 Gb/s network (10GBASE-T)").verdict());
    assertEquals("yes, if", line(view.results().get(1), "10 Gb/s network (10GBASE-T)").verdict());
  }

  @Test
  void cablesThatMustStillBeFinishedStandApartFromReadyOnes() {
    GuideView view =
        guide(
            new UpgradeHouse()
                .dark("ready", "om3-2", "den-data")
                .run("open", "om3-2", "den-tv", "coiled", "dark", "length: 60 ft")
                .job());

    assertEquals(2, view.results().size());
    assertEquals(List.of(), view.results().get(0).first());
    assertEquals(List.of("a connector on 1 end"), view.results().get(1).first());
  }

  @Test
  void whatCannotBeIsToldWithItsReasonAndSource() {
    ResultTable table =
        guide(new UpgradeHouse().dark("r", "om3-2", "den-data").job()).results().get(0);

    String fibres =
        table.cannot().stream().filter(t -> t.contains("needs 8 fibres")).findFirst().orElseThrow();

    assertTrue(fibres.contains("100GBASE-SR4"), fibres);
    assertTrue(fibres.matches("(?s).*\\[[0-9, ]+]"), fibres);
  }

  @Test
  void whatTheRecordLacksIsToldInsteadOfAnAnswer() {
    ResultTable table =
        guide(new UpgradeHouse().run("r", "om3-2", "den-data", "terminated", "dark", "").job())
            .results()
            .get(0);

    assertEquals(List.of(), table.lines());
    assertTrue(table.notStated().get(0).contains("length of the run"), table.notStated().get(0));
  }

  @Test
  void everyReferenceIsInTheListOfSources() {
    TreeSet<String> referred =
        GUIDE.results().stream()
            .flatMap(table -> table.lines().stream())
            .map(ServiceLine::reference)
            .collect(Collectors.toCollection(TreeSet::new));

    GUIDE.sources().forEach(source -> referred.remove(source.number()));

    assertEquals(new TreeSet<String>(), referred);
    assertFalse(GUIDE.sources().isEmpty());
  }

  @Test
  void everyLetterOfALineIsExplainedBeneathItsTable() {
    for (ResultTable table : GUIDE.results()) {
      TreeSet<String> letters = new TreeSet<>();
      table.lines().forEach(line -> letters.addAll(List.of(line.letters().split(" "))));
      letters.remove("");
      table.assumptions().forEach(assumption -> letters.remove(assumption.term()));
      assertEquals(new TreeSet<String>(), letters, "table " + table.number());
    }
  }

  @Test
  void everyWishHasItsChapterAndNamesRoomsWithoutAWay() {
    assertEquals(10, GUIDE.wishes().size());
    WishChapter wifi = wish("more Wi-Fi");
    assertTrue(wifi.none().contains("Sun room"), wifi.none().toString());
    assertTrue(wifi.rooms().stream().noneMatch(room -> wifi.none().contains(room.room())));
    assertTrue(wifi.alternative().isPresent());
  }

  @Test
  void theWorkOfAWishCarriesItsCautions() {
    assertTrue(wish("music outside").cautions().contains("Before digging"));
    assertTrue(wish("better cellular coverage").cautions().contains("Outdoor antennas and coax"));
    assertTrue(wish("more Wi-Fi").cautions().contains("Never look into a fibre"));
    assertTrue(wish("motorised shades").cautions().contains("Low-voltage supplies"));
  }

  @Test
  void aCrushedConduitTakesNothing() {
    int crushed = LAKESIDE.conduits().stream().map(c -> c.label()).toList().indexOf("C-05");

    GuideView.FitTable fits = GUIDE.conduits().orElseThrow().fits().get(0);

    assertTrue(fits.cables().stream().allMatch(row -> row.cells().get(crushed).equals("no")));
    assertTrue(fits.connectors().stream().allMatch(row -> row.cells().get(crushed).equals("no")));
  }

  @Test
  void aHouseWithoutConduitsHasNoChapterOnThem() {
    assertFalse(
        guide(new UpgradeHouse().dark("r", "cat6", "den-data").job()).conduits().isPresent());
  }

  @Test
  void placesWithLessThanUsualAreRemarkedTogether() {
    String television =
        GUIDE.remarks().stream()
            .map(GuideView.Remark::text)
            .filter(text -> text.contains("Category 6A") && text.contains("television"))
            .findFirst()
            .orElseThrow();

    assertTrue(television.contains("Kitchen, Television plate"), television);
    assertTrue(television.contains("Guest bedroom, Television plate"), television);
  }

  private static GuideView guide(Job job) {
    return new GuideComposer(Guides.of(job)).compose();
  }

  private static WishChapter wish(String wish) {
    return GUIDE.wishes().stream().filter(w -> w.wish().equals(wish)).findFirst().orElseThrow();
  }

  private static ServiceLine line(ResultTable table, String service) {
    return table.lines().stream()
        .filter(line -> line.service().equals(service))
        .findFirst()
        .orElseThrow();
  }
}
