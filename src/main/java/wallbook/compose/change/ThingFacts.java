package wallbook.compose.change;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallbook.compose.Describe;
import wallbook.quantity.Quantity;
import wallbook.record.Point;
import wallbook.record.ProvisionGroup;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;
import wallbook.record.Word;
import wallbook.wording.Wording;

/** Everything that a thing of the record says, as printed, by dotted key. */
final class ThingFacts {
  private final Wording wording;

  ThingFacts(Wording wording) {
    this.wording = wording;
  }

  Map<String, String> of(Record thing) {
    Map<String, String> facts = new LinkedHashMap<>();
    fill(thing, "", facts);
    return facts;
  }

  private void fill(Record thing, String prefix, Map<String, String> facts) {
    for (Field field : Shape.of(thing.getClass()).fields()) {
      put(prefix + field.key(), field.value(thing), facts);
    }
  }

  private void put(String key, Object value, Map<String, String> facts) {
    if (value instanceof Optional<?> optional) {
      optional.ifPresent(v -> put(key, v, facts));
    } else if (value instanceof List<?> items) {
      boolean things = items.stream().anyMatch(ThingFacts::isThing);
      if (things) {
        for (int i = 0; i < items.size(); i++) {
          put(key + "." + (i + 1), items.get(i), facts);
        }
      } else if (!items.isEmpty()) {
        facts.put(key, String.join(", ", items.stream().map(this::print).toList()));
      }
    } else if (isThing(value)) {
      fill((Record) value, key + ".", facts);
    } else {
      facts.put(key, print(value));
    }
  }

  private static boolean isThing(Object value) {
    return value instanceof Record && !(value instanceof Quantity) && !(value instanceof Point);
  }

  private String print(Object value) {
    if (value instanceof Point point) {
      return "(" + wording.print(point.x()) + ", " + wording.print(point.y()) + ")";
    } else if (value instanceof Word word && !(value instanceof ProvisionGroup)) {
      return wording.say(Describe.keyOf(word));
    } else if (value instanceof Word word) {
      return word.word();
    } else if (value instanceof Boolean yes) {
      return wording.say(yes ? "change.yes" : "change.no");
    }
    return wording.print(value);
  }
}
