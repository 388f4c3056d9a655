package wallbook.render.press;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where Unicode Standard Annex 14 lets a line end; the rule is named beside each case. */
class BreaksTest {
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '"',
      value = {
        "\"wall plate\", wall |plate", // LB18: after spaces
        "as-built, as-|built", // LB21: after a hyphen
        "-48, -48", // LB25: not inside a number with its sign
        "10-20, 10-20", // LB25
        "and/or, and/|or", // LB13 keeps '/' with what is before it, LB31 lets break after
        "1/2, 1/2", // LB25
        "\"18\u00a0in\", 18\u00a0in", // LB12: glue
        "\"one\u2014two\", one\u2014|two", // LB21: after a dash (the dash may also begin a line)
        "\"one\u200Btwo\", one\u200B|two", // LB8: zero width space
        "don't, don't" // LB19
      })
  void aLineMayEndWhereTheStandardLetsIt(String text, String marked) {
    StringBuilder found = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      boolean ends =
          i > 0
              && text.charAt(i) != ' '
              && Breaks.allowed(
                  text.charAt(i - 1), text.charAt(i), i > 1 ? text.charAt(i - 2) : ' ');
      found.append(ends ? "|" : "").append(text.charAt(i));
    }
    assertEquals(marked, found.toString());
  }
}
