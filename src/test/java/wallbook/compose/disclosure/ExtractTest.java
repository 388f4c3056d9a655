package wallbook.compose.disclosure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallbook.AllWords;
import wallbook.Jobs;
import wallbook.compose.Discretion;
import wallbook.read.RecordWriter;
import wallbook.record.Conduit;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.JobRecord;
import wallbook.record.Run;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

class ExtractTest {
  private static final Wording WORDING =
      new Wording(Locale.US, AllWords.ENGLISH, UnitSystem.METRIC);
  private static final Job HOUSE =
      Jobs.job(
          """
          floors: [{id: ground, name: Ground floor, level: 0, elevation: 0 m}]
          spaces:
            - {id: hall, name: Hall, floor: ground, kind: hall}
            - {id: den, name: Den, floor: ground, kind: study}
            - {id: lawn, name: Lawn, floor: ground, kind: garden}
          heads:
            - id: rack
              name: Rack
              kind: rack
              space: hall
              panels:
                - {id: P1, name: Panel, kind: patch_panel, ports: 24}
                - {id: P2, name: Speaker posts, kind: binding_posts, ports: 8}
          places:
            - {id: plate, name: Plate, space: den, kind: wall_plate, use: data}
            - {id: eye, name: Lookout, space: lawn, kind: device, use: camera}
            - {id: stub, name: Lawn end, space: lawn, kind: stub_out, use: landscape_audio}
          runs:
            - id: r-plate
              label: D-01
              cable: cat6
              from: {head: rack, panel: P1, port: 1, finish: terminated}
              to: {place: plate, finish: terminated}
              condition: in_service
            - id: r-eye
              label: E-01
              cable: cat6
              from: {head: rack, panel: P1, port: 2, finish: terminated}
              to: {place: eye, finish: terminated}
              condition: in_service
              conduits: [c-camera]
            - id: r-lawn
              label: L-01
              cable: speaker-14-2
              from: {head: rack, panel: P2, port: 1, finish: terminated}
              to: {place: stub, finish: coiled}
              condition: dark
              conduits: [c-camera]
          conduits:
            - id: c-camera
              label: C-1
              name: Tube to the camera
              type: pvc_40
              trade_size: "1"
              from: {head: rack}
              to: {place: stub}
              contents: [r-eye, r-lawn]
              pull_string: none
              condition: unknown
          stub_outs:
            - {id: so, place: stub, conduit: c-camera, coiled: [{run: r-lawn, length: 3 m}]}
          """);

  private static JobRecord extract(Part part) {
    Discretion discretion = new Discretion(HOUSE, WORDING);
    DisclosedJob disclosed =
        DisclosedJob.of(
            HOUSE, new DisclosureRules(Jobs.TABLES), Recipient.TRADE, discretion::isTellable);
    return Extract.of(disclosed, part, "somebody", discretion::isTellable);
  }

  @Test
  void aSharedConduitIsNotCalledAfterWhatIsKeptBack() {
    JobRecord extract = extract(Part.LANDSCAPING);
    Conduit conduit = extract.conduits().get(0);

    assertEquals("C-1", conduit.name());
    assertEquals("conduit-1", conduit.id());
    assertEquals(List.of("conduit-1"), extract.runs().get(0).conduits());
    assertEquals(Optional.of("conduit-1"), extract.stubOuts().get(0).conduit());
    String text = RecordWriter.text(extract);
    assertFalse(text.toLowerCase(Locale.ROOT).contains("camera"), text);
  }

  @Test
  void aTradeGetsItsOwnRunsAndOfTheRackOnlyTheirPanel() {
    JobRecord extract = extract(Part.LANDSCAPING);

    assertEquals(List.of("L-01"), extract.runs().stream().map(Run::label).toList());
    Head rack = extract.heads().get(0);
    assertEquals(List.of("P2"), rack.panels().stream().map(p -> p.id()).toList());
    assertEquals(List.of("hall", "lawn"), extract.spaces().stream().map(s -> s.id()).toList());
  }

  @Test
  void whatIsWrittenReadsAsTheSameRecord() {
    JobRecord extract = extract(Part.HOUSE);
    Job read = Jobs.read(RecordWriter.text(extract)).job().orElseThrow();

    assertEquals(RecordWriter.text(extract), RecordWriter.text(read.record()));
    assertEquals(Optional.of("somebody"), read.facts().extractFor());
    assertEquals(2, read.runs().size());
  }
}
