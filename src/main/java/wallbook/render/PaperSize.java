package wallbook.render;

/** The sheet a document is printed on. */
public enum PaperSize {
  /** ISO 216. */
  A4("210mm", "297mm"),
  /** ANSI/ASME Y14.1 size A. */
  LETTER("8.5in", "11in");

  private final String shortSide;
  private final String longSide;

  PaperSize(String shortSide, String longSide) {
    this.shortSide = shortSide;
    this.longSide = longSide;
  }

  /** The shorter side as a CSS length. */
  String shortSide() {
    return shortSide;
  }

  /** The longer side as a CSS length. */
  String longSide() {
    return longSide;
  }
}
