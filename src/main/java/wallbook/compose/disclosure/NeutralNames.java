package wallbook.compose.disclosure;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import wallbook.record.JobRecord;
import wallbook.record.Kind;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;

/**
 * Gives things whose id or name tells of what is kept from the reader another: a conduit that is
 * kept because others use it must not be called after the camera at its end. An id becomes its kind
 * with a number, a name the label or the id.
 */
final class NeutralNames {
  private final Predicate<String> tellable;
  private final Map<Kind, Map<String, String>> renamed = new EnumMap<>(Kind.class);

  NeutralNames(Predicate<String> tellable) {
    this.tellable = tellable;
  }

  JobRecord of(JobRecord record) {
    for (Kind kind : Kind.values()) {
      renamed.put(kind, renamed(kind, record));
    }
    return (JobRecord) told(record);
  }

  private Map<String, String> renamed(Kind kind, JobRecord record) {
    Map<String, String> names = new HashMap<>();
    List<String> ids = ids(kind, record);
    Set<String> taken = new HashSet<>(ids);
    int number = 0;
    for (String id : ids) {
      if (!tellable.test(id)) {
        String other;
        do {
          other = kind.word().replace('_', '-') + "-" + ++number;
        } while (!taken.add(other));
        names.put(id, other);
      }
    }
    return names;
  }

  private static List<String> ids(Kind kind, JobRecord record) {
    List<String> ids = new ArrayList<>();
    for (Field list : Shape.of(JobRecord.class).fields()) {
      if (list.value(record) instanceof List<?> things) {
        for (Object thing : things) {
          for (Field field : Shape.of(((Record) thing).getClass()).fields()) {
            if (field.identifies().equals(Optional.of(kind))) {
              ids.add((String) field.value((Record) thing));
            }
          }
        }
      }
    }
    return ids;
  }

  private Record told(Record thing) {
    return Parts.rebuilt(
            thing,
            (field, value) ->
                Optional.of(
                    field.key().equals("name") && !tellable.test((String) value)
                        ? instead(thing)
                        : told(field, value)))
        .orElseThrow();
  }

  private Object told(Field field, Object value) {
    if (Parts.isPart(value)) {
      return told((Record) value);
    }
    return field
        .refersTo()
        .or(field::identifies)
        .map(renamed::get)
        .map(names -> (Object) names.getOrDefault((String) value, (String) value))
        .orElse(value);
  }

  /** What stands for a name: the label, or else the id. */
  private Object instead(Record thing) {
    Shape shape = Shape.of(thing.getClass());
    return shape
        .field("label")
        .map(field -> field.value(thing))
        .filter(String.class::isInstance)
        .or(() -> shape.field("id").map(field -> told(field, field.value(thing))))
        .orElse("—");
  }
}
