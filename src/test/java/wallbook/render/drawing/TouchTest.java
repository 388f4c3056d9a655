package wallbook.render.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import wallbook.compose.drawing.Mark;
import wallbook.compose.drawing.NamedOutline;
import wallbook.compose.drawing.RoomPlan;
import wallbook.compose.drawing.Target;

/** What of a drawing can be touched on a screen. */
class TouchTest {
  private static final DrawingSvg DRAWINGS = new DrawingSvg();

  /** The sample room with every mark and neighbour leading somewhere. */
  private static RoomPlan leading() {
    RoomPlan plan = SampleDrawings.familyRoom();
    List<Mark> marks =
        plan.marks().stream()
            .map(m -> new Mark(m.symbol(), m.spot(), m.label(), target("place", m.label().get(0))))
            .toList();
    List<NamedOutline> neighbours =
        plan.neighbours().stream()
            .map(n -> new NamedOutline(n.name(), n.outline(), target("room", n.name())))
            .toList();
    return new RoomPlan(
        plan.frame(),
        plan.outline(),
        plan.wallLengths(),
        marks,
        neighbours,
        plan.north(),
        plan.unit(),
        plan.labels());
  }

  private static Optional<Target> target(String kind, String name) {
    return Optional.of(new Target(kind + "/" + name, name + " <&>"));
  }

  private static Element touchable(RoomPlan plan) {
    return Jsoup.parse(DRAWINGS.touchable(plan), Parser.xmlParser()).select("svg").first();
  }

  @Test
  void whatIsPrintedTakesNoNotice() {
    assertEquals(DRAWINGS.svg(SampleDrawings.familyRoom()), DRAWINGS.svg(leading()));
  }

  @Test
  void everyMarkLeadsToItsTargetByItsName() {
    Element svg = touchable(leading());
    for (Mark mark : leading().marks()) {
      String reference = mark.target().orElseThrow().reference();
      Element link = svg.select("a[href=\"#" + reference + "\"]").first();
      assertTrue(link != null, reference);
      assertEquals(mark.target().orElseThrow().name(), link.attr("aria-label"));
      assertEquals(2, link.select("polygon").size(), "symbol and label");
    }
  }

  @Test
  void thePictureItselfIsHiddenFromScreenReadersAndTheLinksAreNot() {
    Element svg = touchable(leading());
    assertEquals("group", svg.attr("role"));
    assertEquals(1, svg.select("> g[aria-hidden=true]").size());
    assertEquals(0, svg.select("g[aria-hidden=true] a").size());
  }

  @Test
  void aDrawingThatLeadsNowhereIsAPicture() {
    Element svg = touchable(SampleDrawings.familyRoom());
    assertEquals("img", svg.attr("role"));
    assertEquals(0, svg.select("a").size());
  }
}
