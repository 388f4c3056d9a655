package wallbook.render;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The font files, read once and shared by all documents; each PDF embeds the glyphs it uses. */
public final class Fonts {
  private final Map<Face, TrueTypeFont> forText = new EnumMap<>(Face.class);
  private final Map<Face, Font> forDrawings = new EnumMap<>(Face.class);

  private final CmapLookup glyphs;

  public Fonts() {
    for (Face face : Face.values()) {
      try (InputStream text = open(face);
          InputStream drawing = open(face)) {
        forText.put(face, new TTFParser().parse(new RandomAccessReadBuffer(text)));
        forDrawings.put(face, Font.createFont(Font.TRUETYPE_FONT, drawing));
      } catch (IOException e) {
        throw new UncheckedIOException("font " + face.resource(), e);
      } catch (FontFormatException e) {
        throw new IllegalStateException("font " + face.resource(), e);
      }
    }
    try {
      glyphs = forText.get(Face.REGULAR).getUnicodeCmapLookup();
    } catch (IOException e) {
      throw new UncheckedIOException("font " + Face.REGULAR.resource(), e);
    }
  }

  /** A face for drawings, 1 unit high. */
  Font forDrawings(Face face) {
    return forDrawings.get(face);
  }

  /** The characters of a text that the font has no glyph for, white space aside. */
  public SortedSet<Integer> missing(String text) {
    SortedSet<Integer> missing = new TreeSet<>();
    text.codePoints()
        .filter(c -> !Character.isWhitespace(c) && !Character.isSpaceChar(c))
        .filter(c -> glyphs.getGlyphId(c) == 0)
        .forEach(missing::add);
    return missing;
  }

  /** Offers all faces to one document; a face that no text uses isn't embedded. */
  void offer(PDDocument document, PdfRendererBuilder builder) {
    for (Face face : Face.values()) {
      builder.useFont(
          new Supplier(document, forText.get(face)),
          Face.FAMILY,
          face.bold() ? 700 : 400,
          face.italic() ? FontStyle.ITALIC : FontStyle.NORMAL,
          true);
    }
  }

  /** The font of one document in a face, embedded with the glyphs that the document uses. */
  public PDFont embedded(PDDocument document, Face face) {
    return new Supplier(document, forText.get(face)).supply();
  }

  /** Measures text of a face without kerning, as it is shown in a PDF. */
  public GlyphMeasure measure(Face face) {
    return new GlyphMeasure(forText.get(face));
  }

  private static InputStream open(Face face) throws IOException {
    InputStream stream = Fonts.class.getResourceAsStream(face.resource());
    if (stream == null) {
      throw new IOException("not in the program");
    }
    return stream;
  }

  /** Makes the font of a document when text first needs it. */
  private static final class Supplier extends PDFontSupplier {
    private final PDDocument document;
    private final TrueTypeFont font;

    Supplier(PDDocument document, TrueTypeFont font) {
      super(null);
      this.document = document;
      this.font = font;
    }

    @Override
    public PDFont supply() {
      try {
        return PDType0Font.load(document, font, true);
      } catch (IOException e) {
        throw new UncheckedIOException("a font can't be embedded", e);
      }
    }
  }
}
