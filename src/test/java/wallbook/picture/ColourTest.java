package wallbook.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ColourTest {
  /**
   * Ratios as public texts on WCAG quote them: black on white 21; the palest grey that text may
   * have, #767676, 4.54; pure blue 8.59; #ff8100 on #64003a 5.235 (rounded here to two places).
   */
  @ParameterizedTest
  @CsvSource({
    "#000000, #ffffff, 21.00",
    "#767676, #ffffff, 4.54",
    "#0000ff, #ffffff, 8.59",
    "#ff8100, #64003a, 5.24",
    "#ffffff, #ffffff, 1.00"
  })
  void contrastIsThatOfTheGuideline(String one, String other, double ratio) {
    Colour first = Colour.parse(one).orElseThrow();
    Colour second = Colour.parse(other).orElseThrow();

    assertEquals(ratio, first.contrast(second), 0.005);
    assertEquals(ratio, second.contrast(first), 0.005);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "0f4a5c", "#0f4a5", "#0f4a5g", "teal", "#0f4a5c; x: url(a)"})
  void nothingElseIsAColour(String text) {
    assertEquals(Optional.empty(), Colour.parse(text));
  }

  @Test
  void aColourIsWrittenAsItWasRead() {
    assertEquals("#0f4a5c", Colour.parse("#0F4A5c").orElseThrow().toString());
  }

  @Test
  void aTintLiesBetweenTheColourAndWhite() {
    Colour colour = Colour.parse("#0f4a5c").orElseThrow();

    assertEquals(Colour.WHITE, colour.tint(0));
    assertEquals(colour, colour.tint(1));
    assertTrue(colour.contrast(colour.tint(0.1)) < colour.contrast(Colour.WHITE));
  }
}
