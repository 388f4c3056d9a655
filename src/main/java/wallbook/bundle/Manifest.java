package wallbook.bundle;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListMap;

/**
 * The list of a package's files with their sizes and SHA-256 checksums. Several threads may add to
 * it.
 */
final class Manifest {
  static final String NAME = "manifest.json";

  /** First words of the manifest; what has them may be replaced by a newer package. */
  static final String FORMAT = "wallbook-package-1";

  private final PackageContents contents;
  private final SortedMap<String, Entry> entries = new ConcurrentSkipListMap<>();

  Manifest(PackageContents contents) {
    this.contents = contents;
  }

  private record Entry(int sizeBytes, String sha256) {}

  void add(String path, byte[] bytes) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      entries.put(path, new Entry(bytes.length, HexFormat.of().formatHex(digest)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** The files of the package, itself among them. */
  SortedSet<String> paths() {
    SortedSet<String> paths = new TreeSet<>(entries.keySet());
    paths.add(NAME);
    return paths;
  }

  byte[] toJson() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(lines);
    printer.indentArraysWith(lines);
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.setPrettyPrinter(printer);
      json.writeStartObject();
      json.writeStringField("format", FORMAT);
      json.writeStringField("job", contents.job());
      json.writeStringField("revision", contents.revision());
      json.writeStringField("issued", contents.issued().toString());
      json.writeStringField("tool", "wallbook " + contents.toolVersion());
      json.writeArrayFieldStart("files");
      for (Map.Entry<String, Entry> file : entries.entrySet()) {
        json.writeStartObject();
        json.writeStringField("path", file.getKey());
        json.writeNumberField("bytes", file.getValue().sizeBytes());
        json.writeStringField("sha256", file.getValue().sha256());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    out.write('\n');
    return out.toByteArray();
  }
}
