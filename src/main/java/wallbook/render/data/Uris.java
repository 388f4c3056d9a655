package wallbook.render.data;

import java.net.URI;
import java.net.URISyntaxException;

/** File names as URI references. */
final class Uris {
  private Uris() {}

  /** A file name with slashes as a URI reference, special characters escaped. */
  static String relative(String file) {
    try {
      return new URI(null, null, file, null).getRawPath();
    } catch (URISyntaxException e) {
      throw new IllegalArgumentException(file, e);
    }
  }
}
