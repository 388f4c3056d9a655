package wallbook.compose.change;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.Jobs;

class FieldValueTest {
  private static final FieldValue VALUES = new FieldValue(Jobs.sample("lakeside").record());

  @ParameterizedTest
  @CsvSource({
    "from.head, rack, Equipment rack",
    "conduits, c-04, C-04",
    "to.place, no-such-place, no-such-place",
    "from.port, 7, 7",
    "label, rack, rack",
    "cable, cat6, cat6"
  })
  void whatRefersToSomethingIsSaidByItsLabelOrName(String key, String value, String said) {
    assertEquals(said, VALUES.of(key, value));
  }
}
