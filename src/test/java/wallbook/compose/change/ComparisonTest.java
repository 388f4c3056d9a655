package wallbook.compose.change;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.AllWords;
import wallbook.Jobs;
import wallbook.record.JobRecord;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

class ComparisonTest {
  private static final Wording WORDING =
      new Wording(Locale.US, AllWords.ENGLISH, UnitSystem.METRIC);
  private static final String HOUSE =
      """
      floors: [{id: ground, name: Ground floor, level: 0, elevation: 0 m}]
      spaces:
        - {id: hall, name: Hall, floor: ground, kind: hall}
        - {id: den, name: Den, floor: ground, kind: study}
      heads:
        - {id: rack, name: Rack, kind: rack, space: hall, panels: [{id: P1, name: Panel, kind: patch_panel, ports: 24}]}
      places:
        - {id: tv, name: Television plate, space: den, kind: wall_plate, use: television}
      runs:
        - id: r-1
          label: D-01
          cable: cat6
          from: {head: rack, panel: P1, port: 1, finish: terminated}
          to: {place: tv, finish: terminated}
          length: 40 m
          condition: dark
      tests:
        - {id: t-1, run: r-1, date: 2026-03-01, kind: length, result: pass}
      """;
  private static final JobRecord BEFORE = Jobs.job(HOUSE).record();

  @ParameterizedTest
  @CsvSource({
    "condition: dark, condition: in_service, LIT runs r-1 D-01 condition dark>in service",
    "condition: dark, condition: damaged, RETIRED runs r-1 D-01 condition dark>damaged",
    "port: 1, port: 2, MOVED runs r-1 D-01 from.port 1>2",
    "use: television}, 'use: television, wall: B}', MOVED places tv Television plate wall >B",
    "label: D-01, label: D-11, RENAMED runs r-1 D-11 label D-01>D-11",
    "length: 40 m, length: 41 m, CHANGED runs r-1 D-01 length 40.0\u00a0m>41.0\u00a0m"
  })
  void aChangedValueIsNamedByWhatItMeans(String was, String is, String change) {
    assertEquals(List.of(change), changes(HOUSE.replace(was, is)));
  }

  @Test
  void aNewTestOfATestedRunMeansThatItWasTestedAgain() {
    String again = "  - {id: t-2, run: r-1, date: 2026-05-01, kind: length, result: pass}\n";

    assertEquals(
        List.of("RETESTED runs r-1 D-01 date >May 1, 2026 kind >length result >passed"),
        changes(HOUSE + again));
  }

  @Test
  void whatIsNewAndWhatIsGoneIsFoundById() {
    assertEquals(
        List.of("ADDED spaces attic Attic"),
        changes(
            HOUSE.replace(
                "heads:", "  - {id: attic, name: Attic, floor: ground, kind: attic}\nheads:")));
    assertEquals(
        List.of("GONE tests t-1 D-01, length"), changes(HOUSE.replaceAll("(?s)tests:.*", "")));
  }

  @Test
  void orderAndWritingAreNoChange() {
    assertEquals(List.of(), changes(HOUSE.replace("length: 40 m", "length: '40 m' # taped")));
  }

  private static List<String> changes(String yaml) {
    return Comparison.of(BEFORE, Jobs.job(yaml).record(), WORDING).stream()
        .map(ComparisonTest::text)
        .toList();
  }

  private static String text(Change change) {
    StringBuilder text = new StringBuilder();
    text.append(change.sort()).append(' ').append(change.list()).append(' ').append(change.id());
    text.append(' ').append(change.name());
    change.fields().forEach(f -> text.append(" " + f.key() + " " + f.before() + ">" + f.after()));
    return text.toString();
  }
}
