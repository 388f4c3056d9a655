package wallbook.read;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.NumericChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.Jobs;
import wallbook.finding.Finding;
import wallbook.read.ScheduleImport.Request;
import wallbook.read.ScheduleImport.Result;
import wallbook.read.ScheduleImport.SourceFile;
import wallbook.record.JobRecord;
import wallbook.record.Run;

class ScheduleImportTest {
  private static final String HOUSE =
      """
      format: 1
      job: {id: small, title: Small job, revision: 1, invented: yes} # demo
      runs:
        # to the kitchen
        - id: r-1
          label: K-01 # as printed
          cable: cat6
          from: {head: rack, finish: terminated}
          to:
            place: tv
            finish: coiled
          length: 118 ft
          condition: dark
        # to the hall
        - {id: r-2, label: K-02, cable: cat6, from: {head: rack, finish: capped}, to: {place: tv, finish: capped}, condition: dark}
      # the end
      tests: []
      """;

  @ParameterizedTest
  @ValueSource(strings = {"lakeside", "flat"})
  void aRecordStaysByteForByteWhenItsOwnSchedulesComeBack(String sample) throws IOException {
    Path file = Path.of("sample-jobs", sample, "job.yaml");
    byte[] bytes = Files.readAllBytes(file);
    for (ScheduleWriter.Schedule schedule : ScheduleWriter.all(Jobs.sample(sample).record())) {
      Result result =
          ScheduleImport.merge(
              new SourceFile("job.yaml", bytes),
              source("x.csv", schedule.text()),
              request(schedule.list()));

      assertEquals(List.of(), result.findings(), schedule.list());
      assertArrayEquals(bytes, result.merged().orElseThrow().bytes(), schedule.list());
    }
  }

  @Property(tries = 60)
  void whateverACellSaysIsWhatTheRecordSaysAfterwardsAndNothingElseChanges(
      @ForAll @IntRange(max = 23) int index,
      @ForAll
          @AlphaChars
          @NumericChars
          @Chars({' ', '=', '-', '@', '\'', '"', ',', ';', ':', '#', '{', '[', '\n', 'é', '\\'})
          @StringLength(min = 1, max = 12)
          String note,
      @ForAll @IntRange(min = 1, max = 90) int metres)
      throws IOException {
    net.jqwik.api.Assume.that(!note.isBlank());
    Path file = Path.of("sample-jobs", "flat", "job.yaml");
    String before = Files.readString(file);
    JobRecord record = Jobs.sample("flat").record();
    Run run = record.runs().get(index % record.runs().size());
    String cell = FormulaGuard.guard(note).replace("\"", "\"\"");
    String csv = "id,note,length\r\n" + run.id() + ",\"" + cell + "\"," + metres + " m\r\n";
    Result result = merge(before, csv, request("runs"));
    String after = text(result);
    Run changed = Jobs.read(after).job().orElseThrow().runs().get(index % record.runs().size());

    assertEquals(Optional.of(note.strip()), changed.note());
    assertEquals((double) metres, changed.length().orElseThrow().inMetres(), 1e-9);
    assertEquals(comments(before), comments(after));
    assertEquals(
        record.runs().stream().filter(r -> !r.id().equals(run.id())).toList(),
        Jobs.read(after).job().orElseThrow().runs().stream()
            .filter(r -> !r.id().equals(run.id()))
            .toList());
  }

  @Test
  void onlyWhatDiffersIsWrittenInBlockAndFlowStyle() {
    String csv =
        """
        id,length,to.finish,to.slack,from.head,system
        r-1,118 ft,terminated,3 ft,rack,
        r-2,40 ft,capped,,rack,
        """;

    assertEquals(
        HOUSE
            .replace("      finish: coiled\n", "      finish: terminated\n      slack: 3 ft\n")
            .replace("condition: dark}", "condition: dark, length: 40 ft}"),
        text(merge(HOUSE, csv, request("runs"))));
  }

  @Test
  void newThingsGoToTheEndOfTheirList() {
    String csv =
        "id,label,cable,from.head,from.finish,to.place,to.finish,condition,conduits\n"
            + "r-3,K-03,cat6,rack,capped,tv,capped,dark,c-1; c-2\n";
    String added =
        """
          - id: r-3
            label: K-03
            cable: cat6
            from: {head: rack, finish: capped}
            to: {place: tv, finish: capped}
            condition: dark
            conduits: [c-1, c-2]
        """;

    assertEquals(
        HOUSE.replace("# the end", added + "# the end"), text(merge(HOUSE, csv, request("runs"))));
  }

  @Test
  void aListOnOneLineStaysOnOneLineWhenAThingIsAdded() {
    String house = HOUSE.replace("tests: []", "zones: [{id: z-1, name: Deck}]");

    assertEquals(
        house.replace("name: Deck}]", "name: Deck}, {id: z-2, name: Den}]"),
        text(merge(house, "id,name\nz-2,Den\n", request("zones"))));
  }

