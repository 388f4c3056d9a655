package wallbook.compose.labels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import wallbook.AllWords;
import wallbook.Jobs;
import wallbook.record.Job;
import wallbook.record.PlaceUse;
import wallbook.record.Run;
import wallbook.stock.LabelKind;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

class LabelsComposerTest {
  private static final Wording WORDING =
      new Wording(Locale.US, AllWords.ENGLISH, UnitSystem.FEET_AND_INCHES);
  private static final Job FLAT = Jobs.sample("flat");
  private static final Job LAKESIDE = Jobs.sample("lakeside");

  private static List<Label> labels(Job job, LabelKind kind) {
    return new LabelsComposer(job, WORDING).labels(kind, 6);
  }

  private static List<CableWrap> wraps(Job job) {
    return labels(job, LabelKind.CABLE_WRAPS).stream().map(CableWrap.class::cast).toList();
  }

  private static List<CableWrap> of(List<CableWrap> wraps, String label) {
    return wraps.stream().filter(w -> w.label().equals(label)).toList();
  }

  /** Plain blanks in place of those that must not break. */
  private static String plain(String text) {
    return text.replace('\u00a0', ' ');
  }

  /** TIA-606: an identifier at both ends of every cable (from memory). */
  @Test
  void everyCableHasTwoWrapsAndEachNamesTheEndOfTheOther() {
    for (Job job : List.of(FLAT, LAKESIDE)) {
      List<CableWrap> all = wraps(job);
      assertEquals(2 * job.runs().size(), all.size());
      for (Run run : job.runs()) {
        List<CableWrap> pair = of(all, run.label());
        assertEquals(2, pair.size());
        assertEquals(pair.get(0).thisEnd(), pair.get(1).otherEnd());
        assertEquals(pair.get(0).otherEnd(), pair.get(1).thisEnd());
      }
    }
  }

  @Test
  void anEndIsNamedFromTheFullestFormToTheShortest() {
    CableWrap atRack = of(wraps(FLAT), "L-01").get(0);
    assertEquals(
        List.of(
            "Cabinet in the hall, Patch panel, port 1",
            "Cabinet in the hall, P port 1",
            "P port 1"),
        atRack.thisEnd().stream().map(LabelsComposerTest::plain).toList());
    assertEquals(
        List.of(
            "Living room with kitchen, Television plate, La jack 1",
            "Living room with kitchen, La jack 1",
            "La jack 1"),
        atRack.otherEnd().stream().map(LabelsComposerTest::plain).toList());
  }

  @Test
  void aCodeIsPlainTextFromBothEndsAndJobDownToTheLabel() {
    List<String> code = of(wraps(FLAT), "L-01").get(1).code();
    assertEquals(
        "L-01 | Living room with kitchen, Television plate, La jack 1 > Cabinet in the hall,"
            + " Patch panel, port 1 | Flat in Sample Street r1",
        code.get(0));
    assertEquals("L-01 | P port 1", code.get(code.size() - 2));
    assertEquals("L-01", code.get(code.size() - 1));
    assertTrue(code.stream().noneMatch(text -> text.contains("://")));
  }

  @Test
  void labelsOfSensorsKeypadsAndCamerasTellTheHeadOnly() {
    Set<PlaceUse> watched =
        Set.of(
            PlaceUse.KEYPAD,
            PlaceUse.CONTACT,
            PlaceUse.MOTION_SENSOR,
            PlaceUse.GLASS_BREAK_SENSOR,
            PlaceUse.REPEATER,
            PlaceUse.CAMERA);
    List<CableWrap> all = wraps(LAKESIDE);
    int seen = 0;
    for (Run run : LAKESIDE.runs()) {
      Optional<String> place = run.to().place();
      if (place.isEmpty() || !watched.contains(LAKESIDE.place(place.get()).use())) {
        continue;
      }
      seen++;
      CableWrap atHead = of(all, run.label()).get(0);
      CableWrap atPlace = of(all, run.label()).get(1);
      assertEquals(List.of(), atHead.otherEnd());
      assertEquals(List.of(), atPlace.thisEnd());
      assertEquals(List.of(run.label()), atHead.code());
      assertEquals(List.of(run.label()), atPlace.code());
      String told = String.join(" ", atPlace.otherEnd());
      assertFalse(
          told.contains("Keypads") || told.contains("Contacts") || told.contains("cameras"));
    }
    assertTrue(seen > 20);
  }

