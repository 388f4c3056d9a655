package wallbook.compose.change;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallbook.record.JobRecord;
import wallbook.record.Kind;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;

/**
 * Says what a field holds as a reader knows it: where it is the id of something, the label or name
 * of that. Of cable types that the record doesn't hold the id stays.
 */
final class FieldValue {
  private static final Map<String, Kind> REFERENCES = references();

  private final Map<Kind, Map<String, String>> names = new HashMap<>();

  /**
   * @param record the record that the values stand in
   */
  FieldValue(JobRecord record) {
    for (Field list : Shape.of(JobRecord.class).fields()) {
      if (list.value(record) instanceof List<?> things) {
        things.forEach(thing -> add((Record) thing));
      }
    }
  }

  /**
   * The value for a reader.
   *
   * @param dotted key of the field
   * @param value as printed, several parted by commas
   */
  String of(String dotted, String value) {
    Kind kind = REFERENCES.get(dotted.substring(dotted.lastIndexOf('.') + 1));
    if (kind == null) {
      return value;
    }
    Map<String, String> known = names.getOrDefault(kind, Map.of());
    return Arrays.stream(value.split(", "))
        .map(id -> known.getOrDefault(id, id))
        .collect(Collectors.joining(", "));
  }

  private void add(Record thing) {
    Shape shape = Shape.of(thing.getClass());
    Optional<Field> id = shape.fields().stream().filter(f -> f.identifies().isPresent()).findAny();
    Optional<String> name =
        Stream.of("label", "name")
            .flatMap(key -> shape.field(key).stream())
            .map(field -> field.value(thing))
            .map(value -> value instanceof Optional<?> optional ? optional.orElse(null) : value)
            .filter(String.class::isInstance)
            .map(String.class::cast)
            .findFirst();
    if (id.isPresent() && name.isPresent()) {
      names
          .computeIfAbsent(id.get().identifies().orElseThrow(), kind -> new HashMap<>())
          .put((String) id.get().value(thing), name.get());
    }
  }

  private static Map<String, Kind> references() {
    Map<String, Kind> references = new HashMap<>();
    collect(JobRecord.class, references);
    return Map.copyOf(references);
  }

  private static void collect(Class<? extends Record> type, Map<String, Kind> references) {
    for (Field field : Shape.of(type).fields()) {
      field.refersTo().ifPresent(kind -> references.put(field.key(), kind));
      if (field.type().isRecord() && field.type().getPackage() == JobRecord.class.getPackage()) {
        collect(field.type().asSubclass(Record.class), references);
      }
    }
  }
}
