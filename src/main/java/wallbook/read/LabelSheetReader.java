package wallbook.read;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;
import wallbook.stock.LabelSheet;
import wallbook.stock.LabelSheetRow;
import wallbook.wording.Phrase;

/**
 * Reads a user's own label sheets: a file of the form of the reference table {@code label-sheets},
 * of which the head lines, beginning with {@code #}, may be left out.
 */
public final class LabelSheetReader {
  private static final CSVFormat FORM =
      CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setIgnoreSurroundingSpaces(true)
          .setIgnoreEmptyLines(true)
          .setCommentMarker('#')
          .get();

  private final Findings findings;

  /**
   * @param findings takes what is wrong with the file
   */
  public LabelSheetReader(Findings findings) {
    this.findings = findings;
  }

  /** The sheets of a file; those with mistakes are left out and found fault with. */
  public List<LabelSheet> read(Path file) {
    String shown = file.toString().replace('\\', '/');
    SourcePosition start = new SourcePosition(shown, 1, 1);
    try (BufferedReader in = Files.newBufferedReader(file, StandardCharsets.UTF_8);
        CSVParser parser = FORM.parse(in)) {
      return sheets(parser, shown);
    } catch (MalformedInputException e) {
      findings.add(Finding.of(Severity.ERROR, "not-utf-8", start));
    } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
      String why = Binder.shortened(String.valueOf(e.getMessage()));
      findings.add(Finding.of(Severity.ERROR, "file-unreadable", start, "why", why));
    }
    return List.of();
  }

  private List<LabelSheet> sheets(CSVParser parser, String shown) {
    List<String> columns = parser.getHeaderNames();
    List<String> missing =
        LabelSheetRow.COLUMNS.stream().filter(c -> !columns.contains(c)).toList();
    if (!missing.isEmpty()) {
      findings.add(
          Finding.of(Severity.ERROR, "missing-column", new SourcePosition(shown, 1, 1))
              .found(String.join(", ", columns))
              .expecting(Phrase.of("expected.columns", "columns", String.join(", ", missing))));
      return List.of();
    }
    List<LabelSheet> sheets = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (CSVRecord row : parser) {
      SourcePosition at =
          new SourcePosition(shown, (int) Math.max(1, parser.getCurrentLineNumber()), 1);
      if (!row.isConsistent()) {
        int cells = row.size();
        findings.add(
            Finding.of(Severity.ERROR, "row-length", at, "cells", cells, "columns", columns.size())
                .found(Integer.toString(cells)));
      } else if (!names.add(row.get("name"))) {
        findings.add(
            Finding.of(Severity.ERROR, "duplicate-label-sheet", at, "sheet", row.get("name"))
                .found(row.get("name")));
      } else {
        new LabelSheetRow(row::get, at, findings).sheet().ifPresent(sheets::add);
      }
    }
    return sheets;
  }
}
