package wallbook.assess.conduit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.quantity.Diameter;
import wallbook.quantity.Factor;
import wallbook.reference.Tables;

class JamRatioTest {
  private final JamRatio nec = JamRatio.nec(new Tables());
  private final JamRatio bands = JamRatio.bands(new Tables());

  @ParameterizedTest
  @CsvSource({ // NEC chapter 9 table 1 informational note 2, and 1.05·D/d of a pulling handbook
    "1.000,0.35,2.857,may-jam,3.000,small",
    "1.049,0.37,2.835,may-jam,2.977,moderate",
    "0.824,0.28,2.943,may-jam,3.090,small",
    "1.340,0.405,3.309,none,3.474,very-small",
    "1.000,0.25,4.0,none,4.2,very-small"
  })
  void theTwoRulesLookAtTheirOwnRatios(
      double bore, double cable, double plain, String byNec, double oval, String byBands) {
    Factor ratio = nec.ratio(Diameter.inches(bore), Diameter.inches(cable));
    assertEquals(plain, ratio.value(), 0.0006);
    assertEquals(byNec, nec.likelihood(ratio));
    Factor allowed = bands.ratio(Diameter.inches(bore), Diameter.inches(cable));
    assertEquals(oval, allowed.value(), 0.0006);
    assertEquals(byBands, bands.likelihood(allowed));
  }

  @ParameterizedTest
  @CsvSource({ // 'between 2.8 and 3.2', both included
    "2.799,none",
    "2.8,may-jam",
    "3.0,may-jam",
    "3.2,may-jam",
    "3.201,none"
  })
  void theCodeNamesOneRange(double ratio, String likelihood) {
    assertEquals(likelihood, nec.likelihood(Factor.of(ratio)));
  }

  @ParameterizedTest
  @CsvSource({ // bands of an engineering reference on cable pulling
    "2.39,very-small", "2.4,small", "2.49,small", "2.5,moderate", "2.59,moderate",
    "2.6,significant", "2.89,significant", "2.9,moderate", "2.99,moderate", "3.0,small",
    "3.19,small", "3.2,very-small"
  })
  void theHandbookNamesBands(double ratio, String likelihood) {
    assertEquals(likelihood, bands.likelihood(Factor.of(ratio)));
  }

  @Test
  void theRulesDisagree() {
    // D/d = 2.90 may jam by the code; 1.05 × 2.90 = 3.045 is small by the handbook
    assertEquals("may-jam", nec.likelihood(Factor.of(2.90)));
    assertEquals("small", bands.likelihood(Factor.of(1.05 * 2.90)));
  }

  @ParameterizedTest
  @CsvSource({"2.8,38.3", "3.2,29.3"}) // 3/J²
  void aLegalFillMayJam(double ratio, double percent) {
    Diameter cable = Diameter.inches(1 / ratio);
    assertEquals(
        percent,
        Fill.of(java.util.List.of(cable, cable, cable), Diameter.inches(1)).inPercent(),
        0.05);
  }
}
