package wallbook.compose.disclosure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import wallbook.record.JobRecord;
import wallbook.record.Origin;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;

/** The parts of a record, which are made of fields, among its plain values. */
final class Parts {
  private static final Package OF_THE_RECORD = JobRecord.class.getPackage();

  private Parts() {}

  /** Whether a value is made of fields that have an origin. */
  static boolean isPart(Object value) {
    return value instanceof Record record
        && record.getClass().getPackage() == OF_THE_RECORD
        && record.getClass().getRecordComponents()[0].getType() == Origin.class;
  }

  /** Where a part stands in its file. */
  static Origin origin(Record part) {
    try {
      return (Origin) part.getClass().getRecordComponents()[0].getAccessor().invoke(part);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("a part of the record can't be read", e);
    }
  }

  /**
   * A part with other values in its fields. A choice that is told nothing of is left out, an item
   * of a list dropped.
   *
   * @param told what becomes of a value, of each in an optional field or a list
   * @return nothing if a value that can't be without is told nothing of
   */
  static Optional<Record> rebuilt(Record part, BiFunction<Field, Object, Optional<Object>> told) {
    Shape shape = Shape.of(part.getClass());
    List<Object> values = new ArrayList<>();
    for (Field field : shape.fields()) {
      Object value = field.value(part);
      if (value instanceof Optional<?> optional) {
        values.add(optional.flatMap(inner -> told.apply(field, inner)));
      } else if (value instanceof List<?> list) {
        values.add(list.stream().flatMap(inner -> told.apply(field, inner).stream()).toList());
      } else {
        Optional<Object> required = told.apply(field, value);
        if (required.isEmpty()) {
          return Optional.empty();
        }
        values.add(required.get());
      }
    }
    return Optional.of(shape.make(origin(part), values));
  }
}
