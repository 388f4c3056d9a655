package wallbook.read;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallbook.finding.SourcePosition;
import wallbook.record.Origin;
import wallbook.record.Says;

/** How the columns of somebody's schedule become keys of the record. */
public record ImportMapping(
    Origin origin,
    @Says(
            value = "Key by which rows find things of the record; their id unless said.",
            example = "label")
        Optional<String> match,
    @Says("Columns of the schedule that are not named as the record's keys.")
        List<MappedColumn> columns,
    @Says("Values that every row has, unless a column gives them.") List<FixedValue> fixed,
    @Says(value = "Columns to pass over.", example = "[Sheet, Remarks]") List<String> ignore,
    @Says(value = "Character between cells; found by itself unless said.", example = "\";\"")
        Optional<String> delimiter,
    @Says(value = "Encoding of the file; found by itself unless said.", example = "windows-1252")
        Optional<String> encoding,
    @Says(value = "Sheet of a workbook; the first unless said.", example = "Runs")
        Optional<String> sheet,
    @Says("Whether numbers are written with a decimal comma.") Optional<Boolean> decimalComma) {

  /** A mapping that says nothing: columns are named as the keys. */
  public static final ImportMapping NONE =
      new ImportMapping(
          new Origin(new SourcePosition("-", 1, 1), Map.of()),
          Optional.empty(),
          List.of(),
          List.of(),
          List.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  public ImportMapping {
    columns = List.copyOf(columns);
    fixed = List.copyOf(fixed);
    ignore = List.copyOf(ignore);
  }

  /** One column. */
  public record MappedColumn(
      Origin origin,
      @Says(value = "Its name in the header.", example = "Cable No.") String column,
      @Says(value = "Key of the record, dotted.", example = "from.port") String key,
      @Says(value = "Unit of its plain numbers.", example = "ft") Optional<String> unit) {}

  /** One value for every row. */
  public record FixedValue(
      Origin origin,
      @Says(value = "Key of the record, dotted.", example = "from.head") String key,
      @Says(value = "The value as a record has it.", example = "rack") String value) {}
}
