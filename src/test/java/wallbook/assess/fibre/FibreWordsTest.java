package wallbook.assess.fibre;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wallbook.assess.Assessment;
import wallbook.assess.Said;
import wallbook.wording.Phrase;

/** Every phrase that fibre results use has words, in both languages. */
class FibreWordsTest {
  private static final List<Phrase> PHRASES = phrases();

  @Test
  void everyPhraseIsSaidInEnglishAndSpanish() {
    for (Phrase phrase : PHRASES) {
      assertFalse(Said.english(phrase).isBlank());
      assertFalse(Said.spanish(phrase).isBlank());
    }
  }

  @Test
  void theLanguagesHaveTheSameKeysAndArguments() {
    assertEquals(Set.of(), Said.differences("fibre."));
  }

  @Test
  void noWordsLieUnused() {
    Set<String> unused = Said.unused("fibre.", PHRASES);
    // One connector or no splice may be the usual figure one day; the table decides.
    unused.removeIf(key -> key.endsWith(".usual.one"));

    assertEquals(Set.of(), unused);
  }

  @Test
  void aResultReadsAsAClauseOfATable() {
    Assessment result =
        FibreJobs.only(
            FibreJobs.assess(FibreJobs.run("r", "om3-2", "90 m")), "fibre.application.25gbase-sr");

    assertEquals(
        "length 90.0 m, reach 70.0 m: 20.0 m too long; loss of at most 1.80 dB: kept with"
            + " 1.77 dB by ANSI/TIA-568.3-D at 3.0 dB/km, exceeded with 1.82 dB by ISO/IEC"
            + " 11801-1 (as IEEE 802.3) at 3.5 dB/km",
        Said.metric(result.limitedBy().orElseThrow()));
  }

  private static List<Phrase> phrases() {
    List<Assessment> all = new ArrayList<>();
    for (String cable :
        List.of(
            "om1-2",
            "om3-2",
            "om3-4",
            "om4-8",
            "om4-20",
            "om5-2",
            "os2-2",
            "plain",
            "om3-uncounted")) {
      for (String length :
          List.of("", "20 m", "90 m", "95 m", "230 m, length_by: estimate", "20 km")) {
        all.addAll(FibreJobs.assess(FibreJobs.run("r", cable, length)));
        all.addAll(
            FibreJobs.assess(
                FibreJobs.job(FibreJobs.coiled("r", cable, length), FibreJobs.joints(4, 1))));
        all.addAll(
            FibreJobs.assess(
                FibreJobs.job(
                    FibreJobs.run("r", cable, length, "unknown", "dark"), FibreJobs.joints(1, 2))));
      }
    }
    all.addAll(FibreJobs.assess(FibreJobs.run("r", "om3-2", "9 m", "cut", "damaged")));
    all.addAll(FibreJobs.assess(FibreJobs.run("r", "om3-2", "9 m", "cut", "abandoned")));
    all.addAll(
        FibreJobs.assess(
            FibreJobs.run("a", "om4-2", "9 m")
                + FibreJobs.run("b", "om3-2", "9 m")
                + FibreJobs.run("c", "om1-2", "9 m")));
    all.addAll(
        FibreJobs.assess(
            FibreJobs.job(FibreJobs.run("r", "om3-2", "230 m"), FibreJobs.joints(2, 1))));
    all.addAll(
        FibreJobs.assess(
            FibreJobs.job(FibreJobs.run("r", "os2-2", "100 m"), FibreJobs.joints(18, 0))));
    for (String result : List.of("pass", "fail")) {
      for (String losses :
          List.of(
              "{wavelength: 850 nm, loss: -1 dB, fibre: 1}",
              "{wavelength: 850 nm, loss: 1.78 dB, fibre: 1}",
              "{wavelength: 850 nm, loss: 1.7 dB, fibre: 1}, {wavelength: 850 nm, loss: 1.7 dB, fibre: 2}, {wavelength: 1300 nm, loss: 1 dB, fibre: 1}, {wavelength: 1300 nm, loss: 1 dB, fibre: 2}",
              "{wavelength: 1310 nm, loss: 1 dB, fibre: 1}, {wavelength: 1550 nm, loss: 1 dB, fibre: 1}")) {
        String test =
            "tests: [{id: t, run: r, date: 2026-03-01, kind: light_source, result: %s, accuracy: 0.2 dB, length: 90 m, losses: [%s]}, {id: c, run: r, date: 2026-03-01, kind: continuity, result: pass}]\n"
                .formatted(result, losses);
        for (String cable : List.of("om3-2", "om3-uncounted")) {
          all.addAll(FibreJobs.assess(FibreJobs.job(FibreJobs.run("r", cable, ""), test)));
        }
        all.addAll(FibreJobs.assess(FibreJobs.job(FibreJobs.coiled("r", "om3-2", ""), test)));
        String single =
            "cables: [{id: os2-1, name: One, medium: fibre, fibre_class: os2, fibres: 1}]\n";
        all.addAll(
            FibreJobs.assess(FibreJobs.house(single, FibreJobs.run("r", "os2-1", ""), test)));
      }
    }
    for (String radius : List.of("1 in", "6 in")) {
      all.addAll(
          FibreJobs.assess(
              FibreJobs.job(
                  FibreJobs.run("r", "om3-2", "9 m, conduits: [c]"),
                  "conduits: [{id: c, label: C, name: Conduit, type: ent, trade_size: '1', from: {head: rack}, to: {place: den-1}, path: [{bend: 90 deg, radius: "
                      + radius
                      + "}], contents: [r], pull_string: none, condition: clear}]\n")));
    }
    return all.stream().flatMap(a -> Said.phrases(a).stream()).distinct().toList();
  }
}
