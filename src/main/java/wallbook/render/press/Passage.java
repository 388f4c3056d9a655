package wallbook.render.press;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Text that is broken into lines together: characters with their widths, and what stands among
 * them.
 */
final class Passage {
  /** Stands where an {@link Atom} does. */
  static final int ATOM = 0xFFFC;

  static final int LINE_END = '\n';

  /** May be broken after, and is not seen. */
  static final int ZERO_WIDTH_SPACE = 0x200B;

  private static final int FOLIO_DIGITS = 3;

  private int[] characters = new int[32];
  private float[] widths = new float[32];
  private int[] spans = new int[32];
  private int length;
  private boolean hasGround;
  private final Span strut;
  private final List<Span> all = new ArrayList<>();
  private final Map<Integer, Atom> atoms = new HashMap<>(4);
  private final Map<Integer, String> anchors = new HashMap<>(4);

  /**
   * @param strut look of the block's own text, which gives each line its least height
   */
  Passage(Span strut) {
    this.strut = strut;
  }

  Span strut() {
    return strut;
  }

  int length() {
    return length;
  }

  boolean isEmpty() {
    return length == 0;
  }

  /** Whether anything may be drawn behind it: grounds of inline elements, underlines. */
  boolean hasGround() {
    return hasGround;
  }

  int character(int i) {
    return characters[i];
  }

  float width(int i) {
    return widths[i];
  }

  Span span(int i) {
    return all.get(spans[i]);
  }

  /** The atom at a place that holds {@link #ATOM}. */
  Atom atom(int i) {
    return atoms.get(i);
  }

  /** The anchors that stand in a range. */
  List<String> anchors(int from, int to) {
    if (anchors.isEmpty()) {
      return List.of();
    }
    List<String> found = new ArrayList<>();
    for (int i = from; i < to; i++) {
      if (anchors.containsKey(i)) {
        found.add(anchors.get(i));
      }
    }
    return found;
  }

  /** Remembers an anchor at the end of what there is so far. */
  void anchor(String name) {
    anchors.merge(length, name, (a, b) -> a);
  }

  /** Makes a span the one of what is added next. */
  void begin(Span span) {
    if (all.isEmpty() || all.get(all.size() - 1) != span) {
      all.add(span);
      hasGround |= span.box() != null || span.type().underlined();
    }
  }

  /** Adds a character of the present span. */
  void add(int character) {
    Span span = all.get(all.size() - 1);
    TypeStyle type = span.type();
    boolean unseen = character == LINE_END || character == ZERO_WIDTH_SPACE;
    put(
        character,
        unseen ? 0 : span.face().advance(character) * type.size() + type.letterSpacing());
  }

  void add(Atom atom) {
    atoms.put(length, atom);
    hasGround |= atom instanceof Atom.Piece;
    put(ATOM, 0);
  }

  private void put(int character, float width) {
    if (length == characters.length) {
      characters = Arrays.copyOf(characters, length * 2);
      widths = Arrays.copyOf(widths, length * 2);
      spans = Arrays.copyOf(spans, length * 2);
    }
    characters[length] = character;
    widths[length] = width;
    spans[length++] = all.size() - 1;
  }

  /** Takes the last character off again. */
  void dropLast() {
    length--;
  }

  /** Whether a space may be left out at a line's begin and hangs over at its end. */
  boolean isLooseSpace(int i) {
    return characters[i] == ' ' && !span(i).type().whiteSpace().keepsSpaces();
  }

  /** Width of what stands at a place, in a line of some width. */
  float width(int i, float available) {
    if (characters[i] != ATOM) {
      return widths[i];
    }
    Atom atom = atoms.get(i);
    if (atom instanceof Atom.Edge edge) {
      return edge.width();
    } else if (atom instanceof Atom.Leader) {
      return span(i).type().size();
    } else if (atom instanceof Atom.Folio) {
      return FOLIO_DIGITS * span(i).face().advance('0') * span(i).type().size();
    } else if (atom instanceof Atom.Picture picture) {
      return PictureSize.of(picture.image(), picture.box(), available, Float.MAX_VALUE).width();
    }
    Atom.Piece piece = (Atom.Piece) atom;
    return piece.widthIn(available) + piece.insets(available);
  }

  /** Whether a line may end before a place. */
  boolean breaksBefore(int i) {
    if (i == 0 || characters[i] == ' ') {
      return false;
    }
    int before = characters[i - 1];
    return Breaks.allowed(before, characters[i], i > 1 ? characters[i - 2] : ' ')
        && span(i - 1).type().whiteSpace().wraps();
  }

  /** The width it takes if no line is broken. */
  float widest() {
    float widest = 0;
    float line = 0;
    float spaces = 0;
    for (int i = 0; i < length; i++) {
      if (characters[i] == LINE_END) {
        widest = Math.max(widest, line);
        line = 0;
        spaces = 0;
      } else if (isLooseSpace(i)) {
        spaces += line > 0 ? widths[i] : 0;
      } else {
        line += spaces + width(i, Float.MAX_VALUE);
        spaces = 0;
      }
    }
    return Math.max(widest, line);
  }

  /** The width of its widest part that can't be broken. */
  float narrowest() {
    float narrowest = 0;
    float part = 0;
    for (int i = 0; i < length; i++) {
      boolean anywhere = span(i).type().breaksWords() && span(i).type().whiteSpace().wraps();
      if (characters[i] == LINE_END || anywhere || breaksBefore(i)) {
        part = 0;
      }
      if (characters[i] != LINE_END && !(isLooseSpace(i) && endsPart(i))) {
        part += width(i, 0);
      }
      narrowest = Math.max(narrowest, part);
    }
    return narrowest;
  }

  private boolean endsPart(int i) {
    return i + 1 == length || characters[i + 1] == LINE_END || breaksBefore(i + 1);
  }
}
