package wallbook.render.labels;

import wallbook.render.Face;
import wallbook.stock.LabelArea;

/**
 * A line of text at its place on a label, in millimetres from the upper left corner.
 *
 * @param pt size of type
 * @param widthMm measured
 * @param ascentMm height of its highest letter above the base line
 * @param descentMm depth of its lowest letter
 */
record TypeLine(
    String text,
    Face face,
    double pt,
    double xMm,
    double baselineMm,
    double widthMm,
    double ascentMm,
    double descentMm) {

  /** The room that its letters take. */
  LabelArea ink() {
    return new LabelArea(xMm, baselineMm - ascentMm, widthMm, ascentMm + descentMm);
  }

  TypeLine moved(double rightMm, double downMm) {
    return new TypeLine(
        text, face, pt, xMm + rightMm, baselineMm + downMm, widthMm, ascentMm, descentMm);
  }
}
