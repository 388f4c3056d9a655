package wallbook.read;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import wallbook.quantity.Length;
import wallbook.quantity.Quantity;
import wallbook.quantity.QuantityParser;
import wallbook.record.Id;
import wallbook.record.JobRecord;
import wallbook.record.Point;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;
import wallbook.record.Shape.Presence;
import wallbook.record.Word;

/**
 * Writes the form of a job record as a JSON Schema (draft 2020-12), made from the same shapes that
 * the reader goes by, so that an editor can complete and check a record while it is written. The
 * schema knows form only: whether an id exists, or a port is taken, is the reader's and the checks'
 * matter.
 */
public final class SchemaWriter {
  private static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";
  private static final String ID = "urn:wallbook:job-record:" + JobReader.FORMAT;

  /** Types used, by the name of their definition. */
  private final Map<String, Class<?>> used = new TreeMap<>();

  private final JsonGenerator json;

  private SchemaWriter(JsonGenerator json) {
    this.json = json;
  }

  /** The schema as text, two blanks to a level, lines ended by a line feed. */
  public static String schema() {
    StringWriter out = new StringWriter();
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter()
            .withObjectIndenter(indenter)
            .withArrayIndenter(DefaultPrettyPrinter.FixedSpaceIndenter.instance);
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.setPrettyPrinter(printer);
      new SchemaWriter(json).write();
    } catch (IOException e) {
      throw new UncheckedIOException("a schema in memory", e);
    }
    return out + "\n";
  }

  /**
   * Name of a type's definition: {@code RunEnd} is {@code run_end}, a date is {@code date}.
   *
   * @param type type of a field's value
   */
  public static String nameOf(Class<?> type) {
    if (type == LocalDate.class) {
      return "date";
    } else if (type == String.class) {
      return "text";
    } else if (type == Boolean.class) {
      return "yes_or_no";
    } else if (type == Integer.class) {
      return "whole_number";
    } else if (type == Double.class) {
      return "number";
    }
    return Shape.nameOf(type);
  }

  private void write() throws IOException {
    json.writeStartObject();
    json.writeStringField("$schema", DIALECT);
    json.writeStringField("$id", ID);
    json.writeStringField("title", "wallbook job record");
    writeShape(Shape.of(JobRecord.class));
    json.writeObjectFieldStart("$defs");
    writeIdDefinition();
    Map<String, Class<?>> done = new TreeMap<>();
    while (done.size() < used.size()) {
      String next =
          used.keySet().stream()
              .filter(name -> !done.containsKey(name))
              .min(Comparator.naturalOrder())
              .orElseThrow();
      done.put(next, used.get(next));
      writeDefinition(next, used.get(next));
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private void writeShape(Shape shape) throws IOException {
    json.writeStringField("type", "object");
    json.writeObjectFieldStart("properties");
    for (Field field : shape.fields()) {
      json.writeObjectFieldStart(field.key());
      writeField(field);
      json.writeEndObject();
    }
    json.writeEndObject();
    List<String> required =
        shape.fields().stream()
            .filter(field -> field.presence() == Presence.REQUIRED)
            .map(Field::key)
            .toList();
    if (!required.isEmpty()) {
      writeTexts("required", required);
    }
    if (!shape.oneOf().isEmpty()) {
      json.writeArrayFieldStart("oneOf");
      for (String key : shape.oneOf()) {
        json.writeStartObject();
        writeTexts("required", List.of(key));
        json.writeEndObject();
      }
      json.writeEndArray();
    }
    json.writeBooleanField("additionalProperties", false);
  }

  private void writeField(Field field) throws IOException {
    json.writeStringField("description", field.says().value());
    if (field.presence() == Presence.LIST) {
      json.writeStringField("type", "array");
      json.writeObjectFieldStart("items");
      writeReference(field);
      json.writeEndObject();
    } else {
      writeReference(field);
    }
    if (!field.says().example().isEmpty()) {
      json.writeArrayFieldStart("examples");
      new SchemaExample(json).write(field);
      json.writeEndArray();
    }
  }

  private void writeReference(Field field) throws IOException {
    if (field.hasIdForm() || field.refersTo().isPresent()) {
      json.writeStringField("$ref", "#/$defs/id");
      return;
    }
    String name = nameOf(field.type());
    used.put(name, field.type());
    json.writeStringField("$ref", "#/$defs/" + name);
  }

  private void writeIdDefinition() throws IOException {
    json.writeObjectFieldStart("id");
    writeTexts("type", List.of("string", "integer"));
    json.writeStringField("pattern", "^" + Id.FORM + "$");
    json.writeEndObject();
  }

  private void writeDefinition(String name, Class<?> type) throws IOException {
    json.writeObjectFieldStart(name);
    if (type == Point.class) {
      writePoint();
    } else if (Quantity.class.isAssignableFrom(type)) {
      writePattern(QuantityParser.patternOf(type.asSubclass(Quantity.class)));
    } else if (type.isEnum()) {
      writeTexts(
          "enum", Arrays.stream(type.getEnumConstants()).map(c -> ((Word) c).word()).toList());
    } else if (type.isRecord()) {
      writeShape(Shape.of(type.asSubclass(Record.class)));
    } else {
      writePlain(type);
    }
    json.writeEndObject();
  }

  private void writePlain(Class<?> type) throws IOException {
    if (type == LocalDate.class) {
      writePattern("^\\d{4}-\\d{2}-\\d{2}$");
    } else if (type == Integer.class) {
      json.writeStringField("type", "integer");
    } else if (type == Double.class) {
      json.writeStringField("type", "number");
    } else if (type == Boolean.class) {
      // YAML 1.1 makes booleans of yes and no, YAML 1.2 leaves them texts.
      json.writeArrayFieldStart("enum");
      json.writeBoolean(true);
      json.writeBoolean(false);
      json.writeString("yes");
      json.writeString("no");
      json.writeEndArray();
    } else {
      // A text such as a jack's number needs no quotes in a record.
      writeTexts("type", List.of("string", "number"));
      json.writeStringField("pattern", "\\S");
    }
  }

  private void writePoint() throws IOException {
    used.put("length", Length.class);
    json.writeStringField("type", "array");
    json.writeObjectFieldStart("items");
    json.writeStringField("$ref", "#/$defs/length");
    json.writeEndObject();
    json.writeNumberField("minItems", 2);
    json.writeNumberField("maxItems", 2);
  }

  private void writePattern(String pattern) throws IOException {
    json.writeStringField("type", "string");
    json.writeStringField("pattern", pattern);
  }

  private void writeTexts(String key, List<String> texts) throws IOException {
    json.writeArrayFieldStart(key);
    for (String text : texts) {
      json.writeString(text);
    }
    json.writeEndArray();
  }
}
