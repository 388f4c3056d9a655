package wallbook.render.labels;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.AllWords;
import wallbook.Jobs;
import wallbook.compose.labels.CableWrap;
import wallbook.compose.labels.ConduitTag;
import wallbook.compose.labels.Label;
import wallbook.compose.labels.PlateStrip;
import wallbook.finding.Finding;
import wallbook.record.Job;
import wallbook.render.Face;
import wallbook.render.Fonts;
import wallbook.render.PdfPages;
import wallbook.render.PdfParts;
import wallbook.render.VeraPdf;
import wallbook.stock.LabelArea;
import wallbook.stock.LabelSheet;

@Order(5)
class LabelPrinterTest {
  private static final Job FLAT = Jobs.sample("flat");
  private static final Job LAKESIDE = Jobs.sample("lakeside");
  private static final int SCAN_DPI = 300;

  /** The ZXing library reads what is printed; a code that it can't read fails. */
  @ParameterizedTest
  @CsvSource({
    "flat, a4-flag, 24",
    "flat, a4-plate, 6",
    "flat, a4-tag, 2",
    "flat, tape-18-flag, 24",
    "flat, tape-24-plate, 6",
    "lakeside, letter-flag, 28",
    "lakeside, letter-plate, 39",
    "lakeside, letter-tag, 10"
  })
  void everyCodeIsReadFromThePrintedPage(String job, String sheet, int least) throws Exception {
    Printed printed = Printed.of(job.equals("flat") ? FLAT : LAKESIDE, sheet);
    int read = 0;
    // Of the large job one page of each kind; the others are made alike.
    int pages = job.equals("flat") ? printed.pages().size() : 1;
    for (int page = 0; page < pages; page++) {
      BufferedImage picture = printed.picture(page, SCAN_DPI);
      for (SheetPage.Placed placed : printed.pages().get(page).labels()) {
        ScanCode code = placed.face().code().orElseThrow();
        String text = decoded(Printed.cut(picture, code.square(), SCAN_DPI));
        assertEquals(code.text(), text);
        assertTrue(texts(placed.label()).contains(text), text);
        assertTrue(text.startsWith(placed.label().title()), text);
        read++;
      }
    }
    assertTrue(read >= least, read + " codes read");
  }

  private static List<String> texts(Label label) {
    if (label instanceof CableWrap wrap) {
      return wrap.code();
    }
    return label instanceof PlateStrip strip ? strip.code() : ((ConduitTag) label).code();
  }

