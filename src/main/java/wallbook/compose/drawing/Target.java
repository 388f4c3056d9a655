package wallbook.compose.drawing;

/**
 * Where a touch of a part of a drawing leads, for a drawing on a screen. Paper takes no notice.
 *
 * @param reference kind and id of what is touched, such as {@code place/kit-tv}
 * @param name what it is called, for somebody who can't see the drawing
 */
public record Target(String reference, String name) {
  public Target {
    if (reference.isBlank() || name.isBlank()) {
      throw new IllegalArgumentException("a target needs a reference and a name");
    }
  }
}
