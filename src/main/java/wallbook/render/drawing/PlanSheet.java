package wallbook.render.drawing;

import java.util.Optional;
import java.util.function.BiFunction;
import wallbook.compose.drawing.Frame;
import wallbook.compose.drawing.NorthArrow;
import wallbook.compose.drawing.ScaleUnit;

/**
 * The sheet of a plan: chooses the scale, and puts the strip with scale and north and a table of
 * numbers beneath.
 *
 * @param unit family of scales
 * @param extent the part of the plan that must be seen
 */
record PlanSheet(Frame frame, ScaleUnit unit, PlanView.ExtentM extent, Optional<NorthArrow> north) {
  private static final int SCALES_TRIED = 3;
  private static final double LABEL_ZONE_MM = 24;
  // One millimetre above the plan and three between plan and strip.
  private static final double AIR_MM = 4;

  /**
   * Tries the largest fitting scales in turn until one gives a drawing.
   *
   * @param marginMm free paper wanted on each side of the plan
   * @param attempt draws the plan at a scale inside a box
   */
  Optional<Scene> draw(
      double marginMm,
      Optional<KeyTable> table,
      BiFunction<PlanView, Box, Optional<Canvas>> attempt) {
    double width = frame.widthMm();
    double height =
        frame.maxHeightMm()
            - ScaleAndNorth.HEIGHT_MM
            - AIR_MM
            - table.map(KeyTable::heightMm).orElse(0.0);
    return Scale.all(unit).stream()
        .filter(scale -> scale.mm(extent.widthM()) + 2 * marginMm <= width)
        .filter(scale -> scale.mm(extent.heightM()) + 2 * marginMm <= height)
        .limit(SCALES_TRIED)
        .map(
            scale -> {
              double tall = scale.mm(extent.heightM()) + 2 * marginMm + LABEL_ZONE_MM;
              Box zone = new Box(0, 0, width, Math.min(height, tall));
              return attempt
                  .apply(PlanView.centred(scale, extent, zone), zone)
                  .map(canvas -> finished(canvas, scale, table));
            })
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** Cuts empty paper above and below, and adds the strip and the table. */
  private Scene finished(Canvas canvas, Scale scale, Optional<KeyTable> table) {
    Box extent = canvas.extent();
    canvas.shift(0, 1 - extent.top());
    double bottom = extent.height() + AIR_MM;
    ScaleAndNorth.draw(canvas, scale, north, bottom, frame.widthMm());
    bottom += ScaleAndNorth.HEIGHT_MM;
    if (table.isPresent()) {
      table.get().draw(canvas, bottom);
      bottom += table.get().heightMm();
    }
    return canvas.scene(frame.widthMm(), bottom);
  }
}
