package wallbook.render.press;

import org.apache.pdfbox.cos.COSFloat;

/** Numbers as they stand in a file: to the hundredth of a point, whatever Java writes them. */
final class Numbers {
  private static final float HUNDREDTHS = 100;

  private Numbers() {}

  static COSFloat of(float points) {
    return new COSFloat(Math.round(points * HUNDREDTHS) / HUNDREDTHS);
  }
}
