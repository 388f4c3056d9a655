package wallbook.reference;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The reference tables that the jar carries, each read when first asked for and then kept. A file
 * is a head of lines {@code # entry: text} followed by comma-separated rows with a header line.
 */
public final class Tables {
  private static final String FOLDER = "/wallbook/reference/";
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
    return read.computeIfAbsent(name, Tables::load);
  }

  private static Table load(String name) {
    try (InputStream in = Tables.class.getResourceAsStream(FOLDER + name + ".csv")) {
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
      List<Map<String, String>> rows = new ArrayList<>();
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
        rows.add(record.toMap());
      }
      return new Table(name, head, parser.getHeaderNames(), rows);
    }
  }
}
