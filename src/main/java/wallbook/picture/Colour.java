package wallbook.picture;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An sRGB colour, written {@code #0f4a5c}, with its contrast to another by WCAG 2.2.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Colour(int red, int green, int blue) {
  public static final Colour WHITE = new Colour(255, 255, 255);

  private static final Pattern FORM =
      Pattern.compile("#([0-9a-fA-F]{2})([0-9a-fA-F]{2})([0-9a-fA-F]{2})");

  /** The colour that a text of this form says; nothing if it has another form. */
  public static Optional<Colour> parse(String text) {
    Matcher digits = FORM.matcher(text);
    return digits.matches()
        ? Optional.of(
            new Colour(
                Integer.parseInt(digits.group(1), 16),
                Integer.parseInt(digits.group(2), 16),
                Integer.parseInt(digits.group(3), 16)))
        : Optional.empty();
  }

  /**
   * Contrast ratio, from 1 (none) to 21 (black on white).
   *
   * <p>{@code (L1 + 0.05) / (L2 + 0.05)} with the relative luminance of the lighter colour above;
   * WCAG 2.2, definition of contrast ratio.
   */
  public double contrast(Colour other) {
    double lighter = Math.max(luminance(), other.luminance());
    double darker = Math.min(luminance(), other.luminance());
    return (lighter + 0.05) / (darker + 0.05);
  }

  /**
   * The colour let down with white.
   *
   * @param share how much of it remains, 0 to 1
   */
  public Colour tint(double share) {
    return new Colour(tint(red, share), tint(green, share), tint(blue, share));
  }

  /** The colour as a stylesheet writes it. */
  @Override
  public String toString() {
    return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
  }

  /** Relative luminance: {@code 0.2126 R + 0.7152 G + 0.0722 B}; WCAG 2.2, same definition. */
  private double luminance() {
    return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
  }

  /** A channel without the curve of sRGB; IEC 61966-2-1. */
  private static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  private static int tint(int channel, double share) {
    return (int) Math.round(255 - (255 - channel) * share);
  }
}
