package wallbook.read;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import wallbook.record.Point;
import wallbook.record.Shape.Field;
import wallbook.record.Shape.Presence;

/** Writes the example of a field, which is YAML, as the JSON value that it stands for. */
final class SchemaExample {
  private final JsonGenerator json;

  SchemaExample(JsonGenerator json) {
    this.json = json;
  }

  void write(Field field) throws IOException {
    String example = field.says().example();
    boolean isList = field.presence() == Presence.LIST;
    boolean parsed =
        field.type() == Point.class
            || field.type() == Integer.class
            || field.type() == Double.class
            || example.startsWith("[");
    Object value =
        parsed ? new Yaml(new SafeConstructor(new LoaderOptions())).load(example) : example;
    write(isList && !(value instanceof List) ? List.of(value) : value);
  }

  private void write(Object value) throws IOException {
    if (value instanceof List<?> items) {
      json.writeStartArray();
      for (Object item : items) {
        write(item);
      }
      json.writeEndArray();
    } else if (value instanceof Integer number) {
      json.writeNumber(number);
    } else if (value instanceof Double number) {
      json.writeNumber(number);
    } else {
      json.writeString(value.toString());
    }
  }
}
