package wallbook.read;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;
import wallbook.quantity.Frequency;
import wallbook.record.LossDirection;
import wallbook.record.PairParameter;
import wallbook.record.SweepPoint;
import wallbook.record.Word;
import wallbook.wording.Phrase;

/**
 * Reads the sweep of a balanced-pair test: a comma-separated file with the columns {@code
 * frequency_mhz, parameter, pair, value_db, direction}.
 */
final class SweepReader {
  private static final List<String> COLUMNS =
      List.of("frequency_mhz", "parameter", "pair", "value_db", "direction");
  private static final long MOST_BYTES = 16L * 1024 * 1024;
  private static final CSVFormat FORM =
      CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setIgnoreSurroundingSpaces(true)
          .setIgnoreEmptyLines(true)
          .get();

  private final Findings findings;
  private final Scalars scalars;

  SweepReader(Findings findings) {
    this.findings = findings;
    this.scalars = new Scalars(findings);
  }

  /**
   * The points of a file.
   *
   * @param shown name of the file in findings
   */
  List<SweepPoint> read(Path file, String shown) {
    SourcePosition start = new SourcePosition(shown, 1, 1);
    try {
      if (Files.size(file) > MOST_BYTES) {
        findings.add(
            Finding.of(
                Severity.ERROR, "record-too-large", start, "megabytes", (int) (MOST_BYTES >> 20)));
        return List.of();
      }
      try (BufferedReader in = Files.newBufferedReader(file, StandardCharsets.UTF_8);
          CSVParser parser = FORM.parse(in)) {
        return points(parser, shown);
      }
    } catch (MalformedInputException e) {
      findings.add(Finding.of(Severity.ERROR, "not-utf-8", start));
    } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
      findings.add(
          Finding.of(
              Severity.ERROR,
              "file-unreadable",
              start,
              "why",
              Binder.shortened(String.valueOf(e.getMessage()))));
    }
    return List.of();
  }

  private List<SweepPoint> points(CSVParser parser, String shown) {
    List<String> missing =
        COLUMNS.stream().filter(c -> !parser.getHeaderNames().contains(c)).toList();
    if (!missing.isEmpty()) {
      findings.add(
          Finding.of(Severity.ERROR, "missing-column", new SourcePosition(shown, 1, 1))
              .found(String.join(", ", parser.getHeaderNames()))
              .expecting(Phrase.of("expected.columns", "columns", String.join(", ", missing))));
      return List.of();
    }
    List<SweepPoint> points = new ArrayList<>();
    for (CSVRecord row : parser) {
      int line = (int) parser.getCurrentLineNumber();
      point(row, new SourcePosition(shown, Math.max(1, line), 1)).ifPresent(points::add);
    }
    return points;
  }

  private Optional<SweepPoint> point(CSVRecord row, SourcePosition at) {
    if (!row.isConsistent()) {
      findings.add(
          Finding.of(
                  Severity.ERROR, "row-length", at, "cells", row.size(), "columns", COLUMNS.size())
              .found(Integer.toString(row.size())));
      return Optional.empty();
    }
    Optional<Double> frequency = number(row.get("frequency_mhz"), at);
    Optional<Double> value = number(row.get("value_db"), at);
    Optional<PairParameter> parameter = word(PairParameter.class, row.get("parameter"), at);
    Optional<LossDirection> direction = word(LossDirection.class, row.get("direction"), at);
    if (frequency.isEmpty() || value.isEmpty() || parameter.isEmpty() || direction.isEmpty()) {
      return Optional.empty();
    }
    if (frequency.get() <= 0) {
      findings.add(
          Finding.of(Severity.ERROR, "impossible-value", at, "found", row.get("frequency_mhz"))
              .found(row.get("frequency_mhz")));
      return Optional.empty();
    }
    return Optional.of(
        new SweepPoint(
            Frequency.megahertz(frequency.get()),
            parameter.get(),
            row.get("pair"),
            value.get(),
            direction.get()));
  }

  private Optional<Double> number(String text, SourcePosition at) {
    return scalars.read(text, Double.class, at).map(Double.class::cast);
  }

  private <W extends Enum<W> & Word> Optional<W> word(
      Class<W> type, String text, SourcePosition at) {
    return scalars.read(text, type, at).map(type::cast);
  }
}
