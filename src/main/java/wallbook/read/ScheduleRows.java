package wallbook.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Nearest;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;
import wallbook.quantity.Length;
import wallbook.quantity.Quantity;
import wallbook.read.CsvText.Cell;
import wallbook.record.Point;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;
import wallbook.wording.Phrase;

/** Reads the rows of a schedule by the keys of one shape, and says which cells can't be read. */
final class ScheduleRows {
  /** In a key for a run: the end at a head, whichever it is. */
  static final String HOME = "home";

  /** In a key for a run: the end that is not {@link #HOME}. */
  static final String FAR = "far";

  private static final Pattern WITH_UNIT = Pattern.compile("(.*\\S)\\s*[(\\[]([^)\\]]+)[)\\]]");
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d*[.]?\\d+");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("(\\d),(\\d)");

  private final Shape shape;
  private final ImportMapping mapping;
  private final Findings findings;
  private final Scalars scalars;
  private final String file;

  ScheduleRows(Shape shape, ImportMapping mapping, Findings findings, String file) {
    this.shape = shape;
    this.mapping = mapping;
    this.findings = findings;
    this.scalars = new Scalars(findings);
    this.file = file;
  }

  /** What a row says by key, before it is known which thing it is about. */
  record Given(Map<String, Cell> cells, SourcePosition start) {}

  private record Column(String key, Field field, Optional<String> unit) {}

  /** Key by which rows find things: stated, or that of the id, or the first of the shape. */
  String match() {
    return mapping
        .match()
        .orElseGet(
            () ->
                shape.fields().stream()
                    .filter(f -> f.identifies().isPresent())
                    .findFirst()
                    .orElse(shape.fields().get(0))
                    .key());
  }

  /** The rows below the header that say anything. */
  List<Given> read(List<List<Cell>> rows) {
    SourcePosition start = new SourcePosition(file, 1, 1);
    Map<String, Cell> fixed = fixed();
    List<Optional<Column>> columns = rows.isEmpty() ? List.of() : header(rows.get(0));
    boolean finds =
        fixed.containsKey(match())
            || columns.stream().flatMap(Optional::stream).anyMatch(c -> c.key().equals(match()));
    if (!finds) {
      findings.add(
          Finding.of(Severity.ERROR, "missing-column", start)
              .expecting(Phrase.of("expected.columns", "columns", match())));
      return List.of();
    }
    List<Given> given = new ArrayList<>();
    for (List<Cell> row : rows.subList(1, rows.size())) {
      row(row, columns, fixed).ifPresent(given::add);
    }
    return given;
  }

