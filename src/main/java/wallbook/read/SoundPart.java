package wallbook.read;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wallbook.record.JobRecord;
import wallbook.record.Kind;
import wallbook.record.Origin;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;

/**
 * The part of a record whose references all resolve. Checks can look at it although other parts
 * have mistakes, so that everything is reported in one go.
 */
final class SoundPart {
  private final Set<String> catalogue;

  SoundPart(Set<String> catalogue) {
    this.catalogue = catalogue;
  }

  /** The record without the things that refer, directly or through others, to what isn't there. */
  JobRecord of(JobRecord record) {
    JobRecord current = record;
    while (true) {
      Map<Kind, Set<String>> ids = ids(current);
      JobRecord kept = without(current, ids);
      if (kept.equals(current)) {
        return current;
      }
      current = kept;
    }
  }

  private Map<Kind, Set<String>> ids(JobRecord record) {
    Map<Kind, Set<String>> ids = new EnumMap<>(Kind.class);
    for (Kind kind : Kind.values()) {
      ids.put(kind, new HashSet<>());
    }
    ids.get(Kind.CABLE).addAll(catalogue);
    for (Field list : Shape.of(JobRecord.class).fields()) {
      if (list.value(record) instanceof List<?> items) {
        for (Object item : items) {
          for (Field field : Shape.of(((Record) item).getClass()).fields()) {
            field.identifies().ifPresent(k -> ids.get(k).add((String) field.value((Record) item)));
          }
        }
      }
    }
    return ids;
  }

  private static JobRecord without(JobRecord record, Map<Kind, Set<String>> ids) {
    List<Object> values = new ArrayList<>();
    for (Field field : Shape.of(JobRecord.class).fields()) {
      Object value = field.value(record);
      if (value instanceof List<?> items) {
        values.add(items.stream().filter(item -> resolves((Record) item, ids)).toList());
      } else {
        values.add(value);
      }
    }
    Origin origin = record.origin();
    return (JobRecord) Shape.of(JobRecord.class).make(origin, values);
  }

  private static boolean resolves(Record thing, Map<Kind, Set<String>> ids) {
    if (!thing.getClass().getPackage().equals(JobRecord.class.getPackage())) {
      return true;
    }
    for (Field field : Shape.of(thing.getClass()).fields()) {
      for (Object value : values(field.value(thing))) {
        boolean fits =
            value instanceof Record inner
                ? resolves(inner, ids)
                : field.refersTo().map(kind -> ids.get(kind).contains(value)).orElse(true);
        if (!fits) {
          return false;
        }
      }
    }
    return true;
  }

  private static List<?> values(Object value) {
    if (value instanceof List<?> list) {
      return list;
    }
    return value instanceof Optional<?> optional ? optional.stream().toList() : List.of(value);
  }
}