  @Test
  void noLabelNamesWhatWatchesTheHouse() {
    for (LabelKind kind : LabelKind.values()) {
      String all =
          labels(LAKESIDE, kind).stream()
              .map(label -> label.toString().replaceAll("names=\\[[^]]*]|cable=[^,]*", ""))
              .collect(Collectors.joining("\n"))
              .toLowerCase(Locale.ROOT);
      for (String word : List.of("camera", "keypad", "motion", "contact", "glass break")) {
        assertFalse(all.contains(word), kind + " tells of " + word);
      }
    }
  }

  @Test
  void aPlateNamesItsJacksInOrderAndWhatIsNotFinished() {
    PlateStrip strip = (PlateStrip) labels(FLAT, LabelKind.PLATE_STRIPS).get(0);
    assertEquals("La", strip.title());
    assertEquals(
        List.of("1 L-01", "2 L-02", "3 L-03", "L-04 (coiled)"),
        strip.jacks().stream().map(LabelsComposerTest::plain).toList());
    assertEquals(
        "La | Living room with kitchen, Television plate | L-01, L-02, L-03, L-04"
            + " | Flat in Sample Street r1",
        strip.code().get(0));
  }

  @Test
  void aPortStripHasEveryPortOnceAndEndsWithTheRowOfThePanel() {
    List<PortStrip> strips =
        labels(LAKESIDE, LabelKind.PORT_STRIPS).stream().map(PortStrip.class::cast).toList();
    long ports =
        LAKESIDE.heads().stream().flatMap(h -> h.panels().stream()).mapToInt(p -> p.ports()).sum();
    assertEquals(ports, strips.stream().mapToLong(s -> s.ports().size()).sum());
    List<PortStrip> panel = strips.stream().filter(s -> s.names().contains("P1")).toList();
    assertEquals(8, panel.size());
    assertEquals(1, panel.get(0).ports().get(0).number());
    assertEquals(Optional.of("GRT-01"), panel.get(0).ports().get(0).label());
    assertEquals(43, panel.get(7).ports().get(0).number());
  }

  @Test
  void aStripNeverJoinsTwoRowsOfAPanel() {
    List<Label> strips = new LabelsComposer(LAKESIDE, WORDING).labels(LabelKind.PORT_STRIPS, 7);
    List<Integer> sizes =
        strips.stream()
            .map(PortStrip.class::cast)
            .filter(s -> s.names().contains("P1"))
            .map(s -> s.ports().size())
            .toList();
    assertEquals(List.of(7, 7, 7, 3, 7, 7, 7, 3), sizes);
  }

  @Test
  void aConduitHasTwoTagsThatSayWhetherItWasProved() {
    List<ConduitTag> tags =
        labels(LAKESIDE, LabelKind.CONDUIT_TAGS).stream().map(ConduitTag.class::cast).toList();
    assertEquals(2 * LAKESIDE.conduits().size(), tags.size());
    assertEquals("PROVED November 18, 2025: clear", tags.get(0).state());
    assertEquals("mandrel drawn through, 1.63 in", plain(tags.get(0).facts().get(0)));
    ConduitTag crushed =
        tags.stream().filter(t -> t.label().equals("C-05")).findFirst().orElseThrow();
    assertEquals("NOT PROVED: crushed", crushed.state());
  }

  @Test
  void labelsAreSaidInSpanish() {
    Wording spanish =
        new Wording(Locale.forLanguageTag("es-US"), AllWords.SPANISH, UnitSystem.METRIC);
    CableWrap wrap =
        (CableWrap) new LabelsComposer(FLAT, spanish).labels(LabelKind.CABLE_WRAPS, 6).get(0);
    assertEquals("P puerto 1", plain(wrap.thisEnd().get(2)));
  }
}
