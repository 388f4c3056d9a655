package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.List;
import wallbook.render.Face;
import wallbook.render.Fonts;
import wallbook.render.Typeface;

/**
 * How much room text takes, by the glyph widths of the embedded font (Noto Sans). Kerning is left
 * out: it narrows text in that font, so a measured box is never too small. A character the font
 * lacks counts as one em.
 */
final class TextMeasure {
  /** One typographic point in millimetres: 25.4/72. */
  static final double MM_PER_PT = 25.4 / 72;

  private static final double LINE_SPACING = 1.2;
  // Height of tall letters above the base line and depth of 'g' below it, as shares of the size;
  // read off the font's outlines.
  private static final double ASCENT = 0.80;
  private static final double DESCENT = 0.24;

  private static final Typeface REGULAR = Fonts.typeface(Face.REGULAR);
  private static final Typeface BOLD = Fonts.typeface(Face.BOLD);

  private TextMeasure() {}

  static double widthMm(String text, Item.Type type) {
    Typeface face = type.bold() ? BOLD : REGULAR;
    double em = 0;
    for (int i = 0; i < text.length(); ) {
      int character = text.codePointAt(i);
      em += face.advance(character);
      i += Character.charCount(character);
    }
    return em * type.sizePt() * MM_PER_PT;
  }

  static double ascentMm(Item.Type type) {
    return ASCENT * type.sizePt() * MM_PER_PT;
  }

  static double descentMm(Item.Type type) {
    return DESCENT * type.sizePt() * MM_PER_PT;
  }

  /** Distance from base line to base line. */
  static double leadingMm(Item.Type type) {
    return LINE_SPACING * type.sizePt() * MM_PER_PT;
  }

  /** Distance from the base line up to the middle of a digit or capital. */
  static double midMm(Item.Type type) {
    return 0.357 * type.sizePt() * MM_PER_PT;
  }

  /**
   * Breaks text at spaces so that no line is wider than allowed; a word that is too wide alone is
   * broken inside.
   */
  static List<String> wrap(String text, Item.Type type, double maxWidthMm) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : PlainText.clean(text).trim().split(" +")) {
      String joined = line.isEmpty() ? word : line + " " + word;
      if (widthMm(joined, type) <= maxWidthMm) {
        line.replace(0, line.length(), joined);
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line.toString());
        line.setLength(0);
      }
      for (int i = 0; i < word.length(); ) {
        int next = word.offsetByCodePoints(i, 1);
        String longer = line + word.substring(i, next);
        if (!line.isEmpty() && widthMm(longer, type) > maxWidthMm) {
          lines.add(line.toString());
          line.setLength(0);
        }
        line.append(word, i, next);
        i = next;
      }
    }
    lines.add(line.toString());
    return List.copyOf(lines);
  }

  /** Shortens text with an ellipsis until it fits. */
  static String fit(String text, Item.Type type, double maxWidthMm) {
    String whole = PlainText.clean(text).trim();
    if (widthMm(whole, type) <= maxWidthMm) {
      return whole;
    }
    int end = whole.length();
    while (end > 0 && widthMm(whole.substring(0, end) + "\u2026", type) > maxWidthMm) {
      end = whole.offsetByCodePoints(end, -1);
    }
    return whole.substring(0, end).trim() + "\u2026";
  }
}
