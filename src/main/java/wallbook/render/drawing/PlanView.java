package wallbook.render.drawing;

import java.util.Collection;
import java.util.List;
import wallbook.compose.drawing.Outline;
import wallbook.compose.drawing.PointM;

/**
 * Where a plan lies on the sheet.
 *
 * @param topLeft the sheet point of the plan point ({@code leftM}, {@code topM})
 */
record PlanView(Scale scale, double leftM, double topM, Pt topLeft) {
  /** The part of a plan that must be visible, in metres. */
  record ExtentM(double leftM, double bottomM, double rightM, double topM) {
    static ExtentM of(Collection<PointM> points) {
      return new ExtentM(
          points.stream().mapToDouble(PointM::xM).min().orElseThrow(),
          points.stream().mapToDouble(PointM::yM).min().orElseThrow(),
          points.stream().mapToDouble(PointM::xM).max().orElseThrow(),
          points.stream().mapToDouble(PointM::yM).max().orElseThrow());
    }

    double widthM() {
      return rightM - leftM;
    }

    double heightM() {
      return topM - bottomM;
    }
  }

  /** Centres the plan in a box. */
  static PlanView centred(Scale scale, ExtentM extent, Box box) {
    Pt topLeft =
        new Pt(
            box.centre().x() - scale.mm(extent.widthM()) / 2,
            box.centre().y() - scale.mm(extent.heightM()) / 2);
    return new PlanView(scale, extent.leftM(), extent.topM(), topLeft);
  }

  Pt at(PointM point) {
    return new Pt(
        topLeft.x() + scale.mm(point.xM() - leftM), topLeft.y() + scale.mm(topM - point.yM()));
  }

  List<Pt> polygon(Outline outline) {
    return outline.corners().stream().map(this::at).toList();
  }
}
