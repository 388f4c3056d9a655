package wallbook.docs;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import wallbook.quantity.Length;
import wallbook.quantity.Quantity;
import wallbook.quantity.QuantityParser;
import wallbook.record.JobRecord;
import wallbook.record.Point;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;
import wallbook.record.Shape.Presence;
import wallbook.record.Word;

/** Writes the page that describes every key of a job record, from the shapes it is read by. */
final class RecordReference {
  private static final String HEAD =
      """
      # The job record, key by key

      A record is one YAML file in UTF-8. This page lists every kind of entry with its keys. `docs/job-record.schema.json` says the
      same for editors: with the line `# yaml-language-server: $schema=<path to the schema>` at the top of a record, many editors complete
      keys and mark mistakes while you type.

      - Every entry that others refer to has an `id` of letters, digits, dots, hyphens and underscores, at most 64 of them, unique in the
        whole record. A reference is such an id.
      - Lengths and other quantities have their unit behind the number; see [Quantities](#quantities). A bare number is refused.
      - Dates are year, month, day: `2026-05-14`. Yes and no are `yes` and `no`.
      - A key that is not listed here is an error, so that nothing is lost by a slip of the pen.

      This page is generated from the types that the reader fills; `mvn -q test -Dtest=PublishedPagesTest -Dapprove=true` writes it anew.
      """;

  private final StringBuilder page = new StringBuilder(HEAD);
  private final Set<Class<?>> quantities = new LinkedHashSet<>();

  private RecordReference() {}

  static String page() {
    RecordReference reference = new RecordReference();
    reference.writeEntries();
    reference.writeQuantities();
    return reference.page.toString();
  }

  private void writeEntries() {
    Map<Class<? extends Record>, String> said = new LinkedHashMap<>();
    Deque<Class<? extends Record>> open = new ArrayDeque<>();
    said.put(JobRecord.class, "The whole file.");
    open.add(JobRecord.class);
    while (!open.isEmpty()) {
      Class<? extends Record> type = open.remove();
      writeEntry(type, said.get(type));
      for (Field field : Shape.of(type).fields()) {
        if (isEntry(field.type())) {
          Class<? extends Record> inner = field.type().asSubclass(Record.class);
          if (said.putIfAbsent(inner, field.says().value()) == null) {
            open.add(inner);
          }
        }
      }
    }
  }

  private void writeEntry(Class<? extends Record> type, String says) {
    Shape shape = Shape.of(type);
    page.append("\n## ").append(Shape.nameOf(type)).append("\n\n").append(says).append("\n");
    if (!shape.oneOf().isEmpty()) {
      page.append("\nExactly one of ")
          .append(
              shape.oneOf().stream().map(key -> "`" + key + "`").collect(Collectors.joining(", ")))
          .append(" is given.\n");
    }
    page.append("\n| key | value | must be there | what it says | example |\n");
    page.append("| --- | --- | --- | --- | --- |\n");
    for (Field field : shape.fields()) {
      String example = field.says().example();
      page.append("| `")
          .append(field.key())
          .append("` | ")
          .append(value(field))
          .append(" | ")
          .append(field.presence() == Presence.REQUIRED ? "yes" : "")
          .append(" | ")
          .append(field.says().value().replace("|", "\\|"))
          .append(" | ")
          .append(example.isEmpty() ? "" : "`" + example.replace("|", "\\|") + "`")
          .append(" |\n");
    }
  }

  private String value(Field field) {
    String one = oneValue(field);
    return field.presence() == Presence.LIST ? "list: " + one : one;
  }

  private String oneValue(Field field) {
    Class<?> type = field.type();
    if (field.hasIdForm()) {
      return "id";
    } else if (field.refersTo().isPresent()) {
      return "id of a " + field.refersTo().get().word().replace('_', ' ');
    } else if (type == Point.class) {
      quantities.add(Length.class);
      return "point: two lengths";
    } else if (isEntry(type)) {
      return "[" + Shape.nameOf(type) + "](#" + Shape.nameOf(type) + ")";
    } else if (Quantity.class.isAssignableFrom(type)) {
      quantities.add(type);
      return "[" + Shape.nameOf(type).replace('_', ' ') + "](#quantities)";
    } else if (type.isEnum()) {
      return Arrays.stream(type.getEnumConstants())
          .map(constant -> "`" + ((Word) constant).word() + "`")
          .collect(Collectors.joining(", "));
    } else if (type == LocalDate.class) {
      return "date";
    } else if (type == Integer.class) {
      return "whole number";
    } else if (type == Double.class) {
      return "number";
    }
    return type == Boolean.class ? "yes or no" : "text";
  }

  private void writeQuantities() {
    page.append(
        """

        ## Quantities

        A number, and one of the units of its kind. Numbers have a point for decimals; commas may part thousands. Lengths may be written in
        feet and inches, with fractions: `6 ft 2 in`, `6 ft 2 1/2 in`, `1-1/2 in`, `3/4 in`.

        | kind | units |
        | --- | --- |
        """);
    quantities.stream()
        .sorted(Comparator.comparing(Class::getSimpleName))
        .forEach(
            type ->
                page.append("| ")
                    .append(Shape.nameOf(type).replace('_', ' '))
                    .append(" | ")
                    .append(
                        QuantityParser.unitsOf(type.asSubclass(Quantity.class)).stream()
                            .map(unit -> "`" + unit + "`")
                            .collect(Collectors.joining(", ")))
                    .append(" |\n"));
  }

  private static boolean isEntry(Class<?> type) {
    return type.isRecord() && type != Point.class && !Quantity.class.isAssignableFrom(type);
  }
}
