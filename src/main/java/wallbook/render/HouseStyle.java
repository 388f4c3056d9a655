package wallbook.render;

import java.util.Base64;
import java.util.Locale;
import java.util.Optional;
import wallbook.picture.Colour;
import wallbook.picture.Picture;

/**
 * The look of one house of integrators, on top of the theme.
 *
 * @param accent colour of headings and rules, with the ground of table heads
 * @param logo picture at the head of the cover
 * @param maker who hands the documents over, for the cover
 * @param footer a line for the foot of every page
 */
public record HouseStyle(
    Optional<Accent> accent,
    Optional<Picture> logo,
    Optional<String> maker,
    Optional<String> footer) {
  /** The theme as it is. */
  public static final HouseStyle NONE =
      new HouseStyle(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  private static final double LOGO_WIDTH_MM = 60;
  private static final double LOGO_HEIGHT_MM = 18;

  /**
   * A colour with the ground that text in it stands on in the heads of tables.
   *
   * @param colour dark enough to be read on white
   * @param ground the same, let down with white as far as text on it needs
   */
  public record Accent(Colour colour, Colour ground) {
    private static final int DARKEST_GROUND_PERCENT = 10;

    /**
     * The colour with the darkest ground that keeps a contrast.
     *
     * @param leastContrast ratio of luminances that text needs, from 1 to 21
     */
    public static Accent of(Colour colour, double leastContrast) {
      Colour ground = Colour.WHITE;
      for (int percent = 1; percent <= DARKEST_GROUND_PERCENT; percent++) {
        Colour darker = colour.tint(percent / 100.0);
        ground = colour.contrast(darker) < leastContrast ? ground : darker;
      }
      return new Accent(colour, ground);
    }
  }

  /** The logo as an address that holds it. */
  Optional<String> logoAddress() {
    return logo.map(
        picture ->
            "data:"
                + Figure.Photograph.mediaTypeOf(picture.file())
                + ";base64,"
                + Base64.getEncoder().encodeToString(picture.file()));
  }

  /** Width that lets the logo fit its corner of the cover, such as {@code 42.0mm}. */
  Optional<String> logoWidth() {
    return logo.map(
        picture -> {
          double byHeight = LOGO_HEIGHT_MM * picture.widthPx() / picture.heightPx();
          return String.format(Locale.ROOT, "%.1fmm", Math.min(LOGO_WIDTH_MM, byHeight));
        });
  }
}
