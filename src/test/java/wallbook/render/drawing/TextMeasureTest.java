package wallbook.render.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TextMeasureTest {
  /** The Java platform's own text layout is the reference; its kerning is off by default. */
  @ParameterizedTest
  @ValueSource(
      strings = {"FR-01 television", "2 data, 2 coax", "\u00e9tage \u03a9 12\u00b2", "18 ft 1 in"})
  void widthAgreesWithTheJavaPlatform(String text) throws Exception {
    for (boolean bold : new boolean[] {false, true}) {
      String file = bold ? "NotoSans-Bold.ttf" : "NotoSans-Regular.ttf";
      try (var in = TextMeasure.class.getResourceAsStream("/wallbook/fonts/" + file)) {
        Font font = Font.createFont(Font.TRUETYPE_FONT, in).deriveFont(1000f);
        FontRenderContext exact = new FontRenderContext(null, true, true);
        double em = font.getStringBounds(text, exact).getWidth() / 1000;
        double mm = em * 7 * 25.4 / 72;
        assertEquals(mm, TextMeasure.widthMm(text, new Item.Type(7, bold)), 0.01);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {3, 8, 20, 60})
  void noWrappedLineIsTooWide(double widthMm) {
    String text =
        "Supercalifragilistic blank plate behind the \ud83c\udfb5 cabinet  of the family room";
    List<String> lines = TextMeasure.wrap(text, Item.Type.LABEL, widthMm);
    lines.forEach(line -> assertTrue(TextMeasure.widthMm(line, Item.Type.LABEL) <= widthMm, line));
    assertEquals(text.replace(" ", ""), String.join("", lines).replace(" ", ""));
  }
}
