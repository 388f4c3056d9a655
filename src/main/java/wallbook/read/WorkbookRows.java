package wallbook.read;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Nearest;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;
import wallbook.wording.Phrase;

/**
 * The rows of a sheet of a workbook (ECMA-376, {@code .xlsx}), every cell as a spreadsheet would
 * show it, with its position: the line is the row of the sheet, the column its column from 1. The
 * first row that holds something is the header. Formulas are not computed; what was stored with
 * them is taken.
 */
final class WorkbookRows {
  /** A workbook is packed; unpacked it may take no more than this. */
  static final long MOST_BYTES = 64L << 20;

  static final int MOST_ROWS = 20_000;
  static final int MOST_COLUMNS = 256;
  private static final int MOST_PARTS = 2_000;

  private final String file;
  private final Findings findings;

  /**
   * @param file name of the file in findings; that of the sheet follows in brackets
   */
  WorkbookRows(String file, Findings findings) {
    this.file = file;
    this.findings = findings;
  }

  /** Whether bytes are packed as a workbook is. */
  static boolean isWorkbook(byte[] bytes) {
    return ReadableWorkbook.isOOXMLZipHeader(bytes);
  }

  /**
   * The rows that hold something, all as long as the header.
   *
   * @param wanted name of the sheet; the first one if none is wanted
   * @return nothing if the workbook can't be read, which is a finding
   */
  Optional<List<List<CsvText.Cell>>> read(byte[] bytes, Optional<String> wanted) {
    try {
      if (unpacksToTooMuch(bytes)) {
        return tooLarge(file, 1);
      }
      try (ReadableWorkbook workbook =
          new ReadableWorkbook(new ByteArrayInputStream(bytes), new ReadingOptions(true, true))) {
        Optional<Sheet> sheet = sheet(workbook, wanted);
        return sheet.isEmpty()
            ? Optional.empty()
            : rows(sheet.get(), new ShownCell(workbook.isDate1904()));
      }
    } catch (IOException | ExcelReaderException e) {
      return unreadable(e);
    } catch (RuntimeException e) { // the library meets a damaged workbook with various of them
      return unreadable(e);
    }
  }

  private Optional<List<List<CsvText.Cell>>> unreadable(Exception e) {
    String why = Binder.shortened(String.valueOf(e.getMessage()));
    findings.add(
        Finding.of(Severity.ERROR, "file-unreadable", new SourcePosition(file, 1, 1), "why", why));
    return Optional.empty();
  }

  private Optional<List<List<CsvText.Cell>>> tooLarge(String shown, int line) {
    findings.add(
        Finding.of(
            Severity.ERROR,
            "workbook-too-large",
            new SourcePosition(shown, line, 1),
            "megabytes",
            (int) (MOST_BYTES >> 20),
            "rows",
            MOST_ROWS,
            "columns",
            MOST_COLUMNS));
    return Optional.empty();
  }

  /** Asks the bytes themselves: what a packed file says of its own size may be a lie. */
  private static boolean unpacksToTooMuch(byte[] bytes) throws IOException {
    long total = 0;
    int parts = 0;
    byte[] buffer = new byte[1 << 16];
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      for (ZipEntry part = in.getNextEntry(); part != null; part = in.getNextEntry()) {
        parts++;
        for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
          total += read;
          if (total > MOST_BYTES || parts > MOST_PARTS) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private Optional<Sheet> sheet(ReadableWorkbook workbook, Optional<String> wanted) {
    List<Sheet> sheets = workbook.getSheets().toList();
    Optional<Sheet> sheet =
        wanted.isEmpty()
            ? sheets.stream().findFirst()
            : sheets.stream().filter(s -> s.getName().equals(wanted.get())).findFirst();
    if (sheet.isEmpty()) {
      List<String> names = sheets.stream().map(Sheet::getName).toList();
      String name = wanted.map(Binder::shortened).orElse("-");
      findings.add(
          Finding.of(Severity.ERROR, "unknown-sheet", new SourcePosition(file, 1, 1), "sheet", name)
              .found(name)
              .expecting(Phrase.of("expected.one-of", "choices", String.join(", ", names)))
              .nearest(wanted.flatMap(w -> Nearest.to(w, names))));
    }
    return sheet;
  }

  private Optional<List<List<CsvText.Cell>>> rows(Sheet sheet, ShownCell shown) throws IOException {
    String name = file + "[" + sheet.getName() + "]";
    List<List<CsvText.Cell>> rows = new ArrayList<>();
    int width = 0;
    try (Stream<Row> stream = sheet.openStream()) {
      for (Iterator<Row> all = stream.iterator(); all.hasNext(); ) {
        Row row = all.next();
        if (row.getCellCount() > MOST_COLUMNS || rows.size() > MOST_ROWS) {
          return tooLarge(name, row.getRowNum());
        }
        List<CsvText.Cell> cells = cells(row, Math.max(width, row.getCellCount()), name, shown);
        int last = lastFilled(cells);
        if (last < 0) {
          continue;
        }
        width = rows.isEmpty() ? last + 1 : width;
        rows.add(List.copyOf(cells.subList(0, Math.max(width, last + 1))));
      }
    }
    return Optional.of(rows);
  }

  private List<CsvText.Cell> cells(Row row, int count, String name, ShownCell shown) {
    List<CsvText.Cell> cells = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      SourcePosition at = new SourcePosition(name, row.getRowNum(), i + 1);
      Optional<Cell> cell = row.getOptionalCell(i);
      if (cell.isPresent() && shown.isMistake(cell.get())) {
        findings.add(
            Finding.of(Severity.ERROR, "cell-with-mistake", at, "shown", cell.get().getRawValue())
                .found(String.valueOf(cell.get().getRawValue())));
      }
      String text = cell.map(shown::text).orElse("");
      cells.add(new CsvText.Cell(FormulaGuard.undo(text), at));
    }
    return cells;
  }

  private static int lastFilled(List<CsvText.Cell> cells) {
    int last = cells.size() - 1;
    while (last >= 0 && cells.get(last).text().isBlank()) {
      last--;
    }
    return last;
  }
}
