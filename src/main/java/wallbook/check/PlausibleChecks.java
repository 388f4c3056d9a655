package wallbook.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
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

  /** A field to look at: one that has a range, or that holds things with fields to look at. */
  private record Step(Field field, Optional<Range> range) {}

  private final Table ranges;
  private final Map<Class<?>, List<Step>> known = new ConcurrentHashMap<>();

  PlausibleChecks(Tables tables) {
    this.ranges = tables.table("plausible-values");
  }

  @Override
  public void look(Job job, Findings findings) {
    walk(job.record(), findings);
  }

  private void walk(Record thing, Findings findings) {
    for (Step step : steps(thing.getClass())) {
      Object value = step.field().value(thing);
      if (value instanceof List<?> list) {
        list.forEach(item -> look(thing, step, item, findings));
      } else if (value instanceof Optional<?> optional) {
        optional.ifPresent(item -> look(thing, step, item, findings));
      } else {
        look(thing, step, value, findings);
      }
    }
  }

  private void look(Record thing, Step step, Object value, Findings findings) {
    if (step.range().isPresent()) {
      compare(thing, step.field(), step.range().get(), value, findings);
    } else {
      walk((Record) value, findings);
    }
  }

  /** Most fields are words and names; asking each of each thing for its value takes its time. */
  private List<Step> steps(Class<? extends Record> type) {
    List<Step> steps = known.get(type);
    if (steps == null) {
      steps = Shape.of(type).fields().stream().flatMap(field -> step(type, field)).toList();
      known.put(type, steps);
    }
    return steps;
  }

  private Stream<Step> step(Class<? extends Record> type, Field field) {
    if (Quantity.class.isAssignableFrom(field.type()) || field.type() == Integer.class) {
      return range(type, field).map(range -> new Step(field, Optional.of(range))).stream();
    }
    boolean deeper =
        field.type().isRecord()
            && Shape.of(field.type().asSubclass(Record.class)).hasOrigin()
            && !steps(field.type().asSubclass(Record.class)).isEmpty();
    return deeper ? Stream.of(new Step(field, Optional.empty())) : Stream.empty();
  }

  private static void compare(
      Record thing, Field field, Range range, Object value, Findings findings) {
    Optional<Object> neverBelow = range.neverBelow();
    Object least = range.least();
    Object most = range.most();
    Optional<Object> neverAbove = range.neverAbove();
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
