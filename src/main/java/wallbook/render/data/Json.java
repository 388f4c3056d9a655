package wallbook.render.data;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** Writes JSON the same on every machine: UTF-8, two spaces, line feeds. */
final class Json {
  private Json() {}

  /** Writes one value with a generator. */
  @FunctionalInterface
  interface Body {
    void write(JsonGenerator json) throws IOException;
  }

  static String text(Body body) {
    StringWriter out = new StringWriter();
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(lines);
    printer.indentArraysWith(lines);
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.setPrettyPrinter(printer);
      body.write(json);
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory can always be written", e);
    }
    return out + "\n";
  }
}
