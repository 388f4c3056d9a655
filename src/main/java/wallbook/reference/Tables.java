package wallbook.reference;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The reference tables that the jar carries, each read when first asked for and then kept. A file
 * is a head of lines {@code # entry: text} followed by comma-separated rows with a header line.
 */
public final class Tables {
  private static final String FOLDER = "/wallbook/reference/";
  private static final String ENDING = ".csv";
  private static final CSVFormat ROWS =
      CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setIgnoreSurroundingSpaces(true)
          .get();

  private final Map<String, Table> read = new ConcurrentHashMap<>();

  /**
   * The table of the given name, for instance {@code optical-applications}.
   *
   * @throws IllegalStateException if there is no such table or it is broken
   */
  public Table table(String name) {
    Table known = read.get(name);
    return known == null ? read.computeIfAbsent(name, Tables::load) : known;
  }

  /**
   * The names of all tables that the jar carries, in alphabetical order.
   *
   * @throws UncheckedIOException if the program's own files can't be listed
   */
  public static List<String> names() {
    try {
      URI folder = Tables.class.getResource(FOLDER).toURI();
      if (folder.getScheme().equals("jar")) {
        try (FileSystem jar = FileSystems.newFileSystem(folder, Map.of())) {
          return names(jar.getPath(FOLDER));
        }
      }
      return names(Path.of(folder));
    } catch (IOException e) {
      throw new UncheckedIOException("list of the reference tables", e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException("a resource has an address", e);
    }
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(file -> file.endsWith(ENDING))
          .map(file -> file.substring(0, file.length() - ENDING.length()))
          .sorted()
          .toList();
    }
  }

  private static Table load(String name) {
    try (InputStream in = Tables.class.getResourceAsStream(FOLDER + name + ENDING)) {
      if (in == null) {
        throw new IllegalStateException("no reference table " + name);
      }
      return parse(name, new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException("reference table " + name, e);
    }
  }

  static Table parse(String name, BufferedReader in) throws IOException {
    Map<String, String> head = new LinkedHashMap<>();
    in.mark(1);
    int first = in.read();
    while (first == '#') {
      String line = in.readLine();
      int colon = line.indexOf(':');
      if (colon < 0) {
        throw new IllegalStateException("reference table " + name + ": head line without ':'");
      }
      head.put(line.substring(0, colon).strip(), line.substring(colon + 1).strip());
      in.mark(1);
      first = in.read();
    }
    in.reset();
    try (CSVParser parser = ROWS.parse(in)) {
      List<String[]> rows = new ArrayList<>();
      for (CSVRecord record : parser) {
        if (!record.isConsistent()) {
          throw new IllegalStateException(
              "reference table "
                  + name
                  + ": row "
                  + record.getRecordNumber()
                  + " has "
                  + record.size()
                  + " cells");
        }
        rows.add(record.values());
      }
      return new Table(name, head, parser.getHeaderNames(), rows);
    }
  }
}
