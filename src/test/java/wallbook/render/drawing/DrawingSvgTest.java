package wallbook.render.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.drawing.Frame;
import wallbook.compose.drawing.Outline;
import wallbook.compose.drawing.RoomPlan;
import wallbook.compose.drawing.ScaleUnit;
import wallbook.compose.drawing.SymbolKind;
import wallbook.render.Figure;

@Isolated("changes the default locale or time zone")
class DrawingSvgTest {
  private final DrawingSvg renderer = new DrawingSvg();

  @Test
  void everyDrawingIsWellFormedAndCarriesItsAlternativeText() throws Exception {
    for (Drawing drawing : SampleDrawings.all()) {
      Element root = parsed(renderer.svg(drawing)).getDocumentElement();
      assertEquals("img", root.getAttribute("role"));
      assertEquals(drawing.frame().altText(), root.getAttribute("alt"));
      assertEquals(
          drawing.frame().title(), root.getElementsByTagName("title").item(0).getTextContent());
      assertEquals(
          drawing.frame().altText(), root.getElementsByTagName("desc").item(0).getTextContent());
    }
  }

  @Test
  void hostileTextStaysText() throws Exception {
    String hostile = "</text><script>&\"'\u0000\u0007\ud800\ufffe\u202e]]>";
    RoomPlan plan =
        new RoomPlan(
            new Frame(hostile, hostile, 180, 200),
            Outline.rectangle(0, 0, 4, 3),
            List.of(hostile, "", "", ""),
            List.of(SampleDrawings.onWall(SymbolKind.PLATE, 1, 1, hostile)),
            List.of(),
            Optional.empty(),
            ScaleUnit.METRE,
            RoomPlan.LabelStyle.AS_FITS);
    Document svg = parsed(renderer.svg(plan));
    assertEquals(0, svg.getElementsByTagName("script").getLength());
    NodeList texts = svg.getElementsByTagName("text");
    boolean found = false;
    for (int i = 0; i < texts.getLength(); i++) {
      found |= texts.item(i).getTextContent().contains("</text><script>&\"'");
    }
    assertEquals(true, found);
  }

  @Test
  void numbersHaveAPointInEveryLocale() {
    Locale before = Locale.getDefault();
    String expected = renderer.svg(SampleDrawings.familyRoom());
    try {
      for (String tag : List.of("de-DE", "tr-TR", "ar-EG")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertEquals(expected, renderer.svg(SampleDrawings.familyRoom()));
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void theViewBoxHoldsWholeTenthsOfAMillimetre() throws Exception {
    for (Drawing drawing : SampleDrawings.all()) {
      Element root = parsed(renderer.svg(drawing)).getDocumentElement();
      String[] box = root.getAttribute("viewBox").split(" ");
      double widthMm = Double.parseDouble(root.getAttribute("width").replace("mm", ""));
      double heightMm = Double.parseDouble(root.getAttribute("height").replace("mm", ""));
      assertEquals(drawing.frame().widthMm(), widthMm);
      assertEquals(Long.parseLong(box[2]), Math.round(10 * widthMm));
      assertEquals(Long.parseLong(box[3]), Math.round(10 * heightMm));
    }
  }

  @Test
  void documentsGetTheDrawingsAndNothingElse() {
    Drawing plan = SampleDrawings.familyRoom();
    Figure.Drawing figure = (Figure.Drawing) renderer.figure(plan).orElseThrow();
    assertEquals(renderer.svg(plan), figure.svg().get());
    assertEquals(plan.frame().altText(), figure.alternative());
    assertEquals(new ScenePainting(DrawingSvg.scene(plan), 1), figure.painting());
    assertEquals(Optional.empty(), renderer.figure("no drawing"));
  }

  @Test
  void onlyPlainShapesAreUsed() {
    for (Drawing drawing : SampleDrawings.all()) {
      String svg = renderer.svg(drawing);
      for (String refused :
          List.of("<style", "style=", "foreignObject", "class=", "NaN", "Infinity")) {
        assertFalse(svg.contains(refused), refused);
      }
    }
  }

  private static Document parsed(String svg) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
  }
}