  private static String decoded(BufferedImage picture) throws ReaderException {
    int width = picture.getWidth();
    int height = picture.getHeight();
    int[] pixels = picture.getRGB(0, 0, width, height, null, 0, width);
    return new QRCodeReader()
        .decode(
            new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, pixels))),
            Map.of(DecodeHintType.TRY_HARDER, true))
        .getText();
  }

  @Test
  void textWithAccentsIsReadAsItIs() throws Exception {
    Printed printed = Printed.of(Jobs.job(house("S-01", "Salón", "Caja única")), "letter-flag");
    ScanCode code = printed.pages().get(0).labels().get(0).face().code().orElseThrow();
    String text = decoded(Printed.cut(printed.picture(0, SCAN_DPI), code.square(), SCAN_DPI));
    assertTrue(text.contains("Salón"), text);
  }

  /** ISO/IEC 18004: a white border of four modules; the least module by the table. */
  @ParameterizedTest
  @ValueSource(strings = {"letter-flag", "letter-plate", "letter-tag", "tape-18-flag"})
  void codesKeepTheirBorderAndTheLeastModule(String sheet) {
    for (SheetPage page : Printed.of(LAKESIDE, sheet).pages()) {
      for (SheetPage.Placed placed : page.labels()) {
        ScanCode code = placed.face().code().orElseThrow();
        assertTrue(code.moduleMm() >= 0.33, code.text());
        assertTrue(code.borderMm() >= 4 * code.moduleMm() - 1e-9, code.text());
        for (TypeLine line : placed.face().lines()) {
          LabelArea square = code.square();
          boolean beside = line.ink().xMm() >= square.rightMm();
          boolean elsewhere = line.ink().rightMm() <= square.xMm();
          assertTrue(beside || elsewhere, line.text() + " lies on the code");
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "letter-flag", "letter-wrap", "letter-wrap-thick", "letter-wrap-thin", "letter-plate",
        "letter-plate-slim", "letter-port-16", "letter-port-14", "letter-port-19", "letter-tag",
        "tape-9-flag", "tape-12-flag", "tape-24-flag", "tape-9-plate", "tape-9-port-16",
        "tape-18-tag"
      })
  void textLiesInsideTheBorderOfItsLabel(String sheet) {
    Printed printed = Printed.of(LAKESIDE, sheet);
    assertTrue(printed.pdf().isPresent(), sheet);
    double edge = printed.sheet().label().edgeMm();
    for (SheetPage page : printed.pages()) {
      for (SheetPage.Placed placed : page.labels()) {
        LabelArea inner = placed.area().inset(edge);
        for (TypeLine line : placed.face().lines()) {
          assertTrue(inner.holds(line.ink()), placed.label().title() + ": " + line);
        }
      }
    }
  }

  /** Nothing dark in the border of any label of a printed page: nothing is cut off or runs over. */
  @ParameterizedTest
  @ValueSource(strings = {"letter-flag", "letter-plate", "letter-port-16", "letter-tag"})
  void bordersOfPrintedLabelsAreWhite(String sheet) {
    int dpi = 150;
    Printed printed = Printed.of(LAKESIDE, sheet);
    BufferedImage picture = printed.picture(0, dpi);
    double border = 0.9 * printed.sheet().label().edgeMm();
    for (SheetPage.Placed placed : printed.pages().get(0).labels()) {
      LabelArea a = placed.area();
      List<LabelArea> sides =
          List.of(
              new LabelArea(a.xMm(), a.yMm(), a.widthMm(), border),
              new LabelArea(a.xMm(), a.bottomMm() - border, a.widthMm(), border),
              new LabelArea(a.xMm(), a.yMm(), border, a.heightMm()),
              new LabelArea(a.rightMm() - border, a.yMm(), border, a.heightMm()));
      for (LabelArea side : sides) {
        assertTrue(Printed.white(Printed.cut(picture, side, dpi)), placed.label().title());
      }
    }
  }

  /** The Java platform's own glyph outlines are the reference for the room that text takes. */
  @Test
  void textTakesTheRoomMeasured() throws Exception {
    try (var in = LabelPrinterTest.class.getResourceAsStream("/wallbook/fonts/NotoSans-Bold.ttf")) {
      Font font = Font.createFont(Font.TRUETYPE_FONT, in).deriveFont(1000f);
      FontRenderContext exact = new FontRenderContext(null, true, true);
      TypeLine line = new Typesetter(new Fonts()).line("ÉJ-07g", Face.BOLD, 20);
      var ink = font.createGlyphVector(exact, "ÉJ-07g").getVisualBounds();
      double mm = 20 * 25.4 / 72 / 1000;
      assertEquals(-ink.getY() * mm, line.ascentMm(), 0.02);
      assertEquals((ink.getY() + ink.getHeight()) * mm, line.descentMm(), 0.02);
      double width = font.getStringBounds("ÉJ-07g", exact).getWidth();
      assertEquals(width * mm, line.widthMm(), 0.02);
    }
  }

  /** Heights of capitals by the table label-legibility; Noto Sans has capitals of 0.714 em. */
  @Test
  void nothingIsSetSmallerThanIsLegible() {
    for (String sheet :
        List.of("letter-flag", "letter-wrap-thin", "letter-port-16", "tape-9-plate")) {
      for (SheetPage page : Printed.of(LAKESIDE, sheet).pages()) {
        for (SheetPage.Placed placed : page.labels()) {
          for (TypeLine line : placed.face().lines()) {
            double capMm = 0.714 * line.pt() * 25.4 / 72;
            assertTrue(capMm >= (line.face() == Face.BOLD ? 1.7 : 1.2), line.toString());
          }
        }
      }
    }
  }

  @Test
  void printingStartsAtAnyPositionOfAUsedSheet() {
    LabelSheet sheet = Printed.sheet("letter-flag");
    List<Label> labels = Printed.labels(FLAT, sheet);
    Printed printed = Printed.of(new LabelOrder(sheet, 27, labels));
    assertEquals(sheet.area(27), printed.pages().get(0).labels().get(0).area());
    assertEquals(2, printed.pages().get(0).labels().size());
    assertEquals(sheet.area(1), printed.pages().get(1).labels().get(0).area());
    BufferedImage picture = printed.picture(0, 72);
    assertTrue(Printed.white(Printed.cut(picture, sheet.area(26), 72)));
    assertThrows(IllegalArgumentException.class, () -> new LabelOrder(sheet, 29, labels));
  }

  @Test
  void aLabelOfTwentyFourCharactersFitsTheUsualSheets() {
    Job job = Jobs.job(house("1A-B24-WEST-WING-0123456", "Great room of the west wing", "Desk"));
    for (String sheet : List.of("letter-flag", "a4-flag", "letter-plate", "letter-port-16")) {
      Printed printed = Printed.of(job, sheet);
      assertEquals(List.of(), printed.findings().inReportOrder(), sheet);
      assertTrue(printed.pdf().isPresent());
    }
  }

  @Test
  void whatCannotBePrintedLegiblyIsRefusedAllAtOnce() {
    String label = "A-VERY-LONG-LABEL-THAT-NOBODY-CAN-READ-IN-A-CLOSET-0123456789";
    Printed printed = Printed.of(Jobs.job(house(label, "Room", "Plate")), "letter-port-16");
    assertTrue(printed.pdf().isEmpty());
    Finding finding = printed.findings().inReportOrder().get(0);
    assertEquals("label-does-not-fit", finding.name());
    assertEquals(label, finding.message().arguments().get("label"));
    assertEquals("letter-port-16", finding.message().arguments().get("sheet"));
    AllWords.sayInEveryLanguage(finding);
    Printed wraps = Printed.of(Jobs.job(house(label.repeat(3), "Room", "Plate")), "tape-9-flag");
    assertEquals(1, wraps.findings().inReportOrder().size());
  }

  @Test
  void aTextTooLongForItsLabelEndsInAnEllipsisAndTheLabelStaysWhole() throws IOException {
    String word = "Westminsterabbeystyledrawingroom";
    Job job = Jobs.job(house("S-01", word + " of the west wing", word + word + " " + word));
    for (String sheet : List.of("letter-flag", "letter-wrap-thin", "tape-9-flag")) {
      Printed printed = Printed.of(job, sheet);
      String text = PdfPages.of(printed.pdf().orElseThrow()).text(sheet.startsWith("tape") ? 3 : 1);
      assertTrue(text.contains("S-01"), text);
      assertTrue(text.contains("\u2026"), text);
    }
  }

  @Test
  void aWrapThatDoesNotSuitACableIsSaidOnceForItsType() {
    Printed printed = Printed.of(LAKESIDE, "letter-wrap-thin");
    List<Finding> findings = printed.findings().inReportOrder();
    assertTrue(findings.stream().allMatch(f -> f.name().equals("wrap-does-not-suit-cable")));
    long types =
        findings.stream().map(f -> f.message().arguments().get("cable")).distinct().count();
    assertEquals(types, findings.size());
    assertTrue(printed.pdf().isPresent());
    findings.forEach(AllWords::sayInEveryLanguage);
  }

  @Test
  void aCharacterThatTheFontLacksIsReplaced() throws IOException {
    Printed wraps = Printed.of(Jobs.job(house("S-01", "Room \u6f22", "Plate")), "letter-flag");
    assertTrue(PdfPages.of(wraps.pdf().orElseThrow()).text(1).contains("\uFFFD"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a4-flag", "a4-port-16", "tape-24-tag"})
  void aFileOfLabelsIsAnAccessibleArchive(String sheet) {
    VeraPdf.assertAccessibleArchive(Printed.of(FLAT, sheet).pdf().orElseThrow());
  }

  @Test
  void everyLabelIsAnItemWithItsTextsAndItsCode() throws IOException {
    Printed printed = Printed.of(FLAT, "a4-flag");
    try (PdfParts parts = new PdfParts(printed.pdf().orElseThrow())) {
      assertEquals(24, parts.tagged("LI").size());
      assertEquals(24, parts.tagged("Figure").size());
      assertEquals(1, parts.tagged("H1").size());
      String alt = parts.tagged("Figure").get(0).getString(COSName.ALT);
      assertTrue(alt.contains("L-01 | "), alt);
    }
  }

  @Test
  void pagesAreOfTheSheetsSizeAndTheBarIsAsLongAsItSays() throws IOException {
    Printed printed = Printed.of(FLAT, "a4-flag");
    try (PdfParts parts = new PdfParts(printed.pdf().orElseThrow())) {
      PDRectangle page = parts.document().getPage(0).getMediaBox();
      assertEquals(PDRectangle.A4.getWidth(), page.getWidth(), 0.1);
      assertEquals(PDRectangle.A4.getHeight(), page.getHeight(), 0.1);
    }
    int dpi = 300;
    BufferedImage picture = printed.picture(0, dpi);
    int longest = 0;
    for (int y = (int) (285 * dpi / 25.4); y < picture.getHeight(); y++) {
      int run = 0;
      for (int x = 0; x < picture.getWidth(); x++) {
        run = (picture.getRGB(x, y) & 0xFF) < 0x80 ? run + 1 : 0;
        longest = Math.max(longest, run);
      }
    }
    assertEquals(100, longest * 25.4 / dpi, 0.5);
  }

  @Test
  void theSameOrderGivesTheSameBytes() {
    LabelSheet sheet = Printed.sheet("a4-plate");
    LabelOrder order = new LabelOrder(sheet, 2, Printed.labels(FLAT, sheet));
    assertArrayEquals(Printed.of(order).pdf().orElseThrow(), Printed.of(order).pdf().orElseThrow());
  }

  @Test
  void jobsThatHaveNothingForAKindHaveNoFile() {
    Printed printed = Printed.of(Jobs.job(house("S-01", "Room", "Plate")), "letter-tag");
    assertTrue(printed.pdf().isEmpty());
  }

  /** One room, one panel, one plate, one cable. */
  private static String house(String label, String room, String plate) {
    return """
        floors:
          - {id: g, name: Ground, level: 0, elevation: 0 m}
        spaces:
          - {id: r, name: "%s", floor: g, kind: living, ceiling_height: 2.5 m,
             outline: [[0 m, 0 m], [0 m, 4 m], [5 m, 4 m], [5 m, 0 m]]}
        heads:
          - {id: h, name: Rack, kind: rack, space: r, wall: A, offset: 1 m, height: 1 m,
             panels: [{id: P1, name: Patch panel, kind: patch_panel, ports: 6}]}
        places:
          - {id: p, name: "%s", space: r, kind: wall_plate, use: data, wall: B, offset: 1 m, height: 300 mm}
        runs:
          - id: a
            label: "%s"
            cable: cat6
            from: {head: h, panel: P1, port: 1, finish: terminated}
            to: {place: p, jack: "1", finish: terminated}
            condition: in_service
        """
        .formatted(room, plate, label);
  }
}
