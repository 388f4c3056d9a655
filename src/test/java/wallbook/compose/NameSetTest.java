package wallbook.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.NotEmpty;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class NameSetTest {
  @Test
  void findsANameAtTheBeginningOfAWordOnly() {
    NameSet names = new NameSet(List.of("keypad", "grt-24"));
    assertTrue(names.isNamedIn("two keypads by the door"));
    assertTrue(names.isNamedIn("see (grt-24)"));
    assertFalse(names.isNamedIn("a monkeypad"));
    assertFalse(names.isNamedIn("see 2grt-24"));
    assertFalse(names.isNamedIn(""));
  }

  @Test
  void findsWhatANameOfTwoWordsBegins() {
    NameSet names = new NameSet(List.of("door", "door contact", "dool"));
    assertTrue(names.isNamedIn("the door is open"));
    assertTrue(names.isNamedIn("door contact"));
    assertFalse(names.isNamedIn("doo"));
  }

  /** Held against the regular expressions of the platform, one for each name. */
  @Property
  void findsWhatARegularExpressionFinds(
      @ForAll @Size(max = 6)
          List<@NotEmpty @StringLength(max = 4) @Chars({'a', 'b', '1', ' ', '-', 'é'}) String>
              names,
      @ForAll @StringLength(max = 12) @CharRange(from = 'a', to = 'b') @Chars({'1', ' ', '-', 'é'})
          String text) {
    boolean found =
        names.stream()
            .map(
                name ->
                    Pattern.compile(
                        "(?<![\\p{L}\\p{N}])" + Pattern.quote(name),
                        Pattern.UNICODE_CHARACTER_CLASS))
            .anyMatch(pattern -> pattern.matcher(text).find());
    assertEquals(found, new NameSet(names).isNamedIn(text));
  }
}