  @Test
  void aListThatIsEmptyOrNotThereIsBegun() {
    String test = "id,run,date,kind,result\nt-1,r-1,2026-03-01,length,pass\n";
    String block =
        "tests:\n  - id: t-1\n    run: r-1\n    date: 2026-03-01\n    kind: length\n    result: pass\n";

    assertEquals(HOUSE.replace("tests: []\n", block), text(merge(HOUSE, test, request("tests"))));
    assertEquals(
        HOUSE.replace("tests: []\n", "\n" + block),
        text(merge(HOUSE.replace("tests: []\n", ""), test, request("tests"))));
  }

  @Test
  void aMappingNamesColumnsGivesUnitsAndFixedValues() {
    String mapping =
        """
        match: label
        columns:
          - {column: "Cable No.", key: label}
          - {column: Panel, key: home.panel}
          - {column: Taped, key: length, unit: m}
        fixed: [{key: length_by, value: tape}]
        ignore: [Sheet]
        decimal_comma: yes
        """;
    String csv = "Cable No.;Panel;Taped;Sheet\nK-01;P1;35,9;3\n";
    Request request =
        new Request(
            "runs",
            Optional.of(source("map.yaml", mapping)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    String after = text(merge(HOUSE, csv, request));

    assertTrue(after.contains("length: 35.9 m\n"), after);
    assertTrue(after.contains("from: {head: rack, finish: terminated, panel: P1}\n"), after);
    assertTrue(after.contains("    length_by: tape\n"), after);
  }

  @Test
  void theUnitOfAColumnMayStandInItsHeader() {
    assertTrue(text(merge(HOUSE, "ID,Length (m)\nr-1,40\n", request("runs"))).contains(": 40 m\n"));
  }

  @Test
  void aBadCellIsFoundAtItsLineAndColumn() {
    Result result = merge(HOUSE, "id,note,length\nr-1,\"a\nb\",long\nr-2,c,40\n", request("runs"));

    assertEquals(Optional.empty(), result.merged());
    assertEquals(
        List.of("runs.csv:3:4 not-a-quantity", "runs.csv:4:7 unit-missing"),
        result.findings().stream().map(f -> f.position() + " " + f.name()).toList());
  }

  @Test
  void whatIsWrongWithTheWholeIsTracedBackToTheCell() {
    Result result = merge(HOUSE, "id,to.place\nr-1,attic\n", request("runs"));
    ScheduleImport.Merged merged = result.merged().orElseThrow();
    Finding unknown =
        Jobs.read(new String(merged.bytes(), StandardCharsets.UTF_8)).findings().stream()
            .filter(f -> f.found().equals(Optional.of("attic")))
            .findFirst()
            .orElseThrow();

    assertEquals("runs.csv:2:5", merged.cause().apply(unknown.position()).toString());
  }

  @Test
  void aColumnWithoutAKeyAndTwoRowsOfOneThingAreRefused() {
    assertEquals(
        List.of("unknown-column"), names(merge(HOUSE, "id,lenght\nr-1,4 m\n", request("runs"))));
    assertEquals(
        List.of("duplicate-row"), names(merge(HOUSE, "id,note\nr-1,a\nr-1,b\n", request("runs"))));
    assertEquals(List.of("unknown-list"), names(merge(HOUSE, "id\nr-1\n", request("run"))));
  }

  @Test
  void aValueSharedThroughAnAliasIsNotChanged() {
    String house =
        HOUSE.replace("from: {head: rack, finish: capped}", "from: &e {head: rack, finish: capped}")
            + "zones: [*e]\n";

    assertEquals(
        List.of("shared-value"),
        names(merge(house, "id,from.finish\nr-2,coiled\n", request("runs"))));
  }

  @Test
  void semicolonsTabsAndWesternBytesAreRecognised() {
    for (String delimiter : List.of(";", "\t", "|")) {
      String csv = "id" + delimiter + "note\nr-1" + delimiter + "café\n";
      Result result =
          ScheduleImport.merge(
              source("job.yaml", HOUSE),
              new SourceFile("runs.csv", csv.getBytes(Charset.forName("windows-1252"))),
              request("runs"));
      assertTrue(text(result).contains("note: café\n"), text(result));
    }
  }

  @Test
  void lineEndsOfTheRecordAreKept() {
    String after = text(merge(HOUSE.replace("\n", "\r\n"), "id,note\nr-1,x\n", request("runs")));

    assertEquals(0, after.replace("\r\n", "").chars().filter(c -> c == '\n').count());
  }

  private static List<String> names(Result result) {
    return result.findings().stream().map(Finding::name).toList();
  }

  private static String comments(String yaml) {
    return yaml.lines().filter(l -> l.strip().startsWith("#")).collect(Collectors.joining("\n"));
  }

  private static Request request(String list) {
    return new Request(
        list, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  private static Result merge(String yaml, String csv, Request request) {
    return ScheduleImport.merge(source("job.yaml", yaml), source("runs.csv", csv), request);
  }

  private static SourceFile source(String name, String text) {
    return new SourceFile(name, text.getBytes(StandardCharsets.UTF_8));
  }

  private static String text(Result result) {
    return new String(
        result.merged().orElseThrow(() -> new AssertionError(result.findings().toString())).bytes(),
        StandardCharsets.UTF_8);
  }
}
