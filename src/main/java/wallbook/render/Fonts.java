package wallbook.render;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The font files, each read once when it is first asked for and shared by all documents; each PDF
 * embeds the glyphs it uses.
 */
public final class Fonts {
  private static final Map<Face, Typeface> READ = new EnumMap<>(Face.class);

  /** A face with its widths. */
  public static Typeface typeface(Face face) {
    synchronized (READ) {
      return READ.computeIfAbsent(face, Fonts::read);
    }
  }

  private static Typeface read(Face face) {
    try (InputStream file = Fonts.class.getResourceAsStream(face.resource())) {
      if (file == null) {
        throw new IOException("not in the program");
      }
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file));
      return new Typeface(font);
    } catch (IOException e) {
      throw new UncheckedIOException("font " + face.resource(), e);
    }
  }

  /** The characters of a text that the font has no glyph for, white space aside. */
  public SortedSet<Integer> missing(String text) {
    Typeface regular = typeface(Face.REGULAR);
    SortedSet<Integer> missing = new TreeSet<>();
    int c;
    for (int i = 0; i < text.length(); i += Character.charCount(c)) {
      c = text.codePointAt(i);
      boolean shown = c >= 0x80 && !Character.isWhitespace(c) && !Character.isSpaceChar(c);
      if (shown && !regular.has(c)) {
        missing.add(c);
      }
    }
    return missing;
  }

  /** The font of one document in a face, embedded with the glyphs that the document uses. */
  public PDFont embedded(PDDocument document, Face face) {
    return subset(document, face);
  }

  /** The same, for whoever says what glyphs are used and writes them itself. */
  public static PDType0Font subset(PDDocument document, Face face) {
    try {
      return PDType0Font.load(document, typeface(face).font(), true);
    } catch (IOException e) {
      throw new UncheckedIOException("a font can't be embedded", e);
    }
  }

  /** Measures text of a face without kerning, as it is shown in a PDF. */
  public GlyphMeasure measure(Face face) {
    return new GlyphMeasure(typeface(face).font());
  }
}
