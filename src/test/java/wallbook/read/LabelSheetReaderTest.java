package wallbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.AllWords;
import wallbook.finding.Findings;
import wallbook.stock.LabelKind;
import wallbook.stock.LabelSheet;

class LabelSheetReaderTest {
  private static final String COLUMNS =
      "name,purpose,stock,page_width_mm,page_height_mm,columns,rows,left_mm,top_mm,pitch_x_mm,"
          + "pitch_y_mm,label_width_mm,label_height_mm,edge_mm,printed_height_mm,neck_mm,code_mm,"
          + "cells,usual,note\n";
  private static final String SOUND =
      "own,cable_wraps,a4,210,297,3,8,10,15,65,33,60,30,1,12,,,,no,measured\n";

  @TempDir private Path folder;
  private final Findings findings = new Findings();

  private List<LabelSheet> read(String text) throws IOException {
    Path file = folder.resolve("sheets.csv");
    Files.writeString(file, text);
    return new LabelSheetReader(findings).read(file);
  }

  private List<String> found() {
    findings.inReportOrder().forEach(AllWords::sayInEveryLanguage);
    return findings.inReportOrder().stream()
        .map(f -> f.position().line() + " " + f.name() + " " + f.found().orElse(""))
        .toList();
  }

  @Test
  void aRowIsASheetWithOrWithoutAHead() throws IOException {
    List<LabelSheet> sheets = read("# title: Our own\n" + COLUMNS + SOUND);
    assertEquals(List.of(), found());
    assertEquals("own", sheets.get(0).name());
    assertEquals(LabelKind.CABLE_WRAPS, sheets.get(0).purpose());
    assertEquals(24, sheets.get(0).labels());
    assertEquals(12, sheets.get(0).label().printedHeightMm().orElseThrow());
    assertEquals(sheets, read(COLUMNS + SOUND));
  }

  @Test
  void theProgramsOwnTableIsOfThatForm() {
    Path table = Path.of("src/main/resources/wallbook/reference/label-sheets.csv");
    assertTrue(new LabelSheetReader(findings).read(table).size() > 20);
    assertEquals(List.of(), found());
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '~',
      value = {
        "cable_wraps, cable_wrap, unknown-word purpose: cable_wrap",
        "~,a4,~, ~,a5,~, unknown-word stock: a5",
        "210, 210mm, not-a-number page_width_mm: 210mm",
        "~,3,8,~, ~,three,8,~, not-a-whole-number columns: three",
        "~,3,8,~, ~,0,8,~, impossible-value columns: 0",
        "~,8,10,~, ~,8,30,~, labels-off-the-page 220.0 mm x 276.0 mm",
        "~,65,33,~, ~,59,33,~, labels-overlap pitch_x_mm: 59.0 mm",
        "~,65,33,~, ~,65,29,~, labels-overlap pitch_y_mm: 29.0 mm",
        "~,12,,,,no~, ~,12,,5,,no~, label-parts printed_height_mm: 12.0 mm",
        "~,12,,,,no~, ~,,,40,,no~, label-parts code_mm: 40.0 mm",
        "~,12,,,,no~, ~,12,,,6,no~, label-parts cells",
        "~,a4,~, ~,tape,~, ~tape-of-one-label rows: 8, columns: 3~",
        "own, my own, malformed-sheet-name name: my own",
        "~,no,~, ~,maybe,~, unknown-word usual: maybe",
      })
  void aMistakeIsFoundInItsRow(String was, String is, String expected) throws IOException {
    String good = SOUND.replace("own,", "other,");
    String bad = SOUND.replaceFirst(Pattern.quote(was), is);
    List<LabelSheet> sheets = read(COLUMNS + good + bad);
    assertEquals(List.of("3 " + expected), found());
    assertEquals(List.of("other"), sheets.stream().map(LabelSheet::name).toList());
  }

  @Test
  void allMistakesAreFoundAtOnce() throws IOException {
    read(COLUMNS + SOUND + SOUND + "a,b\n" + SOUND.replace("own", "x").replace("297", "tall"));
    assertEquals(
        List.of(
            "3 duplicate-label-sheet own", "4 row-length 2", "5 not-a-number page_height_mm: tall"),
        found());
  }

  @Test
  void aMissingColumnIsNamed() throws IOException {
    assertEquals(List.of(), read(COLUMNS.replace("edge_mm,", "") + SOUND));
    assertEquals("missing-column", findings.inReportOrder().get(0).name());
    assertEquals(
        "edge_mm",
        findings.inReportOrder().get(0).expected().orElseThrow().arguments().get("columns"));
  }

  @Test
  void aFileThatIsNotThereIsSaidSo() {
    new LabelSheetReader(findings).read(folder.resolve("nothing.csv"));
    assertEquals("file-unreadable", findings.inReportOrder().get(0).name());
  }
}
