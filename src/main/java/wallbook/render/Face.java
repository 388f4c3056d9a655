package wallbook.render;

/** The faces of the one font that all documents are set in. */
public enum Face {
  REGULAR("NotoSans-Regular.ttf", false, false),
  BOLD("NotoSans-Bold.ttf", true, false),
  ITALIC("NotoSans-Italic.ttf", false, true),
  BOLD_ITALIC("NotoSans-BoldItalic.ttf", true, true);

  private final String file;
  private final boolean bold;
  private final boolean italic;

  Face(String file, boolean bold, boolean italic) {
    this.file = file;
    this.bold = bold;
    this.italic = italic;
  }

  /** The face for a weight and a slant. */
  public static Face of(boolean bold, boolean italic) {
    if (bold) {
      return italic ? BOLD_ITALIC : BOLD;
    }
    return italic ? ITALIC : REGULAR;
  }

  /** Path of the font file on the class path. */
  String resource() {
    return "/wallbook/fonts/" + file;
  }

  public boolean bold() {
    return bold;
  }

  public boolean italic() {
    return italic;
  }
}
