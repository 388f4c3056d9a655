package wallbook.render;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.svgsupport.PDFTranscoder.OpenHtmlFontResolver;
import java.awt.font.TextAttribute;
import java.text.AttributedCharacterIterator;
import java.util.List;
import java.util.Map;
import org.apache.batik.gvt.font.AWTGVTFont;
import org.apache.batik.gvt.font.GVTFont;
import org.apache.batik.gvt.font.GVTFontFace;
import org.apache.batik.gvt.font.GVTFontFamily;

/**
 * Sets the text of every drawing in the documents' own font, whatever family it asks for: no
 * drawing falls back on a font of the machine.
 */
final class DrawingFonts extends OpenHtmlFontResolver {
  private final GVTFontFamily family;

  private DrawingFonts(Fonts fonts) {
    this.family = new Family(fonts);
  }

  /** An engine for the drawings of one document: no scripts, nothing from outside. */
  static BatikSVGDrawer drawer(Fonts fonts) {
    return new BatikSVGDrawer() {
      @Override
      public void importFontFaceRules(List<FontFaceRule> fontFaces, SharedContext shared) {
        this.fontResolver = new DrawingFonts(fonts);
      }
    };
  }

  @Override
  public GVTFontFamily resolve(String name) {
    return family;
  }

  @Override
  public GVTFontFamily getFamilyThatCanDisplay(char c) {
    return family;
  }

  @Override
  public GVTFontFamily getDefault() {
    return family;
  }

  private record Family(Fonts fonts) implements GVTFontFamily {
    @Override
    public String getFamilyName() {
      return Face.FAMILY;
    }

    @Override
    public GVTFontFace getFontFace() {
      return new GVTFontFace(Face.FAMILY);
    }

    @Override
    public GVTFont deriveFont(float size, AttributedCharacterIterator text) {
      return deriveFont(size, text.getAttributes());
    }

    @Override
    @SuppressWarnings("rawtypes") // the engine's interface has a raw map
    public GVTFont deriveFont(float size, Map attributes) {
      boolean bold = above(attributes.get(TextAttribute.WEIGHT), TextAttribute.WEIGHT_MEDIUM);
      boolean italic = above(attributes.get(TextAttribute.POSTURE), TextAttribute.POSTURE_REGULAR);
      return new AWTGVTFont(fonts.forDrawings(Face.of(bold, italic)).deriveFont(size));
    }

    @Override
    public boolean isComplex() {
      return false;
    }

    private static boolean above(Object value, float plain) {
      return value instanceof Number number && number.floatValue() > plain;
    }
  }
}
