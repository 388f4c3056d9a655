package wallbook.compose.signoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallbook.Composed;
import wallbook.Jobs;
import wallbook.compose.Composition;
import wallbook.compose.signoff.SignOffView.FailedTest;
import wallbook.compose.signoff.SignOffView.Tick;

class SignOffComposerTest {
  private static final String HOUSE =
      """
      floors: [{id: g, name: Ground floor, level: 0, elevation: 0 ft}]
      spaces: [{id: hall, name: Hall, floor: g, kind: hall}]
      heads:
        - {id: rack, name: Rack, kind: rack, space: hall,
           panels: [{id: P, name: Panel, kind: patch_panel, ports: 8}]}
      places: [{id: desk, name: Desk plate, space: hall, kind: wall_plate, use: data}]
      runs:
        - {id: r-1, label: D-01, cable: cat6, from: {head: rack, panel: P, port: 1, finish: terminated},
           to: {place: desk, finish: terminated}, length: 60 ft, condition: in_service}
        - {id: r-2, label: D-02, cable: cat6, from: {head: rack, panel: P, port: 2, finish: terminated},
           to: {place: desk, finish: terminated}, length: 60 ft, condition: in_service}
        - {id: r-3, label: D-03, cable: cat6, from: {head: rack, panel: P, port: 3, finish: terminated},
           to: {place: desk, finish: terminated}, length: 60 ft, condition: dark}
      """;

  /** The sheet without the findings of checks, which are tested on their own. */
  private static SignOffView view(String more) {
    Composition all = Composed.of(Jobs.job(HOUSE + more));
    return new SignOffComposer(
            new Composition(
                all.job(),
                List.of(),
                all.assessments(),
                all.outlook(),
                all.wishes(),
                all.wording()))
        .compose();
  }

  private static Tick tick(SignOffView view, String beginning) {
    return view.checklist().stream()
        .filter(t -> t.text().startsWith(beginning))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void cablesInServiceWithoutATestAreNamedApartFromThoseThatWait() {
    SignOffView view =
        view("tests: [{id: t-1, run: r-1, date: 2026-04-01, kind: wire_map, result: pass}]\n");
    assertEquals(Optional.of("D-02"), view.untested());
    assertEquals(Optional.of("D-03"), view.untestedDark());
    assertFalse(view.isClean());
    Tick tested = tick(view, "Every cable in service");
    assertEquals(Optional.of("1 of 2"), tested.recorded());
    assertEquals(Optional.of("D-02"), tested.missing());
  }

  @Test
  void aFailedTestStaysOpenUntilOnePassed() {
    String tests =
        """
        tests:
          - {id: t-1, run: r-1, date: 2026-04-01, kind: wire_map, result: fail, reason: pin 3 open}
          - {id: t-2, run: r-1, date: 2026-04-02, kind: wire_map, result: pass}
          - {id: t-3, run: r-2, date: 2026-04-01, kind: wire_map, result: pass}
          - {id: t-4, run: r-2, date: 2026-04-02, kind: wire_map, result: fail, reason: pins crossed}
        """;
    List<FailedTest> failed = view(tests).failed();
    assertEquals(List.of("D-02"), failed.stream().map(FailedTest::label).toList());
    assertEquals("pins crossed", failed.get(0).reason());
  }

  @Test
  void aStringDrawnThroughProvesNoConduit() {
    SignOffView view =
        view(
            """
            conduits:
              - {id: c-1, label: C-01, name: One, type: ent, trade_size: "1", from: {head: rack}, to: {space: hall},
                 pull_string: none, condition: clear, proved: {date: 2026-01-01, by: mandrel, size: 0.7 in}}
              - {id: c-2, label: C-02, name: Two, type: ent, trade_size: "1", from: {head: rack}, to: {space: hall},
                 pull_string: none, condition: clear, proved: {date: 2026-01-01, by: string_drawn}}
            """);
    Tick conduits = tick(view, "Every conduit");
    assertEquals(Optional.of("1 of 2"), conduits.recorded());
    assertEquals(Optional.of("C-02"), conduits.missing());
  }

  @Test
  void whatTheHouseDoesNotHaveIsNoLineOfTheChecklist() {
    assertTrue(view("").checklist().stream().noneMatch(t -> t.text().startsWith("Every conduit")));
  }

  @Test
  void openExceptionsStandApartFromSettledOnes() {
    SignOffView view =
        view(
            """
            exceptions:
              - {id: x-1, kind: changed, what: Plate moved, open: yes}
              - {id: x-2, kind: changed, what: Plate turned, agreed: 2026-03-01}
            """);
    assertEquals(1, view.open().size());
    assertEquals("Plate moved", view.open().get(0).what());
    assertEquals("Plate turned", view.settled().get(0).what());
    assertEquals("March 1, 2026", view.settled().get(0).agreed());
  }

  @Test
  void aHouseWithNothingOpenSaysSo() {
    SignOffView view =
        view(
            """
            tests:
              - {id: t-1, run: r-1, date: 2026-04-01, kind: wire_map, result: pass}
              - {id: t-2, run: r-2, date: 2026-04-01, kind: wire_map, result: pass}
            """);
    assertTrue(view.isClean(), view.toString());
  }

  @Test
  void theLakesideHouseNamesItsFailedCertificationWithMarginAndSource() {
    SignOffView view = new SignOffComposer(Composed.of(Jobs.sample("lakeside"))).compose();
    SignOffView.Beyond found =
        view.beyond().stream().filter(b -> b.what().equals("GST-04")).findFirst().orElseThrow();
    assertTrue(found.answer().contains("margin −"), found.answer());
    assertTrue(found.answer().matches(".*\\[\\d+]"), found.answer());
  }
}