  private Optional<Given> row(
      List<Cell> row, List<Optional<Column>> columns, Map<String, Cell> fixed) {
    SourcePosition start = row.get(0).at();
    if (row.stream().allMatch(c -> c.text().isBlank())) {
      return Optional.empty();
    }
    if (row.size() != columns.size()) {
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  "row-length",
                  start,
                  "cells",
                  row.size(),
                  "columns",
                  columns.size())
              .found(Integer.toString(row.size())));
      return Optional.empty();
    }
    Map<String, Cell> cells = new TreeMap<>();
    fixed.forEach((key, cell) -> cells.put(key, new Cell(cell.text(), start)));
    for (int i = 0; i < row.size(); i++) {
      Cell cell = row.get(i);
      if (columns.get(i).isPresent() && !cell.text().isBlank()) {
        Column column = columns.get(i).get();
        Cell read = new Cell(withUnit(cell.text().strip(), column), cell.at());
        check(read, column.field());
        cells.put(column.key(), read);
      }
    }
    if (!cells.containsKey(match())) {
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  "missing-key",
                  start,
                  "key",
                  match(),
                  "says",
                  field(match()).map(f -> f.says().value()).orElse(""))
              .expecting(Phrase.of("expected.key", "key", match())));
      return Optional.empty();
    }
    return Optional.of(new Given(cells, start));
  }

  private String withUnit(String text, Column column) {
    boolean measured =
        Quantity.class.isAssignableFrom(column.field().type())
            || column.field().type() == Double.class;
    if (!measured) {
      return text;
    }
    String point =
        mapping.decimalComma().orElse(false)
            ? DECIMAL_COMMA.matcher(text).replaceAll("$1.$2")
            : text;
    return column.unit().isPresent() && NUMBER.matcher(point).matches()
        ? point + " " + column.unit().get()
        : point;
  }

  private void check(Cell cell, Field field) {
    List<String> items =
        Columns.Form.of(field) == Columns.Form.PLAIN_LIST
            ? ListCell.split(cell.text())
            : List.of(cell.text());
    for (String item : items) {
      if (field.type() != Point.class) {
        scalars.read(item, field.type(), cell.at());
        continue;
      }
      List<String> coordinates = PointCell.split(item);
      if (coordinates.isEmpty()) {
        findings.add(
            Finding.of(Severity.ERROR, "wrong-shape", cell.at())
                .found(Binder.shortened(item))
                .expecting(Phrase.of("expected.point")));
      }
      coordinates.forEach(c -> scalars.read(c, Length.class, cell.at()));
    }
  }

  private Map<String, Cell> fixed() {
    Map<String, Cell> fixed = new HashMap<>();
    for (ImportMapping.FixedValue value : mapping.fixed()) {
      Optional<Field> field = field(value.key());
      if (field.isEmpty()) {
        unknown(value.key(), value.origin().position("key"));
      } else {
        Cell cell = new Cell(value.value(), value.origin().position("value"));
        check(cell, field.get());
        fixed.put(value.key(), cell);
      }
    }
    return fixed;
  }

  private List<Optional<Column>> header(List<Cell> header) {
    List<Optional<Column>> columns = new ArrayList<>();
    Set<String> keys = new TreeSet<>();
    for (Cell cell : header) {
      Optional<Column> column = column(cell);
      if (column.isPresent() && !keys.add(column.get().key())) {
        findings.add(
            Finding.of(Severity.ERROR, "duplicate-column", cell.at(), "key", column.get().key())
                .found(Binder.shortened(cell.text())));
      }
      columns.add(column);
    }
    return columns;
  }

  private Optional<Column> column(Cell cell) {
    String name = cell.text().strip();
    if (mapping.ignore().contains(name)) {
      return Optional.empty();
    }
    Matcher form = WITH_UNIT.matcher(name);
    Optional<String> unit = form.matches() ? Optional.of(form.group(2).strip()) : Optional.empty();
    Optional<ImportMapping.MappedColumn> mapped =
        mapping.columns().stream().filter(c -> c.column().equals(name)).findFirst();
    String key =
        mapped
            .map(ImportMapping.MappedColumn::key)
            .orElseGet(
                () ->
                    (form.matches() ? form.group(1) : name)
                        .toLowerCase(Locale.ROOT)
                        .replace(' ', '_'));
    Optional<Field> field = field(key);
    if (field.isEmpty()) {
      unknown(
          mapped.isPresent() ? key : name,
          mapped.map(m -> m.origin().position("key")).orElse(cell.at()));
      return Optional.empty();
    }
    Optional<String> stated = mapped.flatMap(ImportMapping.MappedColumn::unit);
    return Optional.of(new Column(key, field.get(), stated.or(() -> unit)));
  }

  private void unknown(String name, SourcePosition at) {
    List<String> keys = new ArrayList<>();
    for (Field field : shape.fields()) {
      if (Columns.Form.of(field) == Columns.Form.THING) {
        Columns.shape(field).keys().forEach(k -> keys.add(field.key() + "." + k));
      } else {
        keys.add(field.key());
      }
    }
    findings.add(
        Finding.of(Severity.ERROR, "unknown-column", at, "column", Binder.shortened(name))
            .found(Binder.shortened(name))
            .expecting(Phrase.of("expected.one-of", "choices", String.join(", ", keys)))
            .nearest(Nearest.to(name, keys)));
  }

  /** The field that holds the plain value of a dotted key. */
  private Optional<Field> field(String key) {
    String plain = key;
    if (shape.field("from").isPresent()) {
      plain = key.replaceFirst("^" + HOME + "\\.", "from.").replaceFirst("^" + FAR + "\\.", "to.");
    }
    return field(shape, plain.split("\\."), 0);
  }

  private static Optional<Field> field(Shape shape, String[] parts, int at) {
    Optional<Field> field = at < parts.length ? shape.field(parts[at]) : Optional.empty();
    if (field.isEmpty()) {
      return Optional.empty();
    }
    return switch (Columns.Form.of(field.get())) {
      case PLAIN, PLAIN_LIST -> at == parts.length - 1 ? field : Optional.empty();
      case THING -> field(Columns.shape(field.get()), parts, at + 1);
      case THING_LIST ->
          at + 1 < parts.length && parts[at + 1].matches("[1-9]\\d{0,3}")
              ? field(Columns.shape(field.get()), parts, at + 2)
              : Optional.empty();
    };
  }
}
