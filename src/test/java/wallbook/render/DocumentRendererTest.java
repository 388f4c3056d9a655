package wallbook.render;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionURI;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DocumentRendererTest {
  private static final String NO_MODEL = "";

  @TempDir private Path folder;

  private RenderedDocument manual() throws TemplateProblem {
    return documents().render(ManualSample.TEMPLATE, ManualSample.view(3, 40));
  }

  private Documents documents() {
    return new Documents(folder).with(ManualSample.PLAN);
  }

  private PdfParts parts(String template) throws TemplateProblem {
    return new PdfParts(documents().render(template, NO_MODEL).pdf());
  }

  @Test
  void aManualIsAnAccessibleArchive() throws TemplateProblem {
    Attachment record =
        new Attachment(
            "job.yaml",
            "application/yaml",
            "The record",
            Attachment.Relationship.SOURCE,
            "job: {}\n".getBytes(StandardCharsets.UTF_8));
    VeraPdf.assertAccessibleArchive(
        documents().render(ManualSample.TEMPLATE, ManualSample.view(3, 40), record).pdf());
  }

  @Test
  void theSameInputGivesTheSameBytes() throws TemplateProblem {
    assertArrayEquals(manual().pdf(), manual().pdf());
  }

  @Test
  void severalThreadsMayShareARenderer() throws Exception {
    Documents documents = documents().file("test.md", ManualSample.TEMPLATE);
    DocumentRenderer renderer =
        new DocumentRenderer(documents.source(), documents.wording(), ManualSample.PLAN);
    DocumentRequest request =
        new DocumentRequest(
            "test.pdf", "test.md", ManualSample.view(2, 10), Documents.FACTS, List.of());
    Callable<byte[]> render = () -> renderer.render(request).pdf();
    byte[] alone = render.call();
    ExecutorService threads = Executors.newFixedThreadPool(3);
    try {
      for (Future<byte[]> made : threads.invokeAll(List.of(render, render, render, render))) {
        assertArrayEquals(alone, made.get());
      }
    } finally {
      threads.shutdownNow();
    }
  }

  @Test
  void everyPageIsFilledNumberedAndInsideItsMargins() throws TemplateProblem {
    PdfPages pages = PdfPages.of(manual().pdf());
    pages.assertNoneBlank();
    pages.assertInkInsideMargins();
    pages.assertNumbered();
  }

  @ParameterizedTest
  @ValueSource(strings = {"A4", "LETTER"})
  void bothPapersAreFollowedInBothDirections(String paper) throws Exception {
    DocumentFacts facts = Documents.onPaper(PaperSize.valueOf(paper));
    double[] shortAndLongMm =
        paper.equals("A4") ? new double[] {210, 297} : new double[] {215.9, 279.4};
    for (String direction : List.of("portrait", "landscape")) {
      byte[] pdf =
          documents().render("---\npage: " + direction + "\n---\n\ntext", NO_MODEL, facts).pdf();
      try (PdfParts parts = new PdfParts(pdf)) {
        var box = parts.document().getPage(0).getMediaBox();
        boolean wide = direction.equals("landscape");
        assertEquals(shortAndLongMm[wide ? 1 : 0], box.getWidth() / 72 * 25.4, 0.1);
        assertEquals(shortAndLongMm[wide ? 0 : 1], box.getHeight() / 72 * 25.4, 0.1);
      }
      PdfPages.of(pdf).assertInkInsideMargins();
    }
  }

  @Test
  void theContentsGiveThePageOfEachHeading() throws TemplateProblem {
    PdfPages pages = PdfPages.of(manual().pdf());
    Pattern entry = Pattern.compile("(?m)^(.+?)(?: *\\.){3,} *(\\d+)\\s*$");
    Matcher entries = entry.matcher(pages.text(1));
    int found = 0;
    while (entries.find()) {
      found++;
      String heading = entries.group(1).strip();
      String page = pages.text(Integer.parseInt(entries.group(2)));
      assertTrue(page.lines().anyMatch(line -> line.strip().equals(heading)), heading);
    }
    assertEquals(6, found);
  }

  @Test
  void bookmarksFollowTheHeadings() throws Exception {
    byte[] pdf = manual().pdf();
    PdfPages pages = PdfPages.of(pdf);
    try (PdfParts parts = new PdfParts(pdf)) {
      Map<String, Integer> bookmarks = parts.bookmarks();
      assertEquals(
          List.of("Read this first", "Rooms", "  Room 1", "  Room 2", "  Room 3", "Sign-off"),
          List.copyOf(bookmarks.keySet()));
      for (Map.Entry<String, Integer> bookmark : bookmarks.entrySet()) {
        String heading = bookmark.getKey().strip();
        assertTrue(
            pages.text(bookmark.getValue()).lines().anyMatch(line -> line.strip().equals(heading)),
            heading);
      }
    }
  }

  @Test
  void everyLinkSaysWhereItLeads() throws Exception {
    try (PdfParts parts =
        parts("[the end](#end) and [a page](https://example.org/x)\n\n# The end {#end}\n")) {
      List<PDAnnotationLink> links = parts.links();
      assertEquals(
          List.of("the end", "a page"), links.stream().map(PDAnnotationLink::getContents).toList());
      assertEquals("https://example.org/x", ((PDActionURI) links.get(1).getAction()).getURI());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<a href=\"javascript:alert\">x</a>",
        "[x](file:///etc/passwd)",
        "[x](#nowhere)",
        "<script>x</script>",
        "<p onclick=\"x\">x</p>",
        "<img src=\"https://example.org/x.png\" alt=\"x\">",
        "![x](https://example.org/x.png)",
        "<link rel=\"stylesheet\" href=\"https://example.org/x.css\">",
        "<style>p { color: red }</style>",
        "<div><p>not closed",
        "<p>crossed <b>tags</p></b>",
        "<p id=\"a\">twice</p>\n\n<p id=\"a\">the same</p>",
        "---\ntitel: misspelt\n---\n\nx",
        "---\npage: sideways\n---\n\nx"
      })
  void whatCantBePrintedIsAProblemOfTheTemplate(String template) {
    TemplateProblem problem =
        assertThrows(TemplateProblem.class, () -> documents().render(template, NO_MODEL));
    assertEquals("test.md", problem.file());
  }

  @Test
  void aMistakeInTheStylesheetIsAProblemOfTheStylesheet() {
    Documents documents =
        documents().file("theme/print.css", "p { margin: 0 }\nli {\n  colour: red;\n}\n");
    TemplateProblem problem =
        assertThrows(TemplateProblem.class, () -> documents.render("x", NO_MODEL));
    assertEquals("theme/print.css", problem.file());
    assertEquals("the property 'colour' is not known here", problem.problem());
    assertEquals(3, problem.line());
    assertEquals(3, problem.column());
  }

  @Test
  void onlyTheDocumentsOwnFontIsUsedAndItIsEmbedded() throws Exception {
    try (PdfParts parts = new PdfParts(manual().pdf())) {
      Set<String> families =
          parts.embeddedFonts().stream()
              .map(name -> name.replaceFirst("^[A-Z]{6}\\+", ""))
              .collect(Collectors.toSet());
      assertEquals(Set.of("NotoSans-Regular", "NotoSans-Bold", "NotoSans-Italic"), families);
    }
  }

  @Test
  void copiedTextKeepsItsLettersAndSigns() throws TemplateProblem {
    String text = "office fjord final affluent ≤ ≥ − → ✓ ☐ ½ Ω µ ² Ünïçødé Ψ Ж";
    PdfPages pages = PdfPages.of(documents().render(text, NO_MODEL).pdf());
    assertTrue(pages.text(1).contains(text), pages.text(1));
  }

  @Test
  void hostileTextIsPrintedAsItStands() throws TemplateProblem {
    record View(List<String> texts) {}
    List<String> texts =
        List.of(
            "**b** | c",
            "<b>&amp;</b>",
            "{.x} [y](z)",
            "</td></tr></table>",
            "# 1. - + `c`",
            "</style><script>",
            "${view} <#if x>",
            "--- R01-02-03 ---");
    String template =
        "# ${view.texts?join(' ')}\n\n| A |\n| --- |\n"
            + "<#list view.texts as text>\n| ${text} |\n</#list>\n";
    PdfPages pages = PdfPages.of(documents().render(template, new View(texts)).pdf());
    List<String> lines = pages.text(1).lines().map(String::strip).toList();
    assertTrue(lines.containsAll(texts), pages.text(1));
    String joined = String.join(" ", texts);
    assertTrue(pages.text(1).replaceAll("\\s+", " ").contains(joined), pages.text(1));
  }

  @Test
  void whatTheFontLacksIsShownAndReported() throws TemplateProblem {
    RenderedDocument document = documents().render("a 漢 b \uD83D\uDD0C", NO_MODEL);
    assertEquals(Set.of(0x6F22, 0x1F50C), document.unprintable());
    assertTrue(PdfPages.of(document.pdf()).text(1).contains("a \uFFFD b \uFFFD"));
    VeraPdf.assertAccessibleArchive(document.pdf());
  }

  @Test
  void aWordWiderThanItsColumnIsBroken() throws TemplateProblem {
    String template = "| Head | Next |\n| --- | --- |\n| " + "W".repeat(200) + " | x |\n";
    PdfPages pages = PdfPages.of(documents().render(template, NO_MODEL).pdf());
    pages.assertInkInsideMargins();
    long drawn = pages.text(1).chars().filter(c -> c == 'W').count();
    assertEquals(200, drawn);
  }

  @Test
  void aTableThatGoesOverPagesRepeatsItsHeadAndSplitsNoRow() throws TemplateProblem {
    StringBuilder template = new StringBuilder("| Label | Text |\n| --- | --- |\n");
    for (int i = 1; i <= 60; i++) {
      String words = "first%d %slast%d".formatted(i, "word ".repeat(40), i);
      template.append("| L%d | %s |\n".formatted(i, words));
    }
    PdfPages pages = PdfPages.of(documents().render(template.toString(), NO_MODEL).pdf());
    assertTrue(pages.count() > 2);
    for (int page = 1; page <= pages.count(); page++) {
      assertTrue(pages.text(page).contains("Label Text"), "head on page " + page);
    }
    for (int i = 1; i <= 60; i++) {
      assertEquals(
          pages.pageWith("first" + i + " "), pages.pageWith("last" + i + "\n"), "row " + i);
    }
  }

  @Test
  void aHeadingAndItsLeadStayWithTheTable() throws TemplateProblem {
    Set<Integer> pagesOfHeading = new HashSet<>();
    for (int lines = 22; lines < 33; lines++) {
      String template =
          "text\n\n".repeat(lines)
              + "## Heading\n\nLead\n\n| Head |\n| --- |\n| first |\n| next |\n";
      PdfPages pages = PdfPages.of(documents().render(template, NO_MODEL).pdf());
      assertEquals(pages.pageWith("first"), pages.pageWith("Heading"), lines + " lines before");
      assertEquals(pages.pageWith("first"), pages.pageWith("Lead"), lines + " lines before");
      pagesOfHeading.add(pages.pageWith("Heading"));
    }
    assertEquals(Set.of(1, 2), pagesOfHeading, "the page break was tried");
  }

  @Test
  void tagsTellHeadingsTablesListsAndFigures() throws Exception {
    try (PdfParts parts = new PdfParts(manual().pdf())) {
      assertEquals(3, parts.tagged("H1").size());
      assertEquals(3, parts.tagged("H2").size());
      List<COSDictionary> tables = parts.tagged("Table");
      assertEquals(3, tables.size());
      assertEquals(
          List.of("THead", "TBody"),
          PdfParts.childTypes(tables.get(0)).stream().distinct().toList());
      assertEquals(3 * 5, parts.tagged("TH").size());
      assertEquals(3 * 40 * 5, parts.tagged("TD").size());
      for (COSDictionary head : parts.tagged("TH")) {
        assertEquals("Column", head.getCOSDictionary(COSName.A).getNameAsString("Scope"));
      }
      assertFalse(parts.tagged("L").isEmpty());
      COSDictionary figure = parts.tagged("Figure").get(0);
      assertEquals(
          "Plan of the ground floor: three rooms side by side", figure.getString(COSName.ALT));
      for (COSDictionary tag : parts.tagged("Link")) {
        assertFalse(PdfParts.childTypes(tag).contains("Link"), "a link in a link");
      }
    }
  }

  @Test
  void titleLanguageDescriptionAndDatesAreInTheFile() throws Exception {
    try (PdfParts parts = new PdfParts(manual().pdf())) {
      var information = parts.document().getDocumentInformation();
      var catalog = parts.document().getDocumentCatalog();
      Instant noon = Instant.parse("2026-03-14T12:00:00Z");
      assertEquals("Owner’s manual", information.getTitle());
      assertTrue(information.getSubject().startsWith("Where every cable runs"));
      assertEquals(noon, information.getCreationDate().toInstant());
      assertEquals(noon, information.getModificationDate().toInstant());
      assertEquals("en-US", catalog.getLanguage());
      String xmp = new String(catalog.getMetadata().toByteArray(), StandardCharsets.UTF_8);
      assertTrue(xmp.contains("<xmp:CreateDate>2026-03-14T12:00:00Z<"), xmp);
      assertTrue(xmp.contains("<xmp:ModifyDate>2026-03-14T12:00:00Z<"), xmp);
    }
  }

  @Test
  void attachedFilesReadBackAsTheyWere() throws Exception {
    byte[] record = "job: {title: Ünï}\n".getBytes(StandardCharsets.UTF_8);
    byte[] data = {0, 1, 2, -1};
    byte[] pdf =
        documents()
            .render(
                "text",
                NO_MODEL,
                new Attachment(
                    "job.yaml",
                    "application/yaml",
                    "The record",
                    Attachment.Relationship.SOURCE,
                    record),
                new Attachment(
                    "runs.csv", "text/csv", "All runs", Attachment.Relationship.DATA, data))
            .pdf();
    try (PdfParts parts = new PdfParts(pdf)) {
      var catalog = parts.document().getDocumentCatalog();
      Map<String, PDComplexFileSpecification> files =
          catalog.getNames().getEmbeddedFiles().getNames();
      assertArrayEquals(record, files.get("job.yaml").getEmbeddedFile().toByteArray());
      assertArrayEquals(data, files.get("runs.csv").getEmbeddedFile().toByteArray());
      COSArray associated = catalog.getCOSObject().getCOSArray(COSName.getPDFName("AF"));
      assertEquals(2, associated.size());
      assertEquals(
          "Source", ((COSDictionary) associated.getObject(0)).getNameAsString("AFRelationship"));
    }
  }

  @Test
  void aDrawingIsPrintedTrueToScale() throws TemplateProblem {
    String svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"120.5mm\" height=\"80.25mm\""
            + " viewBox=\"0 0 1205 802.5\"><rect x=\"100\" y=\"100\" width=\"1000\" height=\"500\""
            + " fill=\"#000000\"/></svg>";
    Figure square = new Figure.Drawing(() -> svg, "A black square", painting(120.5, 80.25));
    PdfPages pages =
        PdfPages.of(
            new Documents(folder)
                .render(
                    "---\ncover: none\n---\n\n<div class=\"figure\">${figure(view)}</div>", square)
                .pdf());
    PdfPages.Box ink = pages.ink(1);
    assertEquals(100, ink.width(), 0.6);
    assertEquals(50, ink.height(), 0.6);
    assertEquals(15 + 10, ink.left(), 0.6);
  }

  /** A black rectangle of 100 mm by 50 mm, 10 mm from the upper left corner. */
  private static Painting painting(double widthMm, double heightMm) {
    return new Painting() {
      @Override
      public double widthMm() {
        return widthMm;
      }

      @Override
      public double heightMm() {
        return heightMm;
      }

      @Override
      public void paintWith(Brush brush) {
        brush.ink(0, Brush.NONE, 0);
        brush.path(true, 10, 10, 110, 10, 110, 60, 10, 60);
      }
    };
  }

  @Test
  void aPhotographIsTaggedWithItsText() throws Exception {
    Figure photograph = new Figure.Photograph(TestPictures.jpeg(40, 30), "The rack");
    byte[] pdf =
        new Documents(folder)
            .render("<@block.figure view>\nThe rack, door open\n</@block.figure>", photograph)
            .pdf();
    try (PdfParts parts = new PdfParts(pdf)) {
      assertEquals("The rack", parts.tagged("Figure").get(0).getString(COSName.ALT));
    }
    VeraPdf.assertAccessibleArchive(pdf);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script/>",
        "<style>x</style>",
        "<foreignObject/>",
        "<image href=\"https://example.org/x.png\"/>",
        "<image xlink:href=\"file:///etc/passwd\"/>",
        "<rect onload=\"x\"/>",
        "<a href=\"#x\"/>"
      })
  void aDrawingThatActsOrLoadsIsRefused(String inside) {
    String svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 1 1\">" + inside + "</svg>";
    Figure figure = new Figure.Drawing(() -> svg, "x", painting(1, 1));
    assertThrows(
        TemplateProblem.class, () -> new Documents(folder).html("${figure(view)}", figure));
  }

  @Test
  void whatNobodyCanDrawIsAProblemWithItsPlace() {
    record Sketch(int size) {}
    record View(Sketch sketch) {}
    Documents documents = new Documents(folder).with(drawing -> Optional.empty());
    TemplateProblem problem =
        assertThrows(
            TemplateProblem.class,
            () -> documents.render("\n${figure(view.sketch)}", new View(new Sketch(1))));
    assertEquals(2, problem.line());
    assertEquals("a Sketch is nothing that can be drawn", problem.problem());
  }
}
