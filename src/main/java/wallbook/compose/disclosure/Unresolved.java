package wallbook.compose.disclosure;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wallbook.record.JobRecord;
import wallbook.record.Kind;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;

/** Takes out of a part of a record the references to what is not in it. */
final class Unresolved {
  private final JobRecord record;
  private final Map<Kind, Set<String>> ids = new EnumMap<>(Kind.class);

  Unresolved(JobRecord record) {
    this.record = record;
    for (Kind kind : Kind.values()) {
      ids.put(kind, new HashSet<>());
    }
    for (Field list : Shape.of(JobRecord.class).fields()) {
      if (list.value(record) instanceof List<?> things) {
        things.forEach(thing -> provide((Record) thing));
      }
    }
  }

  private void provide(Record thing) {
    for (Field field : Shape.of(thing.getClass()).fields()) {
      field.identifies().ifPresent(kind -> ids.get(kind).add((String) field.value(thing)));
    }
  }

  /**
   * The record without them: an optional reference is left out, one of a list dropped, and what
   * can't be without its reference, such as a coil of a run, is dropped whole. References to cable
   * types stay: what the record doesn't hold, the catalogue does.
   */
  JobRecord dropped() {
    return (JobRecord) Parts.rebuilt(record, this::told).orElseThrow();
  }

  private Optional<Object> told(Field field, Object value) {
    if (Parts.isPart(value)) {
      return Parts.rebuilt((Record) value, this::told).map(Object.class::cast);
    }
    return Optional.of(value)
        .filter(
            id ->
                field
                    .refersTo()
                    .filter(kind -> kind != Kind.CABLE)
                    .map(kind -> ids.get(kind).contains((String) id))
                    .orElse(true));
  }
}
