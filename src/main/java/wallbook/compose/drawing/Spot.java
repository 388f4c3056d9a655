package wallbook.compose.drawing;

/** Where a mark sits in the plan of a room. */
public sealed interface Spot {
  /**
   * At a wall, {@code offsetM} metres from the left-hand corner of somebody who faces it from
   * inside; walls count from 0.
   */
  record OnWall(int wall, double offsetM) implements Spot {
    public OnWall {
      Values.notNegative("wall", wall);
      Values.notNegative("offsetM", offsetM);
    }
  }

  /** On a ceiling or a floor, or outdoors, at a point of the plan. */
  record At(PointM point) implements Spot {}
}
