package wallbook.compose.rackcard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import wallbook.Composed;
import wallbook.Jobs;
import wallbook.compose.rackcard.RackCardView.HeadLines;
import wallbook.compose.rackcard.RackCardView.PanelLines;
import wallbook.record.Job;
import wallbook.render.DocumentRenderer;
import wallbook.render.DocumentRequest;
import wallbook.render.Documents;
import wallbook.render.PdfPages;
import wallbook.render.PlanFigures;
import wallbook.render.TemplateSource;
import wallbook.render.WordsFiles;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

class RackCardComposerTest {

  /** A rack of so many panels of 24 ports, each full. */
  private static Job rack(int panels) {
    StringBuilder yaml =
        new StringBuilder(
            """
            floors: [{id: g, name: Ground floor, level: 0, elevation: 0 ft}]
            spaces: [{id: hall, name: Hall, floor: g, kind: hall}]
            places: [{id: desk, name: Desk plate, space: hall, kind: wall_plate, use: data}]
            heads:
              - id: rack
                name: Rack
                kind: rack
                space: hall
                panels:
            """);
    for (int p = 1; p <= panels; p++) {
      yaml.append(
          "      - {id: P%d, name: Patch panel %d of this house, kind: patch_panel, ports: 24}%n"
              .formatted(p, p));
    }
    yaml.append("runs:\n");
    for (int p = 1; p <= panels; p++) {
      for (int port = 1; port <= 24; port++) {
        yaml.append(
            ("  - {id: r-%d-%d, label: R%02d-%02d, cable: cat6, condition: in_service,%n"
                    + "     from: {head: rack, panel: P%d, port: %d, finish: terminated},%n"
                    + "     to: {place: desk, finish: terminated}}%n")
                .formatted(p, port, p, port, p, port));
      }
    }
    return Jobs.job(yaml.toString());
  }

  private static List<PanelLines> panels(RackCardView card) {
    return card.heads().stream().map(HeadLines::panels).flatMap(List::stream).toList();
  }

  @Test
  void fewPanelsNameTheirLabels() {
    RackCardView card = new RackCardComposer(Composed.of(rack(2))).compose();
    assertEquals("R01-01–24; 0 free", panels(card).get(0).holds().orElseThrow());
  }

  @Test
  void manyPanelsGetALineEachAndTooManyAreCounted() {
    RackCardView card = new RackCardComposer(Composed.of(rack(25))).compose();
    assertTrue(panels(card).stream().allMatch(p -> p.holds().isEmpty()));
    assertEquals(24, panels(card).size());
    assertTrue(card.more().orElseThrow().startsWith("1 more panel"));
  }

  @Test
  void theCardOfSixHundredRunsIsOnePage() throws Exception {
    TemplateSource source = TemplateSource.carried();
    Wording wording =
        new Wording(Locale.US, WordsFiles.read(source, Locale.US), UnitSystem.FEET_AND_INCHES);
    for (int panels : List.of(12, 25)) {
      byte[] pdf =
          new DocumentRenderer(source, wording, new PlanFigures())
              .render(
                  new DocumentRequest(
                      "rack-door-card.pdf",
                      "rack-door-card.md",
                      new RackCardComposer(Composed.of(rack(panels))).compose(),
                      Documents.FACTS,
                      List.of()))
              .pdf();
      assertEquals(1, PdfPages.of(pdf).count(), panels + " panels");
    }
  }

  @Test
  void thePanelOfWhatWatchesIsNotOnTheCard() {
    RackCardView card = new RackCardComposer(Composed.of(Jobs.sample("lakeside"))).compose();
    assertEquals(
        List.of("Equipment rack", "Service entrance box"),
        card.heads().stream().map(HeadLines::name).toList());
  }
}
