package wallbook.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.picture.Colour;
import wallbook.picture.PictureReader;

/** A house of integrators gives its documents a colour, a logo, its name and a foot. */
class HouseStyleTest {
  /** Least contrast of text, WCAG 2.2, success criterion 1.4.3. */
  private static final double LEAST_CONTRAST = 4.5;

  private static final Colour WINE = Colour.parse("#7a1f1f").orElseThrow();

  @TempDir private Path folder;

  private byte[] document(HouseStyle style) throws TemplateProblem {
    String template =
        """
        ---
        title: Manual
        ---

        # Rooms

        | Label | Room |
        | --- | --- |
        | K-01 | Kitchen |
        """;
    Documents documents = new Documents(folder).file("test.md", template);
    DocumentRequest request =
        new DocumentRequest("test.pdf", "test.md", "", Documents.FACTS, List.of());
    return new DocumentRenderer(documents.source(), documents.wording(), FigureRenderer.NONE, style)
        .render(request)
        .pdf();
  }

  private HouseStyle house() throws Exception {
    Path logo = Files.write(folder.resolve("logo.jpg"), TestPictures.jpeg(90, 30));
    return new HouseStyle(
        Optional.of(HouseStyle.Accent.of(WINE, LEAST_CONTRAST)),
        Optional.of(PictureReader.read(logo)),
        Optional.of("Wall and Wire"),
        Optional.of("Call us before you drill"));
  }

  private static boolean hasInk(byte[] pdf, Colour colour) throws IOException {
    int wanted = colour.red() << 16 | colour.green() << 8 | colour.blue();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 100);
      for (int y = 0; y < page.getHeight(); y++) {
        for (int x = 0; x < page.getWidth(); x++) {
          if ((page.getRGB(x, y) & 0xFFFFFF) == wanted) {
            return true;
          }
        }
      }
    }
    return false;
  }

  @Test
  void itsColourIsThatOfTheInkAndOfNoOtherHouse() throws Exception {
    assertTrue(hasInk(document(house()), WINE));
    assertFalse(hasInk(document(HouseStyle.NONE), WINE));
  }

  @Test
  void itsLogoNameAndFootAreOnTheFirstPage() throws Exception {
    byte[] pdf = document(house());
    String text = PdfPages.of(pdf).text(1);
    assertTrue(text.contains("Wall and Wire"), text);
    assertTrue(text.contains("Call us before you drill"), text);
    try (PdfParts parts = new PdfParts(pdf)) {
      assertEquals(
          List.of("Wall and Wire"),
          parts.tagged("Figure").stream().map(f -> f.getString(COSName.ALT)).toList());
    }
    VeraPdf.assertAccessibleArchive(pdf);
  }

  /** Black on white is 21 : 1 and #767676 on white 4.54 : 1, as examples of WCAG 2.2 have it. */
  @ParameterizedTest
  @ValueSource(strings = {"#000000", "#7a1f1f", "#0f4a5c", "#767676"})
  void textInItsColourKeepsItsContrastInHeadsOfTables(String text) {
    Colour colour = Colour.parse(text).orElseThrow();
    Colour ground = HouseStyle.Accent.of(colour, LEAST_CONTRAST).ground();
    assertTrue(colour.contrast(ground) >= LEAST_CONTRAST, ground.toString());
    assertTrue(ground.equals(colour.tint(0.1)) || colour.contrast(ground) < 5, ground.toString());
  }
}
