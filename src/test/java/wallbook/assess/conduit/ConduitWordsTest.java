package wallbook.assess.conduit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wallbook.assess.Assessment;
import wallbook.assess.Said;
import wallbook.wording.Phrase;

/** Every phrase that conduit results use has words, in both languages. */
class ConduitWordsTest {
  private static final String BENT =
      "path: [{straight: 20 ft}, {bend: 90 deg, radius: 6 in}, {straight: 120 ft}]";
  private static final String ENT_1 = "type: ent, trade_size: '1', pull_string: none, ";

  private static final List<Assessment> ALL =
      Stream.of(
              ConduitHouse.ent1(BENT),
              ConduitHouse.ent1("length: 200 ft, " + BENT),
              ConduitHouse.ent1("length: 60 ft"),
              ConduitHouse.ent1("length: 200 ft"),
              ConduitHouse.ent1("length: 20 in, bore: 24 mm"),
              ConduitHouse.ent1(
                  "path: [{straight: 9 ft}, {bend: 90 deg}, {pull_box: PB}, {straight: 9 ft}]"),
              ConduitHouse.ent1("path: [{straight: 9 ft}, {bend: 90 deg, radius: 5 in}]"),
              ConduitHouse.ent1("path: [{straight: 9 ft}]").holding("speaker-14-4"),
              ConduitHouse.ent1("path: [{straight: 9 ft}]").holding("cat6", "cat6", "cat6"),
              ConduitHouse.ent1("").holding("speaker-14-2", "speaker-14-2", "speaker-14-2"),
              ConduitHouse.ent1("path: [{bend: 90 deg, radius: 5.9 in}]"),
              ConduitHouse.ent1("path: [{bend: 90 deg, radius: 9 in}]").holding("control-22-2"),
              ConduitHouse.with(
                      "type: iec_rigid, trade_size: '25', bore: 21 mm, pull_string: none,"
                          + " condition: clear")
                  .holding("cat6"),
              jam(0.45), // 1.05·D/d = 2.333
              jam(0.43), // 2.442
              jam(0.41), // 2.561
              jam(0.38), // 2.763
              jam(0.25), // 4.2
              ConduitHouse.ent1("").holding("cat6", "om3-2"),
              ConduitHouse.ent1(BENT).cable("odd", "medium: fibre").holding("odd", "cat6"),
              ConduitHouse.ent1("").cable("odd", "medium: coax"),
              ConduitHouse.with(ENT_1 + "condition: clear"),
              ConduitHouse.with(ENT_1 + "condition: crushed"),
              ConduitHouse.with(ENT_1 + "condition: blocked"),
              ConduitHouse.with(
                  ENT_1 + "condition: clear, proved: {date: 2026-02-11, by: string_drawn}"),
              ConduitHouse.with(
                  ENT_1 + "condition: unknown, proved: {date: 2026-02-11, by: mandrel}"),
              ConduitHouse.with(
                  ENT_1 + "condition: clear, proved: {date: 2026-02-11, by: slug, size: 0.3 in}"),
              ConduitHouse.with(
                  "type: ent, trade_size: 1/2, bore: 14.4 mm, pull_string: none,"
                      + " condition: clear, path: [{straight: 9 ft}, {bend: 90 deg, radius: 20 mm}]"),
              ConduitHouse.with(
                  "type: ent, trade_size: 1/2, bore: 6 mm, pull_string: none,"
                      + " condition: clear, path: [{straight: 9 ft}]"),
              ConduitHouse.with(
                      "type: iec_rigid, trade_size: '25', pull_string: none, condition: clear,"
                          + " path: [{straight: 9 ft}, {pull_box: pb}, {straight: 9 ft}]")
                  .holding("cat6", "cat6")
                  .place("pb", "pull_box"),
              ConduitHouse.ent1("path: [{straight: 9 ft}, {pull_box: pb}, {straight: 9 ft}]")
                  .place("pb", "pull_box"))
          .flatMap(house -> house.answers().stream())
          .toList();

  private static ConduitHouse jam(double inches) {
    return ConduitHouse.ent1("")
        .cable("thick", "medium: speaker, diameter: " + inches + " in")
        .holding("thick", "thick", "thick");
  }

  @Test
  void everyPhraseIsSaidInEnglishAndSpanish() {
    for (Phrase phrase : phrases()) {
      assertFalse(Said.english(phrase).isBlank());
      assertFalse(Said.spanish(phrase).isBlank());
    }
  }

  @Test
  void theLanguagesHaveTheSameKeysAndArguments() {
    assertEquals(Set.of(), Said.differences("conduit."));
  }

  @Test
  void noWordsLieUnused() {
    assertEquals(Set.of(), Said.unused("conduit.", phrases()));
  }

  @Test
  void aResultReadsAsAClauseOfATable() {
    ConduitHouse house = ConduitHouse.ent1("path: [{straight: 20 ft}]");
    assertEquals(
        "the next one would fill 43.8 %, with 40.0 % allowed",
        Said.english(house.answer("conduit.more.cat6.table-1").limitedBy().orElseThrow()));
    assertEquals(
        "alimentado por Rack; 1 N desde el otro extremo; Category 6, four pairs sería el primero"
            + " en sobrecargarse",
        Said.spanish(house.answer("conduit.pull.cat6.dry").limitedBy().orElseThrow()));
  }

  private static List<Phrase> phrases() {
    return ALL.stream().flatMap(a -> Said.phrases(a).stream()).distinct().toList();
  }
}
