package wallbook.stock;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A sheet of labels, or a tape on which each label is a page. All lengths are in millimetres,
 * positions from the upper left corner of the page.
 *
 * @param name name in commands
 * @param purpose what it is meant for
 * @param page size of the page; of a tape, the length cut off and the width of the tape
 * @param grid how the labels lie on it
 * @param label size and parts of one label
 * @param usual whether it is taken for its paper when none is named
 * @param note what is special about it
 */
public record LabelSheet(
    String name,
    LabelKind purpose,
    Stock stock,
    Size page,
    Grid grid,
    Parts label,
    boolean usual,
    String note) {

  /** Width and height in millimetres. */
  public record Size(double widthMm, double heightMm) {}

  /** Columns and rows of labels, the place of the first and the distance from one to the next. */
  public record Grid(
      int columns, int rows, double leftMm, double topMm, double pitchXMm, double pitchYMm) {}

  /**
   * One label and its parts.
   *
   * @param edgeMm border that nothing is printed in
   * @param printedHeightMm height printed on, from the top, if the rest is clear and goes round
   *     over it (a self-laminating wrap)
   * @param neckMm width in the middle that lies round the cable, if the label is folded into a flag
   * @param codeMm side of the square kept for a code with its border, if there is one
   * @param cells number of equal cells, if the label is a strip for ports
   */
  public record Parts(
      Size size,
      double edgeMm,
      OptionalDouble printedHeightMm,
      OptionalDouble neckMm,
      OptionalDouble codeMm,
      OptionalInt cells) {}

  /** Number of labels on a page. */
  public int labels() {
    return grid.columns * grid.rows;
  }

  /**
   * Where a label lies on its page.
   *
   * @param position from 1, row by row from the upper left
   */
  public LabelArea area(int position) {
    int index = position - 1;
    int column = index % grid.columns;
    int row = index / grid.columns;
    return new LabelArea(
        grid.leftMm + column * grid.pitchXMm,
        grid.topMm + row * grid.pitchYMm,
        label.size.widthMm,
        label.size.heightMm);
  }

  /** The whole page. */
  public LabelArea pageArea() {
    return new LabelArea(0, 0, page.widthMm, page.heightMm);
  }

  /**
   * Diameters of the cables that a wrap or flag suits, from the least to the greatest, in
   * millimetres; empty if any will do. A self-laminating wrap must not hide its own print, so the
   * girth is at least the height printed on; and its clear tail must cover the print, so the girth
   * is at most the tail. The neck of a flag must reach round.
   */
  public Optional<Girth> girth() {
    if (label.printedHeightMm.isPresent()) {
      double printed = label.printedHeightMm.getAsDouble();
      return Optional.of(new Girth(printed / Math.PI, (label.size.heightMm - printed) / Math.PI));
    }
    return label.neckMm.isPresent()
        ? Optional.of(new Girth(0, label.neckMm.getAsDouble() / Math.PI))
        : Optional.empty();
  }

  /** Least and greatest diameter, in millimetres. */
  public record Girth(double leastMm, double greatestMm) {
    public boolean suits(double diameterMm) {
      return diameterMm >= leastMm && diameterMm <= greatestMm;
    }
  }
}
