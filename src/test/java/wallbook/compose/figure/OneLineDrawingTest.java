package wallbook.compose.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wallbook.Composed;
import wallbook.Jobs;
import wallbook.compose.drawing.OneLine;
import wallbook.compose.drawing.OneLine.LinkKind;
import wallbook.record.Head;
import wallbook.record.Job;

class OneLineDrawingTest {
  private static final Job JOB = Composed.of(Jobs.sample("lakeside")).job();
  private static final OneLineDrawing.Drawn DRAWN =
      new OneLineDrawing(JOB, Composed.WORDING).draw().orElseThrow();

  @Test
  void everyHeadCountsTheRunsThatComeHomeFromPlaces() {
    for (Head head : JOB.heads()) {
      OneLine.Node node =
          DRAWN.diagram().bands().stream()
              .flatMap(b -> b.nodes().stream())
              .filter(n -> n.name().equals(head.name()))
              .findFirst()
              .orElseThrow();
      long fromPlaces =
          JOB.runsAt(head).stream()
              .filter(r -> Stream.of(r.from(), r.to()).anyMatch(e -> e.place().isPresent()))
              .count();
      long counted = node.groups().stream().mapToLong(g -> Long.parseLong(g.count())).sum();
      assertEquals(fromPlaces, counted, head.name());
    }
  }

  @Test
  void everyConduitBetweenSpacesIsALineOrCounted() {
    long lines = DRAWN.diagram().links().stream().filter(l -> l.kind() == LinkKind.CONDUIT).count();
    // C-03 runs from the screen to the projector within the media room.
    assertEquals(JOB.conduits().size() - 1, lines + DRAWN.leftOut());
  }

  @Test
  void cablesFromHeadToHeadAreOneTrunkThatNamesThem() {
    OneLine.Link trunk =
        DRAWN.diagram().links().stream()
            .filter(l -> l.kind() == LinkKind.TRUNK)
            .findFirst()
            .orElseThrow();
    assertTrue(trunk.label().contains("SVC-01 to SVC-04"), trunk.label());
  }

  @Test
  void theDemarcationHasALineToTheStreet() {
    assertTrue(DRAWN.diagram().links().stream().anyMatch(l -> l.kind() == LinkKind.SERVICE));
  }

  @Test
  void aHouseWithoutAHeadHasNoDiagram() {
    Job job =
        Jobs.job(
            """
            floors: [{id: g, name: Ground floor, level: 0, elevation: 0 ft}]
            spaces: [{id: hall, name: Hall, floor: g, kind: hall}]
            """);
    assertEquals(Optional.empty(), new OneLineDrawing(job, Composed.WORDING).draw());
  }
}
