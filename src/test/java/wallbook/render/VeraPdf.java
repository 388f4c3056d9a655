package wallbook.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.stream.Collectors;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Judges PDFs by veraPDF, the reference validator of PDF/A and of the machine checks of PDF/UA. */
public final class VeraPdf {
  private VeraPdf() {}

  /** Fails, with the rules broken and where, unless the file is PDF/UA-1 and PDF/A-3a. */
  public static void assertAccessibleArchive(byte[] pdf) {
    assertCompliant(pdf, List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_3_A));
  }

  /** Fails, with the rules broken and where, unless the file keeps the flavour. */
  public static void assertCompliant(byte[] pdf, PDFAFlavour flavour) {
    assertCompliant(pdf, List.of(flavour));
  }

  private static void assertCompliant(byte[] pdf, List<PDFAFlavour> flavours) {
    VeraGreenfieldFoundryProvider.initialise();
    List<ValidationResult> results;
    try (PDFAParser parser =
            Foundries.defaultInstance()
                .createParser(new ByteArrayInputStream(pdf), flavours.get(0));
        PDFAValidator validator =
            Foundries.defaultInstance().createValidator(flavours, 10, false, false, false)) {
      parser.setFlavours(flavours);
      results = validator.validateAll(parser);
    } catch (Exception e) {
      throw new AssertionError("veraPDF could not judge the file as " + flavours, e);
    }
    assertEquals(
        flavours, results.stream().map(result -> result.getPDFAFlavour()).toList(), "judged");
    results.forEach(VeraPdf::assertKept);
  }

  private static void assertKept(ValidationResult result) {
    assertTrue(
        result.isCompliant(),
        () ->
            result.getPDFAFlavour()
                + " is not kept:\n"
                + result.getTestAssertions().stream()
                    .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                    .map(VeraPdf::line)
                    .collect(Collectors.joining("\n")));
  }

  private static String line(TestAssertion failed) {
    return "  %s clause %s test %d: %s at %s"
        .formatted(
            failed.getRuleId().getSpecification().getId(),
            failed.getRuleId().getClause(),
            failed.getRuleId().getTestNumber(),
            failed.getMessage(),
            failed.getLocation().getContext());
  }
}
