package wallbook.read;

import java.io.IOException;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import wallbook.finding.SourcePosition;

/** The rows of a comma-separated file, with the position of every cell. */
final class CsvText {
  private static final String DELIMITERS = ",;\t|";
  private static final Charset WESTERN = Charset.forName("windows-1252");

  private CsvText() {}

  /** A cell and where it begins. */
  record Cell(String text, SourcePosition at) {}

  /**
   * The text of a file. Without a stated encoding: by its byte order mark; else UTF-8 if the bytes
   * are that, else Windows-1252, which spreadsheets of western languages write.
   *
   * @throws CharacterCodingException if the bytes are not of the stated encoding
   */
  static String decode(byte[] bytes, Optional<Charset> stated) throws CharacterCodingException {
    Charset marked = StandardCharsets.UTF_8;
    if (bytes.length > 1 && (bytes[0] & 0xff) == 0xff && (bytes[1] & 0xff) == 0xfe) {
      marked = StandardCharsets.UTF_16LE;
    } else if (bytes.length > 1 && (bytes[0] & 0xff) == 0xfe && (bytes[1] & 0xff) == 0xff) {
      marked = StandardCharsets.UTF_16BE;
    }
    String text;
    if (stated.isPresent()) {
      text = strictly(bytes, stated.get());
    } else {
      try {
        text = strictly(bytes, marked);
      } catch (CharacterCodingException e) {
        text = strictly(bytes, WESTERN);
      }
    }
    return text.startsWith("\ufeff") ? text.substring(1) : text;
  }

  private static String strictly(byte[] bytes, Charset charset) throws CharacterCodingException {
    return charset
        .newDecoder()
        .onMalformedInput(CodingErrorAction.REPORT)
        .onUnmappableCharacter(CodingErrorAction.REPORT)
        .decode(ByteBuffer.wrap(bytes))
        .toString();
  }

  /** The delimiter that comes most often in the header; a comma if none does. */
  static char delimiter(String text) {
    int[] counts = new int[DELIMITERS.length()];
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && (c == '\n' || c == '\r')) {
        break;
      } else if (!quoted && DELIMITERS.indexOf(c) >= 0) {
        counts[DELIMITERS.indexOf(c)]++;
      }
    }
    int best = 0;
    for (int i = 1; i < counts.length; i++) {
      best = counts[i] > counts[best] ? i : best;
    }
    return DELIMITERS.charAt(best);
  }

  /**
   * All rows, the header among them; empty lines are passed over.
   *
   * @param file name of the file in positions
   * @throws IOException if quotes don't close
   */
  static List<List<Cell>> rows(String text, char delimiter, String file) throws IOException {
    CSVFormat form =
        CSVFormat.RFC4180.builder().setDelimiter(delimiter).setIgnoreEmptyLines(true).get();
    List<List<Cell>> rows = new ArrayList<>();
    CellPlaces places = new CellPlaces(text, delimiter, file);
    try (CSVParser parser = form.parse(new StringReader(text))) {
      for (CSVRecord record : parser) {
        places.beginRow(Math.toIntExact(record.getCharacterPosition()));
        List<Cell> row = new ArrayList<>();
        for (String value : record) {
          row.add(new Cell(FormulaGuard.undo(value), places.next()));
        }
        rows.add(row);
      }
    } catch (java.io.UncheckedIOException e) {
      throw e.getCause();
    }
    return rows;
  }
}
