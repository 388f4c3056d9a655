package wallbook.render;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Assertions;
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
    assertCompliant(pdf, PDFAFlavour.PDFUA_1);
    assertCompliant(pdf, PDFAFlavour.PDFA_3_A);
  }

  /** Fails, with the rules broken and where, unless the file keeps the flavour. */
  public static void assertCompliant(byte[] pdf, PDFAFlavour flavour) {
    VeraGreenfieldFoundryProvider.initialise();
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
        PDFAValidator validator =
            Foundries.defaultInstance().createValidator(flavour, 10, false, false, false)) {
      ValidationResult result = validator.validate(parser);
      List<TestAssertion> failed =
          result.getTestAssertions().stream()
              .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
              .toList();
      Assertions.assertTrue(
          result.isCompliant(),
          () ->
              flavour
                  + " is not kept:\n"
                  + failed.stream().map(VeraPdf::line).collect(Collectors.joining("\n")));
    } catch (Exception e) {
      throw new AssertionError("veraPDF could not judge the file as " + flavour, e);
    }
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
