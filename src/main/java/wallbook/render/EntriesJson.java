package wallbook.render;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import wallbook.compose.page.Entry;

/** Writes what is searched as JSON that can stand inside a script element. */
final class EntriesJson {
  private static final JsonFactory JSON = new JsonFactory();

  private EntriesJson() {}

  /** An array of arrays: anchor, label, kind, title, detail, words. */
  static String of(List<Entry> entries) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = JSON.createGenerator(out)) {
      json.writeStartArray();
      for (Entry entry : entries) {
        String[] cells = {
          entry.anchor(), entry.label(), entry.kind(), entry.title(), entry.detail(), entry.words()
        };
        json.writeArray(cells, 0, cells.length);
      }
      json.writeEndArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    // These stand in strings only, where JSON may write any character by its number; so nothing can
    // end the script element or begin a comment.
    return out.toString()
        .replace("<", "\\u003c")
        .replace(">", "\\u003e")
        .replace("&", "\\u0026")
        .replace("\u2028", "\\u2028")
        .replace("\u2029", "\\u2029");
  }
}
