package wallbook.render;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TrueTypeFont;

/**
 * How much room text of one face takes, as shares of its size, read off the font file. Not for use
 * by several threads.
 */
public final class GlyphMeasure {
  private final TrueTypeFont font;
  private final CmapLookup glyphs;
  private final Map<Integer, Extent> extents = new HashMap<>();

  /**
   * Room of a text in shares of the size of type.
   *
   * @param width from its beginning to the beginning of what would follow
   * @param ascent from the base line to the top of its highest letter
   * @param descent from the base line down to the bottom of its lowest letter, never negative
   */
  public record Extent(double width, double ascent, double descent) {
    Extent and(Extent next) {
      return new Extent(
          width + next.width, Math.max(ascent, next.ascent), Math.max(descent, next.descent));
    }
  }

  GlyphMeasure(TrueTypeFont font) {
    this.font = font;
    try {
      this.glyphs = font.getUnicodeCmapLookup();
    } catch (IOException e) {
      throw new UncheckedIOException("a font can't be read", e);
    }
  }

  /** Room that a text takes. */
  public Extent extent(String text) {
    return text.codePoints().mapToObj(this::extent).reduce(new Extent(0, 0, 0), Extent::and);
  }

  /** Height of a capital. */
  public double capHeight() {
    return extent("H").ascent();
  }

  private Extent extent(int codePoint) {
    return extents.computeIfAbsent(codePoint, this::read);
  }

  private Extent read(int codePoint) {
    try {
      int glyph = glyphs.getGlyphId(codePoint);
      double em = font.getUnitsPerEm();
      double width = font.getAdvanceWidth(glyph) / em;
      GlyphData shape = font.getGlyph().getGlyph(glyph);
      return shape == null
          ? new Extent(width, 0, 0)
          : new Extent(
              width, Math.max(0, shape.getYMaximum() / em), Math.max(0, -shape.getYMinimum() / em));
    } catch (IOException e) {
      throw new UncheckedIOException("a font can't be read", e);
    }
  }
}
