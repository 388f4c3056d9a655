package wallbook.compose.change;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.AllWords;
import wallbook.record.JobRecord;
import wallbook.record.Point;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;
import wallbook.record.Shape.Presence;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

class FieldNameTest {
  private static final Wording ENGLISH =
      new Wording(Locale.US, AllWords.ENGLISH, UnitSystem.METRIC);
  private static final Wording SPANISH =
      new Wording(Locale.forLanguageTag("es-MX"), AllWords.SPANISH, UnitSystem.METRIC);

  private static void collect(Class<?> type, Set<String> keys) {
    for (Field field : Shape.of(type.asSubclass(Record.class)).fields()) {
      keys.add(field.key());
      if (field.type() == Point.class) {
        continue; // printed as one value
      }
      if (field.type().isRecord() && field.type().getPackage() == JobRecord.class.getPackage()) {
        collect(field.type(), keys);
      }
    }
  }

  @Test
  void everyFieldOfAThingHasWordsInEveryLanguage() {
    Set<String> keys = new TreeSet<>();
    for (Field list : Shape.of(JobRecord.class).fields()) {
      if (list.presence() == Presence.LIST || list.key().equals("job")) {
        collect(list.type(), keys);
      }
    }
    List<String> without =
        keys.stream()
            .filter(
                key ->
                    !AllWords.ENGLISH.containsKey("change.key." + key)
                        || !AllWords.SPANISH.containsKey("change.key." + key))
            .toList();

    assertEquals(List.of(), without);
  }

  @ParameterizedTest
  @CsvSource({
    "length, Length, Longitud",
    "from.port, 'From-end, port', 'Extremo inicial, puerto'",
    "ties.2.from, 'Tie 2, corner measured from', 'Medida 2, esquina'"
  })
  void aFieldWithinAnotherSaysBoth(String key, String english, String spanish) {
    assertEquals(english, new FieldName(ENGLISH).of(key));
    assertEquals(spanish, new FieldName(SPANISH).of(key));
  }
}
