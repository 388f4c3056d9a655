package wallbook.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wallbook.check.SmallHouse.house;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wallbook.Jobs;
import wallbook.finding.Severity;
import wallbook.quantity.Quantity;
import wallbook.quantity.QuantityParser;
import wallbook.record.JobRecord;
import wallbook.record.Point;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;
import wallbook.reference.Row;

class PlausibleChecksTest {
  private static SmallHouse ceiling(String height) {
    return house()
        .with(
            "spaces",
            "- {id: den, name: Den, floor: ground, kind: living, ceiling_height: " + height + "}",
            "- {id: util, name: Utility, floor: ground, kind: utility}");
  }

  private static SmallHouse run(String rest) {
    return house()
        .with(
            "runs",
            "- {id: r1, label: K-01, cable: cat6, from: {head: rack, finish: coiled}, to: {place: d1, finish: coiled}, condition: dark, "
                + rest
                + "}");
  }

  @Test
  void aCeilingOfNinetyFeetIsAWrongUnit() {
    var finding = ceiling("¶90 ft").finds("implausible-value");
    assertEquals(Severity.WARNING, finding.severity());

    ceiling("9 ft").findsNo("implausible-value");
  }

  @Test
  void aRunOfFiveKilometresIsAWrongUnit() {
    run("length: ¶5 km").finds("implausible-value");
    run("length: 1500 ft").findsNo("implausible-value");
  }

  @Test
  void aCableOfThreeFeetAcrossIsAWrongUnit() {
    String type = "- {id: own, name: Own, medium: coax, coax: series_6, diameter: ";
    house().with("cables", type + "¶3 ft}").finds("implausible-value");
    house().with("cables", type + "1.5 in}").findsNo("implausible-value");
  }

  @Test
  void aLengthBelowNothingIsAnError() {
    var finding = run("length: ¶-1 ft").finds("value-below-least");
    assertEquals(Severity.ERROR, finding.severity());

    run("length: 2 ft").findsNo("value-below-least");
  }

  @Test
  void countsHaveRangesToo() {
    run("bundle: ¶0").finds("value-below-least");
    run("bundle: ¶500").finds("implausible-value");
    run("bundle: 12").findsNo("implausible-value");
  }

  /** Found by mutation: the map of two thousand million ports filled the memory. */
  @Test
  void moreThanAnyDocumentCouldListIsAnError() {
    String head = "[{id: closet, name: C, kind: rack, space: den, panels: [{id: X, name: X, ";
    var finding =
        house()
            .with("heads", head + "kind: patch_panel, ports: ¶2147483647}]}]")
            .finds("value-above-most");
    assertEquals(Severity.ERROR, finding.severity());
  }

  /** Found by mutation: the pulling tension after such a bend is no finite number. */
  @Test
  void aFigureThatNothingCanBeComputedByIsAnError() {
    run("length: ¶1000000000 ft").finds("value-above-most");
    run("length: 1500 ft").findsNo("value-above-most");
  }

  @Test
  void everyRangeIsOfAFieldOfTheRecord() throws Exception {
    Map<String, Field> fields = numericFields();
    for (Row row : Jobs.TABLES.table("plausible-values").rows()) {
      Field field = fields.get(row.text("thing") + "." + row.text("key"));
      assertTrue(
          field != null, () -> "no such field: " + row.text("thing") + "." + row.text("key"));
      for (String column : new String[] {"never_below", "least", "most"}) {
        Optional<String> text = row.textIfAny(column);
        if (text.isPresent() && field.type() != Integer.class) {
          QuantityParser.parse(field.type().asSubclass(Quantity.class), text.get());
        }
      }
    }
  }

  /** Figures without a range: sizes of the job that may be anything, and what a test limits. */
  @Test
  void everyFigureOfTheRecordHasARangeOrAReasonForNone() {
    Set<String> without = new HashSet<>(numericFields().keySet());
    for (Row row : Jobs.TABLES.table("plausible-values").rows()) {
      without.remove(row.text("thing") + "." + row.text("key"));
    }
    assertEquals(Set.of("job_record.format", "job_facts.north", "revision.revision"), without);
  }

  private static Map<String, Field> numericFields() {
    Map<String, Field> fields = new HashMap<>();
    Deque<Class<? extends Record>> open = new ArrayDeque<>(Set.of(JobRecord.class));
    Set<Class<?>> seen = new HashSet<>();
    while (!open.isEmpty()) {
      Class<? extends Record> type = open.pop();
      if (!seen.add(type)) {
        continue;
      }
      for (Field field : Shape.of(type).fields()) {
        if (Quantity.class.isAssignableFrom(field.type()) || field.type() == Integer.class) {
          fields.put(Shape.nameOf(type) + "." + field.key(), field);
        } else if (field.type().isRecord() && field.type() != Point.class) {
          open.push(field.type().asSubclass(Record.class));
        }
      }
    }
    return fields;
  }
}
