package wallbook.render.drawing;

import java.util.List;
import wallbook.compose.drawing.NamedOutline;

/** Draws adjoining rooms lightly behind a plan, each with its name where nothing else stands. */
final class Neighbours {
  private static final double STEP_MM = 3;

  private Neighbours() {}

  /** The drawing of the neighbours around a finished plan, to be laid beneath it. */
  static Canvas around(
      Canvas plan, PlanView view, List<NamedOutline> neighbours, Surroundings around) {
    Box plain = plan.extent();
    Box seen =
        new Box(
            around.sheet().left() + 0.2, plain.top(), around.sheet().right() - 0.2, plain.bottom());
    Canvas canvas = new Canvas();
    for (NamedOutline neighbour : neighbours) {
      List<Pt> part = Polygons.clipped(view.polygon(neighbour.outline()), seen);
      if (part.size() > 2) {
        canvas.polygon(Ink.NEIGHBOUR, part);
        canvas.touch(neighbour.target(), part);
        name(canvas, plan, neighbour.name(), part, around);
      }
    }
    return canvas;
  }

  private static void name(
      Canvas canvas, Canvas plan, String name, List<Pt> part, Surroundings around) {
    TextBlock block = new TextBlock(List.of(PlainText.clean(name)), Item.Type.SMALL);
    Box area = new Item.Path(part, true, Ink.NEIGHBOUR).bounds();
    for (double y = area.top() + STEP_MM; y < area.bottom(); y += STEP_MM) {
      for (double x = area.left() + STEP_MM; x < area.right(); x += STEP_MM) {
        Box box = Box.around(new Pt(x, y), block.widthMm(), block.heightMm());
        Box clear = box.grown(0.8);
        boolean free =
            Polygons.holds(part, clear)
                && around.lines().stream().noneMatch(clear::isCrossedBy)
                && plan.isClear(clear)
                && canvas.isClear(clear);
        if (free) {
          canvas.block(block, box, Item.Align.CENTRE);
          return;
        }
      }
    }
  }
}
