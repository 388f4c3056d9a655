package wallbook.render.drawing;

import wallbook.compose.drawing.Drawing;
import wallbook.compose.drawing.RoomPlan;

/**
 * Turns any drawing into one SVG element, ready to stand in a page: sized in millimetres, with its
 * alternative text, drawn with presentation attributes only. The same drawing gives the same text.
 */
public final class DrawingSvg {
  /** The {@code svg} element of a drawing, without an XML declaration. */
  public String svg(Drawing drawing) {
    return SvgWriter.write(scene(drawing), drawing.frame());
  }

  static Scene scene(Drawing drawing) {
    if (drawing instanceof RoomPlan plan) {
      return RoomPlanScene.draw(plan);
    }
    throw new IllegalStateException("unknown drawing: " + drawing.getClass());
  }
}
