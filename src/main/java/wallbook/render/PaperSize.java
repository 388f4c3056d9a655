package wallbook.render;

/** The sheet a document is printed on. */
public enum PaperSize {
  /** ISO 216. */
  A4("210mm", "297mm", "87mm"),
  /** ANSI/ASME Y14.1 size A. */
  LETTER("8.5in", "11in", "2.5in");

  private final String shortSide;
  private final String longSide;
  private final String difference;

  PaperSize(String shortSide, String longSide, String difference) {
    this.shortSide = shortSide;
    this.longSide = longSide;
    this.difference = difference;
  }

  /** The shorter side as a CSS length. */
  String shortSide() {
    return shortSide;
  }

  /** The longer side as a CSS length. */
  String longSide() {
    return longSide;
  }

  /** How much longer the longer side is, as a CSS length. */
  String difference() {
    return difference;
  }
}
