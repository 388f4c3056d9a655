package wallbook.render.drawing;

import java.util.List;
import java.util.Optional;

/** Finds the roomiest place for a name inside an outline. */
final class RoomNames {
  private static final int GRID = 24;
  private static final double CLEAR_MM = 0.7;
  private static final double TOLERANCE_MM = 1e-6;

  private RoomNames() {}

  /** A name in its type and place. */
  record PlacedName(TextBlock block, Box box) {
    void draw(Canvas canvas) {
      canvas.block(block, box, Item.Align.CENTRE);
    }
  }

  /**
   * The name in the largest type that fits, broken at spaces if need be, clear of boxes and lines;
   * empty when it finds no place.
   */
  static Optional<PlacedName> place(
      String name, List<Pt> outline, List<Box> taken, List<Seg> lines) {
    for (Item.Type type : List.of(Item.Type.NAME, Item.Type.LABEL_BOLD, Item.Type.SMALL)) {
      for (double width : new double[] {60, 26, 17, 11}) {
        TextBlock block = TextBlock.wrapped(List.of(name), type, width);
        Optional<PlacedName> placed = place(block, outline, taken, lines);
        if (placed.isPresent() && keepsWordsWhole(name, block)) {
          return placed;
        }
      }
    }
    return Optional.empty();
  }

  static Optional<PlacedName> place(
      TextBlock block, List<Pt> outline, List<Box> taken, List<Seg> lines) {
    Box around = new Item.Path(outline, true, Ink.THIN).bounds();
    List<Seg> walls = Polygons.sides(outline);
    Box reach = around.grown(TOLERANCE_MM);
    Pt middle = around.centre();
    double width = block.widthMm();
    double height = block.heightMm();
    Box best = null;
    double bestScore = Double.NEGATIVE_INFINITY;
    for (int i = 1; i < GRID; i++) {
      for (int j = 1; j < GRID; j++) {
        Pt centre =
            new Pt(
                around.left() + around.width() * i / GRID,
                around.top() + around.height() * j / GRID);
        Box box = Box.around(centre, width, height);
        Box clear = box.grown(CLEAR_MM);
        if (!reach.holds(clear)
            || Polygons.isOverlapped(clear, taken)
            || !Polygons.holds(outline, walls, clear)
            || Polygons.isCrossed(clear, lines)) {
          continue;
        }
        double room = Double.POSITIVE_INFINITY;
        for (Seg wall : walls) {
          room = Math.min(room, wall.distanceTo(centre));
        }
        double score = room - 0.15 * centre.minus(middle).length();
        if (score > bestScore + 1e-9) {
          best = box;
          bestScore = score;
        }
      }
    }
    return Optional.ofNullable(best).map(box -> new PlacedName(block, box));
  }

  private static boolean keepsWordsWhole(String name, TextBlock block) {
    return String.join(" ", block.lines())
        .equals(PlainText.clean(name).trim().replaceAll(" +", " "));
  }
}
