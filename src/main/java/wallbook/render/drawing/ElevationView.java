package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.List;
import wallbook.compose.drawing.Opening;
import wallbook.compose.drawing.PointM;
import wallbook.compose.drawing.WallElevation;

/**
 * Where a wall lies on the sheet.
 *
 * @param corner the sheet point of the left-hand corner at the finished floor
 */
record ElevationView(Scale scale, Pt corner, double right) {
  Pt at(double offsetM, double heightM) {
    return new Pt(corner.x() + scale.mm(offsetM), corner.y() - scale.mm(heightM));
  }

  double floorY() {
    return corner.y();
  }

  List<Pt> face(WallElevation wall) {
    List<Pt> face = new ArrayList<>();
    face.add(at(0, 0));
    for (PointM point : wall.ceiling()) {
      face.add(at(point.xM(), point.yM()));
    }
    face.add(at(wall.widthM(), 0));
    return face;
  }

  Box box(Opening opening) {
    Pt low = at(opening.offsetM(), opening.sillM());
    Pt high = at(opening.offsetM() + opening.widthM(), opening.headM());
    return new Box(low.x(), high.y(), high.x(), low.y());
  }
}
