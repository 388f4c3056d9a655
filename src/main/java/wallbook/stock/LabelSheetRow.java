package wallbook.stock;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Nearest;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;
import wallbook.record.Id;
import wallbook.record.Word;
import wallbook.wording.Phrase;

/**
 * Makes a {@link LabelSheet} of one row of the table {@code label-sheets}, or of a table of the
 * same form, and says all that is wrong with the row.
 */
public final class LabelSheetRow {
  /** The columns that a table of label sheets has. */
  public static final List<String> COLUMNS =
      List.of(
          "name",
          "purpose",
          "stock",
          "page_width_mm",
          "page_height_mm",
          "columns",
          "rows",
          "left_mm",
          "top_mm",
          "pitch_x_mm",
          "pitch_y_mm",
          "label_width_mm",
          "label_height_mm",
          "edge_mm",
          "printed_height_mm",
          "neck_mm",
          "code_mm",
          "cells",
          "usual",
          "note");

  private static final int MOST_CELLS = 1000;
  private static final double LONGEST_MM = 5000;

  private final UnaryOperator<String> cells;
  private final SourcePosition at;
  private final Findings findings;
  private boolean sound = true;

  /**
   * @param cells text of the cell in each of {@link #COLUMNS}
   * @param at where the row stands
   * @param findings takes what is wrong with it
   */
  public LabelSheetRow(UnaryOperator<String> cells, SourcePosition at, Findings findings) {
    this.cells = cells;
    this.at = at;
    this.findings = findings;
  }

  /** The sheet, if nothing is wrong with the row. */
  public Optional<LabelSheet> sheet() {
    String name = cells.apply("name");
    if (!name.matches(Id.FORM)) {
      refuse("malformed-sheet-name", "name", Phrase.of("expected.id-form", "longest", Id.LONGEST));
    }
    Optional<LabelKind> purpose = word("purpose", LabelKind.values());
    Optional<Stock> stock = word("stock", Stock.values());
    LabelSheet.Size page = new LabelSheet.Size(length("page_width_mm"), length("page_height_mm"));
    LabelSheet.Grid grid = grid();
    LabelSheet.Parts parts = parts();
    String usual = choice("usual", List.of("yes", "no", ""));
    if (!sound) {
      return Optional.empty();
    }
    LabelSheet sheet =
        new LabelSheet(
            name,
            purpose.orElseThrow(),
            stock.orElseThrow(),
            page,
            grid,
            parts,
            usual.equals("yes"),
            cells.apply("note"));
    return new SheetGeometry(at, findings).isSound(sheet) ? Optional.of(sheet) : Optional.empty();
  }

  private LabelSheet.Grid grid() {
    return new LabelSheet.Grid(
        count("columns"),
        count("rows"),
        distance("left_mm"),
        distance("top_mm"),
        length("pitch_x_mm"),
        length("pitch_y_mm"));
  }

  private LabelSheet.Parts parts() {
    return new LabelSheet.Parts(
        new LabelSheet.Size(length("label_width_mm"), length("label_height_mm")),
        distance("edge_mm"),
        part("printed_height_mm"),
        part("neck_mm"),
        part("code_mm"),
        cells.apply("cells").isEmpty() ? OptionalInt.empty() : OptionalInt.of(count("cells")));
  }

  private <W extends Word> Optional<W> word(String column, W[] choices) {
    String text = choice(column, Arrays.stream(choices).map(Word::word).toList());
    return Arrays.stream(choices).filter(c -> c.word().equals(text)).findFirst();
  }

  private String choice(String column, List<String> accepted) {
    String text = cells.apply(column);
    if (!accepted.contains(text)) {
      sound = false;
      findings.add(
          Finding.of(Severity.ERROR, "unknown-word", at, "found", text)
              .found(column + ": " + text)
              .expecting(
                  Phrase.of("expected.one-of", "choices", String.join(", ", accepted).strip()))
              .nearest(Nearest.to(text, accepted)));
    }
    return text;
  }

  /** A length above zero. */
  private double length(String column) {
    double value = number(column);
    if (value <= 0 || value > LONGEST_MM) {
      refuse("impossible-value", column, Phrase.of("expected.sheet-measure"));
    }
    return value;
  }

  /** A length that may be zero. */
  private double distance(String column) {
    double value = number(column);
    if (value < 0 || value > LONGEST_MM) {
      refuse("impossible-value", column, Phrase.of("expected.sheet-measure"));
    }
    return value;
  }

  private OptionalDouble part(String column) {
    return cells.apply(column).isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(length(column));
  }

  private double number(String column) {
    String text = cells.apply(column);
    if (text.matches("[0-9]{1,6}(\\.[0-9]{1,6})?")) {
      return Double.parseDouble(text);
    }
    refuse("not-a-number", column, Phrase.of("expected.number"));
    return 1;
  }

  private int count(String column) {
    String text = cells.apply(column);
    if (!text.matches("[0-9]{1,6}")) {
      refuse("not-a-whole-number", column, Phrase.of("expected.whole"));
      return 1;
    }
    int value = Integer.parseInt(text);
    if (value < 1 || value > MOST_CELLS) {
      refuse("impossible-value", column, Phrase.of("expected.sheet-measure"));
    }
    return value;
  }

  private void refuse(String finding, String column, Phrase expected) {
    sound = false;
    String text = cells.apply(column);
    findings.add(
        Finding.of(Severity.ERROR, finding, at, "found", text)
            .found(column + ": " + text)
            .expecting(expected));
  }
}
