package wallbook.compose.drawing;

import java.util.List;
import java.util.Optional;

/**
 * The house from above with its grounds, and every outdoor place by its ties to fixed corners of
 * the house.
 *
 * @param areas outdoor areas with their names
 */
public record SitePlan(
    Frame frame,
    List<NamedOutline> houses,
    List<NamedOutline> areas,
    List<FixedCorner> corners,
    List<SiteMark> marks,
    Optional<NorthArrow> north,
    ScaleUnit unit)
    implements Drawing {
  public SitePlan {
    houses = List.copyOf(houses);
    areas = List.copyOf(areas);
    corners = List.copyOf(corners);
    marks = List.copyOf(marks);
    if (houses.isEmpty()) {
      throw new IllegalArgumentException("a site plan needs the house");
    }
    for (SiteMark mark : marks) {
      for (Tie tie : mark.ties()) {
        if (corners.stream().noneMatch(corner -> corner.name().equals(tie.corner()))) {
          throw new IllegalArgumentException("no such fixed corner: " + tie.corner());
        }
      }
    }
  }

  /** A corner of the house that distances are taken from. */
  public record FixedCorner(String name, PointM point) {}

  /** A distance taken from a fixed corner, as the reader sees it. */
  public record Tie(String corner, String distance) {}

  /**
   * Where a place found from its ties may lie.
   *
   * @param semiMajorM half the longer axis, in metres
   * @param semiMinorM half the shorter axis, in metres
   * @param majorAxisDeg direction of the longer axis, counter-clockwise from the x axis of the plan
   */
  public record ErrorEllipse(double semiMajorM, double semiMinorM, double majorAxisDeg) {
    public ErrorEllipse {
      Values.positive("semiMajorM", semiMajorM);
      Values.positive("semiMinorM", semiMinorM);
      Values.finite("majorAxisDeg", majorAxisDeg);
    }
  }

  /**
   * A place outdoors.
   *
   * @param target where a touch leads
   */
  public record SiteMark(
      SymbolKind symbol,
      PointM point,
      List<String> label,
      List<Tie> ties,
      Optional<ErrorEllipse> ellipse,
      Optional<Target> target) {
    public SiteMark {
      label = List.copyOf(label);
      ties = List.copyOf(ties);
    }

    /** A place that leads nowhere. */
    public SiteMark(
        SymbolKind symbol,
        PointM point,
        List<String> label,
        List<Tie> ties,
        Optional<ErrorEllipse> ellipse) {
      this(symbol, point, label, ties, ellipse, Optional.empty());
    }
  }
}
