package wallbook.render.data;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.ByteArrayBuilder;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Writes JSON the same on every machine: UTF-8, two spaces, line feeds. */
final class Json {
  private Json() {}

  /** Writes one value with a generator. */
  @FunctionalInterface
  interface Body {
    void write(JsonGenerator json) throws IOException;
  }

  /** A value as text. */
  static String text(Body body) {
    return new String(bytes(body), StandardCharsets.UTF_8);
  }

  /** A value as a file. */
  static byte[] bytes(Body body) {
    ByteArrayBuilder out = new ByteArrayBuilder();
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(lines);
    printer.indentArraysWith(lines);
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.setPrettyPrinter(printer);
      body.write(json);
    } catch (IOException e) {
      throw new UncheckedIOException("a file in memory can always be written", e);
    }
    out.write('\n');
    return out.toByteArray();
  }
}
