package wallbook.compose.drawing;

/**
 * A door or a window in a wall, in metres from the left-hand corner and above the finished floor.
 *
 * @param sillM height of the lower edge; 0 for a door
 * @param headM height of the upper edge
 */
public record Opening(double offsetM, double widthM, double sillM, double headM) {
  public Opening {
    Values.notNegative("offsetM", offsetM);
    Values.positive("widthM", widthM);
    Values.notNegative("sillM", sillM);
    if (headM <= sillM) {
      throw new IllegalArgumentException("the head of an opening lies above its sill");
    }
  }
}
