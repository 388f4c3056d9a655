package wallbook.compose.disclosure;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import wallbook.record.JobRecord;
import wallbook.record.RefersTo;

/**
 * Leaves out the free texts of a record that a reader must not be told: notes, reasons, purposes,
 * whatever may be absent. Ids, references and names stay, since other things rest on them.
 */
final class FreeTexts {
  private static final Package OF_THE_RECORD = JobRecord.class.getPackage();

  private final Predicate<String> tellable;

  FreeTexts(Predicate<String> tellable) {
    this.tellable = tellable;
  }

  /** The record with the tellable texts only. */
  JobRecord of(JobRecord record) {
    return (JobRecord) rebuilt(record);
  }

  private Record rebuilt(Record record) {
    RecordComponent[] components = record.getClass().getRecordComponents();
    Object[] values = new Object[components.length];
    try {
      for (int i = 0; i < components.length; i++) {
        Object value = components[i].getAccessor().invoke(record);
        values[i] = components[i].isAnnotationPresent(RefersTo.class) ? value : told(value);
      }
      Class<?>[] types =
          Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
      Constructor<? extends Record> constructor = record.getClass().getDeclaredConstructor(types);
      return constructor.newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("a record of the job can't be made again", e);
    }
  }

  private Object told(Object value) {
    if (value instanceof Optional<?> optional) {
      return optional.filter(this::isTold).map(this::told);
    } else if (value instanceof List<?> list) {
      return list.stream().filter(this::isTold).map(this::told).toList();
    } else if (value instanceof Record part && part.getClass().getPackage() == OF_THE_RECORD) {
      return rebuilt(part);
    }
    return value;
  }

  private boolean isTold(Object value) {
    return !(value instanceof String text) || tellable.test(text);
  }
}
