package wallbook.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;

/** Scales pictures down, by halves as far as that goes, so that thin lines keep their weight. */
final class Scaling {
  private Scaling() {}

  /** The picture without transparency, on white, with no side longer than given. */
  static BufferedImage within(int longestSidePx, BufferedImage picture) {
    double most = (double) longestSidePx / Math.max(picture.getWidth(), picture.getHeight());
    int width = scaled(picture.getWidth(), most);
    int height = scaled(picture.getHeight(), most);
    BufferedImage current = picture;
    while (current.getWidth() >= 2 * width && current.getHeight() >= 2 * height) {
      current = drawn(current, current.getWidth() / 2, current.getHeight() / 2);
    }
    return drawn(current, width, height);
  }

  private static int scaled(int sidePx, double by) {
    return by >= 1 ? sidePx : (int) Math.max(1, Math.round(sidePx * by));
  }

  private static BufferedImage drawn(BufferedImage picture, int widthPx, int heightPx) {
    BufferedImage drawn = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_INT_RGB);
    Graphics2D canvas = drawn.createGraphics();
    canvas.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    canvas.drawImage(picture, 0, 0, widthPx, heightPx, Color.WHITE, null);
    canvas.dispose();
    return drawn;
  }
}
