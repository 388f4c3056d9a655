package wallbook.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;
import wallbook.quantity.Quantity;
import wallbook.quantity.QuantityParser;
import wallbook.quantity.QuantityParser.NotAQuantity;
import wallbook.record.Job;
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
  /** What values of a key may be. */
  private record Range(
      Optional<Object> neverBelow, Object least, Object most, Optional<Object> neverAbove) {}

  private final Table ranges;
  private final Map<Field, Optional<Range>> rangeOfField = new ConcurrentHashMap<>();

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
      Object value = field.value(thing);
      List<?> items =
          value instanceof List<?> list
              ? list
              : value instanceof Optional<?> optional ? optional.stream().toList() : List.of(value);
      for (Object item : items) {
        if (item instanceof Quantity || item instanceof Integer) {
          compare(thing, field, item, findings);
        } else if (item instanceof Record inner && Shape.of(inner.getClass()).hasOrigin()) {
          walk(inner, findings);
        }
      }
    }
  }

  private void compare(Record thing, Field field, Object value, Findings findings) {
    Optional<Range> range = rangeOfField.computeIfAbsent(field, f -> range(thing.getClass(), f));
    if (range.isEmpty()) {
      return;
    }
    Optional<Object> neverBelow = range.get().neverBelow();
    Object least = range.get().least();
    Object most = range.get().most();
    Optional<Object> neverAbove = range.get().neverAbove();
    boolean usual = order(value, least) >= 0 && order(value, most) <= 0;
    if (usual && neverAbove.isEmpty() && neverBelow.isEmpty()) {
      return;
    }
    SourcePosition at = Shape.of(thing.getClass()).origin(thing).position(field.key());
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
    } else if (!usual) {
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

  private Optional<Range> range(Class<?> type, Field field) {
    return ranges
        .find(Shape.nameOf(type), field.key())
        .map(
            row ->
                new Range(
                    bound(row, "never_below", field),
                    bound(row, "least", field).orElseThrow(),
                    bound(row, "most", field).orElseThrow(),
                    bound(row, "never_above", field)));
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
}
