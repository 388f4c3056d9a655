package wallbook.render.drawing;

/**
 * How a shape is drawn.
 *
 * @param lineMm line width in millimetres; 0 draws no line
 */
record Ink(double lineMm, Tone line, Tone fill, Dash dash) {
  /** Greys that stay apart on a black-and-white printer. */
  enum Tone {
    NONE("none"),
    BLACK("#000000", "#000"),
    DARK("#404040"),
    MID("#808080"),
    LIGHT("#c8c8c8"),
    PALE("#ececec"),
    WHITE("#ffffff", "#fff");

    final String code;

    /** The same in as few letters as there can be. */
    final String shortCode;

    Tone(String code) {
      this(code, code);
    }

    Tone(String code, String shortCode) {
      this.code = code;
      this.shortCode = shortCode;
    }
  }

  /** Dash patterns; the lengths are in millimetres. */
  enum Dash {
    SOLID(),
    DASHED(1.6, 0.9),
    SHORT(0.7, 0.7),
    CHAIN(3.0, 0.7, 0.5, 0.7);

    final double[] lengthsMm;

    Dash(double... lengthsMm) {
      this.lengthsMm = lengthsMm;
    }
  }

  static final Ink WALL = line(0.5);
  static final Ink SYMBOL = line(0.25);
  static final Ink MEDIUM = line(0.25);
  static final Ink THIN = line(0.13);
  static final Ink FAINT = new Ink(0.13, Tone.MID, Tone.NONE, Dash.SOLID);
  static final Ink NEIGHBOUR = new Ink(0.18, Tone.LIGHT, Tone.NONE, Dash.SOLID);
  static final Ink SOLID = new Ink(0, Tone.NONE, Tone.BLACK, Dash.SOLID);

  static Ink line(double lineMm) {
    return new Ink(lineMm, Tone.BLACK, Tone.NONE, Dash.SOLID);
  }

  Ink filled(Tone tone) {
    return new Ink(lineMm, line, tone, dash);
  }

  Ink dashed(Dash pattern) {
    return new Ink(lineMm, line, fill, pattern);
  }
}
