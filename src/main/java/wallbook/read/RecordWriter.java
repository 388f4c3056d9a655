package wallbook.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.quantity.Quantity;
import wallbook.quantity.QuantityText;
import wallbook.record.JobRecord;
import wallbook.record.Point;
import wallbook.record.PrintUnits;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;
import wallbook.record.Word;

/**
 * Writes a record as YAML that reads back as the same record. Things of the record stand in block
 * style with one key a line; things within them on one line. Comments are not part of a record and
 * are not written.
 */
public final class RecordWriter {
  private static final List<String> METRIC = List.of("m", "mm", "m²", "N", "kg/km", "°C");
  private static final List<String> IMPERIAL =
      List.of("ft", "in", "sq ft", "lbf", "lb/1000 ft", "°F");

  private final List<String> units;

  private RecordWriter(List<String> units) {
    this.units = units;
  }

  /** The record as YAML, lengths in the units that it prints. */
  public static String text(JobRecord record) {
    return new RecordWriter(units(record)).whole(record);
  }

  /** Units to write the quantities of a record in: those it prints. */
  static List<String> units(JobRecord record) {
    boolean metric = record.job().units().equals(Optional.of(PrintUnits.METRIC));
    return metric ? METRIC : IMPERIAL;
  }

  /** One value as it stands in a record: a text, quantity, date, number, word or yes and no. */
  static String scalar(Object value, List<String> units) {
    if (value instanceof Quantity quantity) {
      return QuantityText.of(quantity, units);
    } else if (value instanceof Word word) {
      return word.word();
    } else if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    return value.toString();
  }

  private String whole(JobRecord record) {
    StringBuilder out = new StringBuilder();
    for (Field field : Shape.of(JobRecord.class).fields()) {
      Object value = field.value(record);
      if (value instanceof List<?> items) {
        if (!items.isEmpty()) {
          out.append('\n').append(field.key()).append(":\n");
          items.forEach(item -> block((Record) item, "  - ", "    ", out));
        }
      } else if (value instanceof Record thing) {
        out.append('\n').append(field.key()).append(":\n");
        block(thing, "  ", "  ", out);
      } else {
        out.append(field.key()).append(": ").append(value).append('\n');
      }
    }
    return out.toString();
  }

  private void block(Record thing, String first, String next, StringBuilder out) {
    String indent = first;
    for (Field field : Shape.of(thing.getClass()).fields()) {
      Optional<String> text = value(field.value(thing));
      if (text.isPresent()) {
        out.append(indent).append(field.key()).append(": ").append(text.get()).append('\n');
        indent = next;
      }
    }
  }

  /** A value on one line; nothing for an absent one. */
  private Optional<String> value(Object value) {
    if (value instanceof Optional<?> optional) {
      return optional.flatMap(this::value);
    } else if (value instanceof List<?> items) {
      return items.isEmpty()
          ? Optional.empty()
          : Optional.of(
              "["
                  + String.join(", ", items.stream().flatMap(i -> value(i).stream()).toList())
                  + "]");
    } else if (value instanceof Point point) {
      return Optional.of("[" + scalar(point.x(), units) + ", " + scalar(point.y(), units) + "]");
    } else if (value instanceof Record thing && !(value instanceof Quantity)) {
      return Optional.of(flow(thing));
    }
    return Optional.of(YamlText.plainOrQuoted(scalar(value, units)));
  }

  private String flow(Record thing) {
    List<String> pairs = new ArrayList<>();
    for (Field field : Shape.of(thing.getClass()).fields()) {
      value(field.value(thing)).ifPresent(text -> pairs.add(field.key() + ": " + text));
    }
    return "{" + String.join(", ", pairs) + "}";
  }
}
