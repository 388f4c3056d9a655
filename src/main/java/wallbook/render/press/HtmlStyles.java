package wallbook.render.press;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The styles that HTML has before any stylesheet. */
final class HtmlStyles {
  private static final String FILE = "/wallbook/print/html.css";

  /** A stylesheet. */
  static final String TEXT = text();

  private HtmlStyles() {}

  private static String text() {
    try (InputStream in = HtmlStyles.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IllegalStateException("not in the program: " + FILE);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
