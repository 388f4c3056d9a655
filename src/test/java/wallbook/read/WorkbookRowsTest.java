package wallbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.finding.Finding;
import wallbook.finding.Findings;

/** Workbooks written out part by part as ECMA-376 (5th edition, part 1) has them. */
class WorkbookRowsTest {
  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006";

  private static final String WORKSHEET =
      "<worksheet xmlns='" + MAIN + "'><sheetData>%s</sheetData></worksheet>";

  /** Cell formats: 0 general, 1 built-in 14 (a date), 2 one decimal, 3 a unit, 4 a written date. */
  private static final String STYLES =
      "<styleSheet xmlns='"
          + MAIN
          + "'><numFmts count='3'>"
          + "<numFmt numFmtId='164' formatCode='0.0'/>"
          + "<numFmt numFmtId='165' formatCode='0.0&quot; ft&quot;'/>"
          + "<numFmt numFmtId='166' formatCode='[$-409]d\\-mmm\\-yyyy;@'/>"
          + "</numFmts><cellXfs count='5'><xf numFmtId='0'/><xf numFmtId='14'/>"
          + "<xf numFmtId='164'/><xf numFmtId='165'/><xf numFmtId='166'/></cellXfs></styleSheet>";

  private final Findings findings = new Findings();

  private static byte[] workbook(Map<String, String> sheets) throws IOException {
    StringBuilder types = new StringBuilder();
    StringBuilder names = new StringBuilder();
    StringBuilder links = new StringBuilder();
    Map<String, String> parts = new LinkedHashMap<>();
    int number = 0;
    for (Map.Entry<String, String> sheet : sheets.entrySet()) {
      number++;
      types.append(
          ("<Override PartName='/xl/worksheets/sheet%d.xml' ContentType='application/"
                  + "vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml'/>")
              .formatted(number));
      names.append(
          "<sheet name='%s' sheetId='%d' r:id='rId%d'/>".formatted(sheet.getKey(), number, number));
      links.append(
          "<Relationship Id='rId%d' Type='%s/worksheet' Target='worksheets/sheet%d.xml'/>"
              .formatted(number, RELATIONS, number));
      parts.put(
          "xl/worksheets/sheet" + number + ".xml",
          sheet.getValue().startsWith("<!DOCTYPE")
              ? sheet.getValue()
              : WORKSHEET.formatted(sheet.getValue()));
    }
    parts.put(
        "[Content_Types].xml",
        "<Types xmlns='"
            + PACKAGE
            + "/content-types'><Default Extension='rels' ContentType='application/"
            + "vnd.openxmlformats-package.relationships+xml'/><Override PartName='/xl/workbook.xml'"
            + " ContentType='application/vnd.openxmlformats-officedocument.spreadsheetml.sheet."
            + "main+xml'/><Override PartName='/xl/styles.xml' ContentType='application/"
            + "vnd.openxmlformats-officedocument.spreadsheetml.styles+xml'/>"
            + types
            + "</Types>");
    parts.put(
        "_rels/.rels",
        "<Relationships xmlns='"
            + PACKAGE
            + "/relationships'><Relationship Id='rId1' Type='"
            + RELATIONS
            + "/officeDocument' Target='xl/workbook.xml'/></Relationships>");
    parts.put(
        "xl/_rels/workbook.xml.rels",
        "<Relationships xmlns='"
            + PACKAGE
            + "/relationships'>"
            + links
            + "<Relationship Id='rId99' Type='"
            + RELATIONS
            + "/styles' Target='styles.xml'/></Relationships>");
    parts.put("xl/styles.xml", STYLES);
    parts.put(
        "xl/workbook.xml",
        "<workbook xmlns='"
            + MAIN
            + "' xmlns:r='"
            + RELATIONS
            + "'><sheets>"
            + names
            + "</sheets></workbook>");
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, String> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    }
    return out.toByteArray();
  }

  private static String text(String at, String text) {
    return "<c r='" + at + "' t='inlineStr'><is><t>" + text + "</t></is></c>";
  }

  private static byte[] oneCell(String cell) throws IOException {
    return workbook(Map.of("Runs", "<row r='1'>" + cell + "</row>"));
  }

  private List<List<String>> rows(byte[] workbook, Optional<String> sheet) {
    return new WorkbookRows("runs.xlsx", findings)
        .read(workbook, sheet).orElse(List.of()).stream()
            .map(row -> row.stream().map(CsvText.Cell::text).toList())
            .toList();
  }

  private List<String> names() {
    return findings.inReportOrder().stream().map(Finding::name).toList();
  }

  /** Serial 46156 is 2026-05-14: 46,156 days after 1899-12-30, by the calendar. */
  @ParameterizedTest
  @CsvSource({
    "<c r='A1'><v>35.900000000000006</v></c>, 35.9",
    "<c r='A1'><v>120</v></c>, 120",
    "<c r='A1' s='1'><v>46156</v></c>, 2026-05-14",
    "<c r='A1' s='4'><v>46156.75</v></c>, 2026-05-14",
    "<c r='A1' s='2'><v>35.94</v></c>, 35.9",
    "<c r='A1' s='3'><v>118</v></c>, 118.0 ft",
    "<c r='A1' t='b'><v>1</v></c>, yes",
    "<c r='A1' t='str'><f>A2&amp;A3</f><v>K-01</v></c>, K-01",
    "<c r='A1' s='3'><f>A2*2</f><v>236</v></c>, 236.0 ft"
  })
  void aCellCountsAsItIsShown(String cell, String shown) throws IOException {
    assertEquals(List.of(List.of(shown)), rows(oneCell(cell), Optional.empty()));
    assertEquals(List.of(), names());
  }

  @Test
  void emptyRowsArePassedOverAndShortOnesFilledUp() throws IOException {
    String sheet =
        "<row r='2'>"
            + text("A2", "id")
            + text("B2", "label")
            + text("C2", "note")
            + "</row>"
            + "<row r='4'>"
            + text("A4", "r-1")
            + "</row>"
            + "<row r='5'/>";
    byte[] workbook = workbook(Map.of("Runs", sheet));

    assertEquals(
        List.of(List.of("id", "label", "note"), List.of("r-1", "", "")),
        rows(workbook, Optional.empty()));
  }

  @Test
  void aCellIsFoundBySheetRowAndColumn() throws IOException {
    String sheet = "<row r='3'>" + text("A3", "id") + text("C3", "note") + "</row>";
    List<List<CsvText.Cell>> rows =
        new WorkbookRows("runs.xlsx", findings)
            .read(workbook(Map.of("As built", sheet)), Optional.of("As built"))
            .orElseThrow();

    assertEquals("runs.xlsx[As built]:3:3", rows.get(0).get(2).at().toString());
  }

  @Test
  void aSheetThatIsNotThereIsNamedWithTheNearest() throws IOException {
    rows(oneCell(text("A1", "id")), Optional.of("Rums"));

    Finding finding = findings.inReportOrder().get(0);
    assertEquals("unknown-sheet", finding.name());
    assertEquals(Optional.of("Runs"), finding.nearest());
  }

  @Test
  void aFormulaThatWentWrongIsAnError() throws IOException {
    rows(oneCell("<c r='A1' t='e'><f>1/0</f><v>#DIV/0!</v></c>"), Optional.empty());

    assertEquals(List.of("cell-with-mistake"), names());
  }

  @Test
  void aWorkbookThatUnpacksToTooMuchIsRefused() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
      byte[] blanks = new byte[1 << 20];
      for (int i = 0; i <= WorkbookRows.MOST_BYTES >> 20; i++) {
        zip.write(blanks);
      }
    }
    assertTrue(out.size() < 1 << 20, "it is small when packed");
    rows(out.toByteArray(), Optional.empty());

    assertEquals(List.of("workbook-too-large"), names());
  }

  @Test
  void aCellFarToTheRightIsRefused() throws IOException {
    rows(oneCell(text("XFD1", "far")), Optional.empty());

    assertEquals(List.of("workbook-too-large"), names());
  }

  @Test
  void aDamagedWorkbookIsAFinding() throws IOException {
    byte[] whole = oneCell(text("A1", "id"));
    rows(Arrays.copyOf(whole, whole.length / 2), Optional.empty());

    assertEquals(List.of("file-unreadable"), names());
  }

  @Test
  void anotherFileIsNotPutIntoACellByAnEntity(@TempDir Path folder) throws IOException {
    Path other = Files.writeString(folder.resolve("other.txt"), "secret");
    String sheet =
        "<!DOCTYPE w [<!ENTITY other SYSTEM '"
            + other.toUri()
            + "'>]>"
            + WORKSHEET.formatted("<row r='1'>" + text("A1", "&other;") + "</row>");

    List<List<String>> rows = rows(workbook(Map.of("Runs", sheet)), Optional.empty());
    assertTrue(rows.stream().flatMap(List::stream).noneMatch(c -> c.contains("secret")));
  }

  @Test
  void aSheetGoesIntoTheRecordLikeASchedule() throws IOException {
    String record =
        """
        format: 1
        job: {id: small, title: Small job, revision: 1, invented: yes}
        runs:
          - {id: r-1, label: K-01, cable: cat6, from: {head: rack, finish: capped}, to: {place: tv, finish: capped}, length: 100 ft, condition: dark}
        """;
    String sheet =
        "<row r='1'>"
            + text("A1", "id")
            + text("B1", "length")
            + "</row><row r='2'>"
            + text("A2", "r-1")
            + "<c r='B2' s='3'><v>118</v></c></row>";
    ScheduleImport.Result result =
        ScheduleImport.merge(
            new ScheduleImport.SourceFile("job.yaml", record.getBytes(StandardCharsets.UTF_8)),
            new ScheduleImport.SourceFile("runs.xlsx", workbook(Map.of("Runs", sheet))),
            new ScheduleImport.Request(
                "runs", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));

    String merged = new String(result.merged().orElseThrow().bytes(), StandardCharsets.UTF_8);
    assertTrue(merged.contains("length: 118.0 ft"), merged);
  }
}
