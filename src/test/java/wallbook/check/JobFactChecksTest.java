package wallbook.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static wallbook.check.SmallHouse.house;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class JobFactChecksTest {
  private static SmallHouse job(String facts) {
    return house().with("job", "¶{id: s, title: S, revision: 1" + facts + "}");
  }

  private static SmallHouse party(String party) {
    return house().with("job", "{id: s, title: S, revision: 1, parties: [" + party + "]}");
  }

  private static SmallHouse floors(String second) {
    return house()
        .with("floors", "- {id: ground, name: Ground, level: 0, elevation: 0 ft}", second);
  }

  @Test
  void theHandoverHasADay() {
    job("").finds("handover-not-dated");
    job(", handover: 2026-05-14").findsNo("handover-not-dated");
  }

  @Test
  void theCodesAreStated() {
    job("").finds("codes-not-stated");
    job(", codes: [NEC 2023]").findsNo("codes-not-stated");
  }

  @Test
  void anIntegratorIsNamed() {
    job("").finds("integrator-not-named");
    party("{role: integrator, name: I}").findsNo("integrator-not-named");
  }

  @Test
  void integratorsAndElectriciansHaveALicence() {
    party("¶{role: integrator, name: I}").finds("licence-number-missing");
    party("¶{role: electrician, name: E}").finds("licence-number-missing");
    party("{role: integrator, name: I, licence: LV-0}").findsNo("licence-number-missing");
    party("{role: builder, name: B}").findsNo("licence-number-missing");
  }

  @Test
  void theIntegratorCanBeReached() {
    party("¶{role: integrator, name: I}").finds("integrator-out-of-reach");
    party("{role: integrator, name: I, phone: 555-0100}").findsNo("integrator-out-of-reach");
    party("{role: integrator, name: I, email: i@example.org}").findsNo("integrator-out-of-reach");
  }

  @Test
  void theLanguageIsATag() {
    var finding =
        house()
            .with("job", "{id: s, title: S, revision: 1, language: ¶es_US}")
            .finds("malformed-language");
    assertEquals(Optional.of("es-US"), finding.nearest());

    job(", language: es-US").findsNo("malformed-language");
  }

  @Test
  void twoFloorsHaveTwoLevels() {
    floors("- {id: upper, name: Upper, level: ¶0, elevation: 10 ft}")
        .finds("two-floors-on-one-level");
    floors("- {id: upper, name: Upper, level: 1, elevation: 10 ft}")
        .findsNo("two-floors-on-one-level");
  }

  @Test
  void aHigherLevelLiesHigher() {
    floors("- {id: upper, name: Upper, level: 1, elevation: ¶-1 ft}").finds("floors-out-of-order");
    floors("- {id: cellar, name: Cellar, level: -1, elevation: -9 ft}")
        .findsNo("floors-out-of-order");
    floors("- {id: outside, name: Outside, level: -1, elevation: 0 ft}")
        .findsNo("floors-out-of-order");
  }
}
