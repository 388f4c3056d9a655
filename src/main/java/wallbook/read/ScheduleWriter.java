package wallbook.read;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import wallbook.record.JobRecord;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;

/**
 * Writes the lists of a record as schedules for a spreadsheet: comma-separated as RFC 4180 has it,
 * with a header, one row for each thing. {@link ScheduleImport} takes them back unchanged.
 */
public final class ScheduleWriter {
  private ScheduleWriter() {}

  /**
   * A schedule.
   *
   * @param list key of the list in the record, such as {@code runs}
   * @param text rows that end with carriage return and line feed
   */
  public record Schedule(String list, String text) {}

  /** A schedule of every list of the record that holds something, in the record's order. */
  public static List<Schedule> all(JobRecord record) {
    Columns columns = new Columns(RecordWriter.units(record));
    List<Schedule> schedules = new ArrayList<>();
    for (Field field : Shape.of(JobRecord.class).fields()) {
      if (Columns.Form.of(field) == Columns.Form.THING_LIST) {
        List<Record> things =
            ((List<?>) field.value(record)).stream().map(Record.class::cast).toList();
        if (!things.isEmpty()) {
          schedules.add(new Schedule(field.key(), table(Columns.shape(field), things, columns)));
        }
      }
    }
    return schedules;
  }

  private static String table(Shape shape, List<Record> things, Columns columns) {
    List<String> names = Columns.names(shape, things);
    StringBuilder text = new StringBuilder();
    try {
      CSVFormat.RFC4180.printRecord(text, names.toArray());
      for (Record thing : things) {
        Map<String, String> cells = columns.cells(thing);
        CSVFormat.RFC4180.printRecord(
            text, names.stream().map(n -> FormulaGuard.guard(cells.getOrDefault(n, ""))).toArray());
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory can't be written", e);
    }
    return text.toString();
  }
}
