package wallbook.render.drawing;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import wallbook.compose.drawing.ConduitSection;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.drawing.FloorPlan;
import wallbook.compose.drawing.Legend;
import wallbook.compose.drawing.OneLine;
import wallbook.compose.drawing.PanelMap;
import wallbook.compose.drawing.RoomPlan;
import wallbook.compose.drawing.SitePlan;
import wallbook.compose.drawing.SweepPlot;
import wallbook.compose.drawing.WallElevation;
import wallbook.render.Figure;
import wallbook.render.FigureRenderer;

/**
 * Turns any drawing into one SVG element, ready to stand in a page: sized in millimetres, with its
 * alternative text, drawn with presentation attributes only. The same drawing gives the same text.
 */
public final class DrawingSvg implements FigureRenderer {
  @Override
  public Optional<Figure> figure(Object drawing) {
    return drawing instanceof Drawing known ? Optional.of(figure(known)) : Optional.empty();
  }

  private static Figure figure(Drawing drawing) {
    Scene scene = scene(drawing);
    double size = size(drawing, scene);
    return new Figure.Drawing(
        () -> SvgWriter.write(scene, drawing.frame(), size),
        drawing.frame().altText(),
        new ScenePainting(scene, size));
  }

  /**
   * The {@code svg} element of a drawing, without an XML declaration.
   *
   * @throws IllegalStateException if the sheet is too small for what it must hold; a full page has
   *     room for about a hundred marks in a room plan and eighty on a wall
   */
  public String svg(Drawing drawing) {
    Scene scene = scene(drawing);
    return SvgWriter.write(scene, drawing.frame(), size(drawing, scene));
  }

  /** Printed size of a millimetre of a scene; 1 for all that is true to scale. */
  private static double size(Drawing drawing, Scene scene) {
    double room = drawing.frame().maxHeightMm();
    boolean shrinks = drawing instanceof OneLine && scene.heightMm() > room;
    return shrinks ? room / scene.heightMm() : 1;
  }

  /**
   * The {@code svg} element of a drawing for a screen, where a touch leads to the anchor named by
   * the {@linkplain wallbook.compose.drawing.Target reference} of what is touched. In the plan of a
   * room, where each place stands once in a page, an address leads back to its mark: {@code plan/}
   * and the reference.
   *
   * @throws IllegalStateException if the sheet is too small for what it must hold
   */
  public String touchable(Drawing drawing) {
    return SvgWriter.touchable(scene(drawing), drawing.frame(), named(drawing));
  }

  private static Set<String> named(Drawing drawing) {
    Set<String> references = new HashSet<>();
    if (drawing instanceof RoomPlan plan) {
      plan.marks().forEach(mark -> mark.target().ifPresent(t -> references.add(t.reference())));
    }
    return references;
  }

  static Scene scene(Drawing drawing) {
    if (drawing instanceof RoomPlan plan) {
      return RoomPlanScene.draw(plan);
    }
    if (drawing instanceof WallElevation wall) {
      return ElevationScene.draw(wall);
    }
    if (drawing instanceof FloorPlan floor) {
      return FloorPlanScene.draw(floor);
    }
    if (drawing instanceof SitePlan site) {
      return SitePlanScene.draw(site);
    }
    if (drawing instanceof PanelMap panel) {
      return PanelMapScene.draw(panel);
    }
    if (drawing instanceof ConduitSection section) {
      return ConduitSectionScene.draw(section);
    }
    if (drawing instanceof Legend legend) {
      return LegendScene.draw(legend);
    }
    if (drawing instanceof OneLine house) {
      return OneLineScene.draw(house);
    }
    if (drawing instanceof SweepPlot plot) {
      return SweepPlotScene.draw(plot);
    }
    throw new IllegalStateException("unknown drawing: " + drawing.getClass());
  }
}
