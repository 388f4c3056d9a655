package wallbook.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallbook.quantity.Quantity;
import wallbook.record.Point;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;
import wallbook.record.Shape.Presence;

/**
 * Things of a record as rows of a table: a column for each plain value, {@code from.head} for one
 * within another thing, {@code losses.1.wavelength} for one in a list of things, counted from 1.
 * Plain values of a list share a cell.
 */
final class Columns {
  private final List<String> units;

  /**
   * @param units units to write quantities in, where they write them exactly
   */
  Columns(List<String> units) {
    this.units = units;
  }

  /** How the value of a field takes up columns. */
  enum Form {
    PLAIN,
    PLAIN_LIST,
    THING,
    THING_LIST;

    static Form of(Field field) {
      boolean thing =
          field.type().isRecord()
              && field.type() != Point.class
              && !Quantity.class.isAssignableFrom(field.type());
      if (field.presence() == Presence.LIST) {
        return thing ? THING_LIST : PLAIN_LIST;
      }
      return thing ? THING : PLAIN;
    }
  }

  /** The shape of the things that a field holds. */
  static Shape shape(Field field) {
    return Shape.of(field.type().asSubclass(Record.class));
  }

  /** Names of the columns that some things of one shape need, in the order of the shape. */
  static List<String> names(Shape shape, List<? extends Record> things) {
    List<String> names = new ArrayList<>();
    collect(shape, "", things, names);
    return names;
  }

  private static void collect(
      Shape shape, String prefix, List<? extends Record> things, List<String> names) {
    for (Field field : shape.fields()) {
      String name = prefix + field.key();
      switch (Form.of(field)) {
        case PLAIN, PLAIN_LIST -> names.add(name);
        case THING -> {
          List<Record> inner = things.stream().flatMap(t -> inner(field, t).stream()).toList();
          collect(shape(field), name + ".", inner, names);
        }
        case THING_LIST -> {
          List<List<Record>> lists = things.stream().map(t -> inner(field, t)).toList();
          int most = lists.stream().mapToInt(List::size).max().orElse(0);
          for (int i = 0; i < most; i++) {
            int index = i;
            List<Record> nth =
                lists.stream().filter(l -> l.size() > index).map(l -> l.get(index)).toList();
            collect(shape(field), name + "." + (i + 1) + ".", nth, names);
          }
        }
      }
    }
  }

  /** The cells of a thing that hold something, by their column. */
  Map<String, String> cells(Record thing) {
    Map<String, String> cells = new LinkedHashMap<>();
    fill(thing, "", cells);
    return cells;
  }

  private void fill(Record thing, String prefix, Map<String, String> cells) {
    for (Field field : Shape.of(thing.getClass()).fields()) {
      String name = prefix + field.key();
      Object value = field.value(thing);
      switch (Form.of(field)) {
        case PLAIN -> plain(value).ifPresent(v -> cells.put(name, text(v)));
        case PLAIN_LIST -> {
          List<String> items = ((List<?>) value).stream().map(this::text).toList();
          if (!items.isEmpty()) {
            cells.put(name, ListCell.join(items));
          }
        }
        case THING -> inner(field, thing).forEach(t -> fill(t, name + ".", cells));
        case THING_LIST -> {
          List<Record> things = inner(field, thing);
          for (int i = 0; i < things.size(); i++) {
            fill(things.get(i), name + "." + (i + 1) + ".", cells);
          }
        }
      }
    }
  }

  private String text(Object value) {
    return value instanceof Point point
        ? "["
            + RecordWriter.scalar(point.x(), units)
            + ", "
            + RecordWriter.scalar(point.y(), units)
            + "]"
        : RecordWriter.scalar(value, units);
  }

  private static Optional<?> plain(Object value) {
    return value instanceof Optional<?> optional ? optional : Optional.of(value);
  }

  private static List<Record> inner(Field field, Record thing) {
    Object value = field.value(thing);
    if (value instanceof List<?> list) {
      return list.stream().map(Record.class::cast).toList();
    }
    return plain(value).map(Record.class::cast).stream().toList();
  }
}
