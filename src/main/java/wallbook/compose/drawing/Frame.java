package wallbook.compose.drawing;

/**
 * The room a drawing has on the page, and its words for a reader who cannot see it.
 *
 * @param title short name of the drawing
 * @param altText one complete sentence or more that says what the drawing shows
 * @param widthMm printed width in millimetres; the drawing takes all of it
 * @param maxHeightMm greatest printed height in millimetres; the drawing takes what it needs
 */
public record Frame(String title, String altText, double widthMm, double maxHeightMm) {
  /** Width of the content box that fits both Letter and A4 in portrait, in millimetres. */
  public static final double PAGE_WIDTH_MM = 180;

  /** Width that fits both Letter and A4 on their long side, in millimetres. */
  public static final double WIDE_PAGE_MM = 245;

  public Frame {
    if (title.isBlank() || altText.isBlank()) {
      throw new IllegalArgumentException("a drawing needs a title and an alternative text");
    }
    Values.positive("widthMm", widthMm);
    Values.positive("maxHeightMm", maxHeightMm);
  }

  /** A drawing as wide as the page's content box. */
  public static Frame pageWide(String title, String altText, double maxHeightMm) {
    return new Frame(title, altText, PAGE_WIDTH_MM, maxHeightMm);
  }
}
