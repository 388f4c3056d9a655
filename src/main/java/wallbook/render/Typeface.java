package wallbook.render;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;

/**
 * One face with the glyph and the advance width of each character at hand. A character that the
 * face lacks has those of U+FFFD; white space that it lacks has those of the space. May be used by
 * several threads.
 */
public final class Typeface {
  /** Height of the face above the base line and depth below it, as shares of its size. */
  public static final float ASCENT = 1.069f;

  public static final float DESCENT = 0.293f;

  /** Height of a line, as a share of the size, where a stylesheet says nothing. */
  public static final float USUAL_LEADING = ASCENT + DESCENT;

  private static final int REPLACEMENT = 0xFFFD;
  private static final int KEPT = 0x3000;
  private static final int UNKNOWN = -1;

  private final TrueTypeFont font;
  private final CmapLookup lookup;
  // Filled as characters come; two threads may find the same, which does no harm.
  private final int[] glyphs = new int[KEPT];
  private final float[] advances;

  Typeface(TrueTypeFont font) {
    this.font = font;
    Arrays.fill(glyphs, UNKNOWN);
    try {
      this.lookup = font.getUnicodeCmapLookup();
      this.advances = new float[font.getNumberOfGlyphs()];
      float em = font.getUnitsPerEm();
      for (int glyph = 0; glyph < advances.length; glyph++) {
        advances[glyph] = font.getAdvanceWidth(glyph) / em;
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a font can't be read", e);
    }
  }

  /** The character that is printed for another: itself, U+FFFD or a space. */
  public int printed(int character) {
    if (lookup.getGlyphId(character) != 0) {
      return character;
    }
    return Character.isWhitespace(character) || Character.isSpaceChar(character)
        ? ' '
        : REPLACEMENT;
  }

  /** The number of a character's glyph in the font file. */
  public int glyph(int character) {
    if (character >= KEPT) {
      return lookup.getGlyphId(printed(character));
    }
    int glyph = glyphs[character];
    if (glyph == UNKNOWN) {
      glyph = lookup.getGlyphId(printed(character));
      glyphs[character] = glyph;
    }
    return glyph;
  }

  /** Whether the face has a glyph of its own for a character. */
  boolean has(int character) {
    return lookup.getGlyphId(character) != 0;
  }

  /** The way from a character to the next, as a share of the size. */
  public float advance(int character) {
    return advances[glyph(character)];
  }

  TrueTypeFont font() {
    return font;
  }
}
