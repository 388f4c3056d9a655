package wallbook.render.press;

/**
 * Where a line may be broken: the part of the Unicode line breaking algorithm (UAX 14) that text in
 * the letters of our font needs.
 */
final class Breaks {
  private static final String AFTER = "\u2010\u2012\u2013\u2014\u200B";

  private Breaks() {}

  /**
   * Whether a line may end between two characters.
   *
   * @param earlier the character before the one before
   */
  static boolean allowed(int before, int after, int earlier) {
    if (before == ' ' || before == '\t') {
      return true;
    } else if (before == '-') {
      // A sign or the hyphen of a number stays with it; a hyphen that begins a word too.
      return Character.isLetter(after) && Character.isLetterOrDigit(earlier);
    } else if (before == '/') {
      return Character.isLetter(after) && Character.isLetter(earlier);
    }
    return AFTER.indexOf(before) >= 0
        && (Character.isLetterOrDigit(after) || before == Passage.ZERO_WIDTH_SPACE)
        && (earlier != ' ' || before == Passage.ZERO_WIDTH_SPACE);
  }

  /** Whether a word may be torn before a character, where nothing else helps. */
  static boolean tearable(int after) {
    int type = Character.getType(after);
    return type != Character.NON_SPACING_MARK
        && type != Character.ENCLOSING_MARK
        && type != Character.COMBINING_SPACING_MARK
        && after != Passage.ATOM
        && after != ' ';
  }
}
