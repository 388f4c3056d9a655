package wallbook.check;

import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.Optional;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;
import wallbook.quantity.Quantity;
import wallbook.quantity.QuantityParser;
import wallbook.quantity.QuantityParser.NotAQuantity;
import wallbook.record.Job;
import wallbook.record.Origin;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;
import wallbook.reference.Row;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Figures that no house has: nearly always the wrong unit. Walks the whole record by the shapes of
 * its types and compares what the table {@code plausible-values} has a range for.
 */
final class PlausibleChecks implements Check {
  private final Table ranges;

  PlausibleChecks(Tables tables) {
    this.ranges = tables.table("plausible-values");
  }

  @Override
  public void look(Job job, Findings findings) {
    walk(job.record(), findings);
  }

  private void walk(Record thing, Findings findings) {
    Shape shape = Shape.of(thing.getClass());
    for (Field field : shape.fields()) {
      Object value = get(field, thing);
      List<?> items =
          value instanceof List<?> list
              ? list
              : value instanceof Optional<?> optional ? optional.stream().toList() : List.of(value);
      for (Object item : items) {
        if (item instanceof Quantity || item instanceof Integer) {
          compare(thing, field, item, findings);
        } else if (item instanceof Record inner && isEntry(inner)) {
          walk(inner, findings);
        }
      }
    }
  }

  /** Whether it is an entry of the record with keys of its own, and not a point or the like. */
  private static boolean isEntry(Record thing) {
    return thing.getClass().getRecordComponents()[0].getType() == Origin.class;
  }

  private void compare(Record thing, Field field, Object value, Findings findings) {
    Optional<Row> range = ranges.find(Shape.nameOf(thing.getClass()), field.key());
    if (range.isEmpty()) {
      return;
    }
    SourcePosition at = origin(thing).position(field.key());
    Optional<Object> neverBelow = bound(range.get(), "never_below", field);
    Object least = bound(range.get(), "least", field).orElseThrow();
    Object most = bound(range.get(), "most", field).orElseThrow();
    Optional<Object> neverAbove = bound(range.get(), "never_above", field);
    if (neverAbove.isPresent() && order(value, neverAbove.get()) > 0) {
      findings.add(
          Finding.of(
              Severity.ERROR,
              "value-above-most",
              at,
              "key",
              field.key(),
              "value",
              value,
              "most",
              neverAbove.get()));
    } else if (neverBelow.isPresent() && order(value, neverBelow.get()) < 0) {
      findings.add(
          Finding.of(
              Severity.ERROR,
              "value-below-least",
              at,
              "key",
              field.key(),
              "value",
              value,
              "least",
              neverBelow.get()));
    } else if (order(value, least) < 0 || order(value, most) > 0) {
      findings.add(
          Finding.of(
                  Severity.WARNING,
                  "implausible-value",
                  at,
                  "key",
                  field.key(),
                  "value",
                  value,
                  "least",
                  least,
                  "most",
                  most)
              .expecting(Phrase.of("expected.range", "least", least, "most", most)));
    }
  }

  private Optional<Object> bound(Row row, String column, Field field) {
    return row.textIfAny(column).map(text -> read(text, field.type()));
  }

  private Object read(String text, Class<?> type) {
    if (type == Integer.class) {
      return Integer.valueOf(text);
    }
    try {
      return QuantityParser.parse(type.asSubclass(Quantity.class), text);
    } catch (NotAQuantity e) {
      throw new IllegalStateException("reference table " + ranges.name() + ": " + text, e);
    }
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static int order(Object a, Object b) {
    return ((Comparable) a).compareTo(b);
  }

  private static Origin origin(Record thing) {
    try {
      return (Origin) thing.getClass().getRecordComponents()[0].getAccessor().invoke(thing);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException("no origin in " + thing.getClass().getSimpleName(), e);
    }
  }

  private static Object get(Field field, Record thing) {
    try {
      return field.component().getAccessor().invoke(thing);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException("cannot read " + field.key(), e);
    }
  }
}
