package wallbook.render;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "margin +0.24\u00a0dB left | +0.24\u00a0dB",
        "between −9.0\u00a0dBm, and | −9.0\u00a0dBm",
        "of +1,234.5\u00a0ft; more | +1,234.5\u00a0ft",
        "cable R01-03 here | R01-03",
        "in as-built, plate marked DEN-A | DEN-A",
        "on 2026-03-14 tested | 2026-03-14"
      })
  void aSignedFigureALabelAndADateStayWhole(String text, String whole) {
    Element body = Jsoup.parse("<p>" + text + "</p>").body();

    Words.mark(body);

    assertEquals(whole, body.selectFirst("span.whole").wholeText());
    assertEquals(text, body.wholeText());
  }
}
