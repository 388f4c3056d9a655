package wallbook.render;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A picture in a document: a drawing or a photograph.
 *
 * <p>Its alternative text says what a reader who can't see the picture needs to know; it must not
 * be blank.
 */
public sealed interface Figure {

  /** What a reader who can't see the picture is told. */
  String alternative();

  /**
   * A drawing.
   *
   * @param svg writes SVG text for the page of HTML, which a package has no use for; see {@link
   *     Svg} for what it may hold
   * @param painting the same drawing for print
   */
  record Drawing(Supplier<String> svg, String alternative, Painting painting) implements Figure {
    public Drawing {
      Objects.requireNonNull(svg);
      Objects.requireNonNull(painting);
      checkAlternative(alternative);
    }
  }

  /**
   * A photograph.
   *
   * @param bytes a JPEG or PNG file; the array is the figure's own from now on
   */
  record Photograph(byte[] bytes, String alternative) implements Figure {
    public Photograph {
      checkAlternative(alternative);
      if (mediaType(bytes).isEmpty()) {
        throw new IllegalArgumentException("neither a JPEG nor a PNG file");
      }
    }

    String mediaType() {
      return mediaTypeOf(bytes);
    }

    static String mediaTypeOf(byte[] bytes) {
      return mediaType(bytes).orElseThrow();
    }

    private static Optional<String> mediaType(byte[] bytes) {
      if (bytes.length > 3 && (bytes[0] & 0xFF) == 0xFF && (bytes[1] & 0xFF) == 0xD8) {
        return Optional.of("image/jpeg");
      }
      boolean png = bytes.length > 8 && (bytes[0] & 0xFF) == 0x89 && bytes[1] == 'P';
      return png ? Optional.of("image/png") : Optional.empty();
    }
  }

  private static void checkAlternative(String alternative) {
    if (alternative.isBlank()) {
      throw new IllegalArgumentException("a figure needs an alternative text");
    }
  }
}
