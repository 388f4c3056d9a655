package wallbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallbook.Jobs;
import wallbook.finding.Finding;
import wallbook.quantity.Length;
import wallbook.record.Job;

class JobReaderTest {
  private static final String SMALL =
      """
      floors:
        - {id: ground, name: Ground floor, level: 0, elevation: 0 ft}
      spaces:
        - {id: den, name: Den, floor: ground, kind: living, ceiling_height: 9 ft}
        - {id: util, name: Utility, floor: ground, kind: utility}
      heads:
        - id: rack
          name: Rack
          kind: rack
          space: util
          panels: [{id: P1, name: Patch panel, kind: patch_panel, ports: 24}]
      places:
        - {id: den-1, name: Plate, space: den, kind: wall_plate, use: data, wall: A, offset: 6 ft 2 in, height: 18 in}
      runs:
        - id: r1
          label: DEN-01
          cable: cat6
          from: {head: rack, panel: P1, port: 1, finish: terminated}
          to: {place: den-1, jack: "1", finish: terminated}
          length: 118 ft
          condition: in_service
      """;

  @Test
  void aRecordBecomesAJobWithUnitsInItsTypes() {
    Job job = Jobs.job(SMALL);

    assertEquals(Optional.of(Length.feet(118)), job.run("r1").length());
    assertEquals(Length.inches(74), job.place("den-1").offset().orElseThrow());
    assertEquals("Den", job.spaceOf(job.run("r1").to()).name());
    assertEquals(1, job.runsAt(job.place("den-1")).size());
  }

  @Test
  void aMisspelledIdIsReportedWithItsPlaceAndTheNearestOne() {
    ReadResult result = Jobs.read(head() + SMALL.replace("place: den-1", "place: den-l"));

    Finding finding = result.findings().get(0);
    assertEquals("unknown-id", finding.name());
    assertEquals(Optional.of("den-l"), finding.found());
    assertEquals(Optional.of("den-1"), finding.nearest());
    assertEquals("job.yaml:21:17", finding.position().toString());
    assertTrue(result.job().isEmpty());
  }

  @Test
  void aBareNumberIsRefusedWithAProposal() {
    ReadResult result = Jobs.read(head() + SMALL.replace("length: 118 ft", "length: 118"));

    Finding finding = result.findings().get(0);
    assertEquals("unit-missing", finding.name());
    assertEquals(Optional.of("118 ft / 118 m"), finding.nearest());
    assertEquals("job.yaml:22:13", finding.position().toString());
  }

  @Test
  void aFileThatBreaksOffTellsOfThatAlone() {
    String wrong = SMALL.replace("cable: cat6", "cable: cat-six");

    assertEquals(List.of("yaml-syntax"), names(Jobs.read(head() + wrong + "zones: [")));
  }

  @Test
  void ofTwoListsWithOneKeyTheFirstIsReadAndTheSecondReported() {
    String again = SMALL.substring(SMALL.indexOf("runs:")).replace("length: 118 ft", "length: 118");

    assertEquals(List.of("duplicate-key"), names(Jobs.read(head() + SMALL + again)));
  }

  @Test
  void aListOfRecordsIsNoRecord() {
    String listed = (head() + SMALL).replaceAll("(?m)^", "  ").replaceFirst("  ", "- ");

    assertEquals(List.of("wrong-shape"), names(Jobs.read(listed)));
  }

  private static List<String> names(ReadResult result) {
    return result.findings().stream().map(Finding::name).toList();
  }

  private static String head() {
    return "format: 1\njob: {id: small, title: Small job, revision: 1}\n";
  }
}
