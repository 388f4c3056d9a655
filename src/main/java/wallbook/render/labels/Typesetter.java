package wallbook.render.labels;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import wallbook.render.Face;
import wallbook.render.Fonts;
import wallbook.render.GlyphMeasure;

/** Measures and breaks text of the embedded font, in millimetres. */
final class Typesetter {
  /** One typographic point in millimetres. */
  static final double MM_PER_PT = 25.4 / 72;

  private static final double LEADING = 1.15;
  private static final double NARROWER = 0.96;

  /** Longer texts are measured anew each time: few are, and they would fill the memory. */
  private static final int LONGEST_KEPT = 200;

  private static final int REPLACEMENT = 0xFFFD;

  private final Fonts fonts;
  private final Map<Face, GlyphMeasure> measures = new EnumMap<>(Face.class);
  private final Map<String, String> printable = new HashMap<>();
  private final Map<Face, Map<String, GlyphMeasure.Extent>> known = new EnumMap<>(Face.class);

  Typesetter(Fonts fonts) {
    this.fonts = fonts;
    for (Face face : Face.values()) {
      measures.put(face, fonts.measure(face));
      known.put(face, new HashMap<>());
    }
  }

  double capHeightEm(Face face) {
    return measures.get(face).capHeight();
  }

  /** Distance from base line to base line. */
  double leadingMm(double pt) {
    return LEADING * pt * MM_PER_PT;
  }

  double widthMm(String text, Face face, double pt) {
    return extent(text, face).width() * pt * MM_PER_PT;
  }

  /** A line at the origin: its base line at 0. */
  TypeLine line(String text, Face face, double pt) {
    GlyphMeasure.Extent extent = extent(text, face);
    double mm = pt * MM_PER_PT;
    return new TypeLine(
        text, face, pt, 0, 0, extent.width() * mm, extent.ascent() * mm, extent.descent() * mm);
  }

  /** Text as it can be printed: white space single, what the font lacks replaced. */
  String printable(String text) {
    return printable.computeIfAbsent(text, this::cleaned);
  }

  private String cleaned(String text) {
    SortedSet<Integer> missing = fonts.missing(text);
    StringBuilder clean = new StringBuilder();
    text.strip()
        .codePoints()
        .map(c -> missing.contains(c) || Character.isISOControl(c) ? REPLACEMENT : c)
        .forEach(clean::appendCodePoint);
    return clean.toString().replaceAll(" +", " ");
  }

  /** Breaks text at blanks; empty if a word alone is too wide. */
  Optional<List<String>> wrapped(String text, Face face, double pt, double widthMm) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.split(" ")) {
      if (widthMm(word, face, pt) > widthMm) {
        return Optional.empty();
      }
      String longer = line.isEmpty() ? word : line + " " + word;
      if (widthMm(longer, face, pt) <= widthMm) {
        line = longer;
      } else {
        lines.add(line);
        line = word;
      }
    }
    lines.add(line);
    return Optional.of(lines);
  }

  /** Breaks text at blanks into as few lines as {@link #wrapped}, of nearly the same length. */
  Optional<List<String>> balanced(String text, Face face, double pt, double widthMm) {
    Optional<List<String>> best = wrapped(text, face, pt, widthMm);
    if (best.isEmpty() || best.get().size() == 1) {
      return best;
    }
    for (double width = widthMm * NARROWER; ; width *= NARROWER) {
      Optional<List<String>> narrower = wrapped(text, face, pt, width);
      if (narrower.isEmpty() || narrower.get().size() > best.get().size()) {
        return best;
      }
      best = narrower;
    }
  }

  /**
   * Breaks a label into the fewest lines: behind a hyphen, dot, slash, colon or blank if that makes
   * no more of them, else anywhere. Nothing is added or taken away but blanks at a break.
   */
  List<String> broken(String label, Face face, double pt, double widthMm) {
    List<String> anywhere = broken(label, face, pt, widthMm, false);
    List<String> good = broken(label, face, pt, widthMm, true);
    return good.size() <= anywhere.size() ? good : anywhere;
  }

  private List<String> broken(
      String label, Face face, double pt, double widthMm, boolean wellBroken) {
    List<String> lines = new ArrayList<>();
    String rest = label;
    while (widthMm(rest, face, pt) > widthMm && rest.codePointCount(0, rest.length()) > 1) {
      int most = rest.offsetByCodePoints(0, 1);
      int good = 0;
      for (int end = most;
          end < rest.length() && widthMm(rest.substring(0, end).strip(), face, pt) <= widthMm;
          end = rest.offsetByCodePoints(end, 1)) {
        most = end;
        good = "-./:_ ".indexOf(rest.charAt(end - 1)) >= 0 ? end : good;
      }
      int end = wellBroken && good > 0 ? good : most;
      lines.add(rest.substring(0, end).strip());
      rest = rest.substring(end).strip();
    }
    lines.add(rest);
    return lines;
  }

  private GlyphMeasure.Extent extent(String text, Face face) {
    return text.length() > LONGEST_KEPT
        ? measures.get(face).extent(text)
        : known.get(face).computeIfAbsent(text, measures.get(face)::extent);
  }
}
