package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wallbook.AllWords;
import wallbook.Approval;
import wallbook.Jobs;
import wallbook.compose.Describe;
import wallbook.compose.Disclosure;
import wallbook.compose.DocumentPlan;
import wallbook.compose.Documents;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.PlaceUse;
import wallbook.render.PageEnds;
import wallbook.render.PdfPages;
import wallbook.render.VeraPdf;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

/** The packages of the sample jobs, built as a user builds them. */
@Order(2)
class PackageTest {
  /** Texts and pictures of a document, read once for all that is asked of them. */
  private static final Map<Arguments, PdfPages> PAGES = new ConcurrentHashMap<>();

  private static Cli run(String sample) {
    return BuiltSamples.built(sample).run();
  }

  static Stream<Arguments> documents() {
    return Stream.of("lakeside", "flat")
        .flatMap(s -> Documents.all().stream().map(d -> new Arguments(s, d.file())));
  }

  record Arguments(String sample, String file) {}

  @Test
  void theExitCodeTellsCleanFromWarningsFromErrors() {
    assertEquals(ExitCode.WARNINGS, run("lakeside").exitCode());
    assertEquals(ExitCode.CLEAN, run("flat").exitCode());
    assertEquals(ExitCode.ERRORS, run("broken").exitCode());
  }

  @Test
  void aRecordWithErrorsWritesNothing() {
    assertFalse(Files.exists(BuiltSamples.built("broken").into()));
    assertEquals("", run("broken").out());
    assertTrue(run("broken").err().contains("job.yaml:"));
  }

  @Test
  void theOutputSaysWhereThePackageIsAndWhatToOpen() {
    String out = run("lakeside").out();
    assertTrue(out.contains("lakeside-r2"), out);
    assertTrue(out.contains("homeowner-manual.pdf"), out);
  }

  @Test
  void nothingIsPrintedAboutProgressWhenNobodyWatches() {
    assertEquals("", run("lakeside").err());
  }

  @ParameterizedTest
  @MethodSource("documents")
  void everyDocumentIsAnAccessibleArchive(Arguments which) throws IOException {
    VeraPdf.assertAccessibleArchive(pdf(which));
  }

  @ParameterizedTest
  @MethodSource("documents")
  void noPageIsBlankOrRunsOverItsMargins(Arguments which) throws IOException {
    PdfPages pages = pages(which);
    pages.assertNoneBlank();
    pages.assertInkInsideMargins();
    pages.assertNumbered();
  }

  @ParameterizedTest
  @MethodSource("documents")
  void noPageEndsWithAHeadingOrTheHeadOfATable(Arguments which) throws IOException {
    for (String last : PageEnds.of(pdf(which))) {
      assertFalse(last.matches("TH|H[1-6]"), which + " ends a page with " + last);
    }
  }

  @ParameterizedTest
  @MethodSource("documents")
  void everyDocumentOfTheHouseholdCarriesTheWholeRecordAndNoOtherDoes(Arguments which)
      throws IOException {
    byte[] record = Files.readAllBytes(Path.of("sample-jobs", which.sample(), "job.yaml"));
    try (PDDocument document = Loader.loadPDF(pdf(which))) {
      byte[] carried =
          document
              .getDocumentCatalog()
              .getNames()
              .getEmbeddedFiles()
              .getNames()
              .get("job.yaml")
              .getEmbeddedFile()
              .toByteArray();
      assertEquals(plan(which).disclosure().carriesWholeRecord(), Arrays.equals(record, carried));
    }
  }

  @ParameterizedTest
  @MethodSource("documents")
  void everyDocumentSaysOnItsFirstPageWhomItIsForAndWhatFor(Arguments which) throws IOException {
    String words = plan(which).titleKey().replaceFirst("title$", "");
    String first = pages(which).text(1).replaceAll("\\s+", " ");
    for (String part : List.of("title", "reader", "purpose")) {
      String said = AllWords.ENGLISH.get(words + part);
      assertTrue(
          first.toLowerCase(Locale.ROOT).contains(said.toLowerCase(Locale.ROOT)),
          () -> which.file() + " lacks: " + said + "\n" + first);
    }
    assertTrue(first.contains(AllWords.ENGLISH.get("theme.invented")), first);
  }

  @ParameterizedTest
  @MethodSource("documents")
  void theTextOfTheSmallJobsDocumentsIsAsApproved(Arguments which) throws IOException {
    if (which.sample().equals("flat")) {
      PdfPages pages = pages(which);
      StringBuilder text = new StringBuilder();
      for (int page = 1; page <= pages.count(); page++) {
        text.append("--- page ").append(page).append('\n').append(pages.text(page)).append('\n');
      }
      Approval.verify("flat/" + which.file().replace(".pdf", ".txt"), text.toString());
    }
  }

  @Test
  void theOfflinePageIsInThePackageAndTheOutputNamesIt() throws IOException {
    String page = Files.readString(BuiltSamples.folder("lakeside").resolve(OfflinePage.FILE));
    assertTrue(page.contains("id=\"run/KIT-02\""));
    assertFalse(page.contains("Security panel"), "the owner's copy was not asked for");
    assertTrue(run("lakeside").out().contains(OfflinePage.FILE));
  }

  @Test
  void noTradeSheetTellsWhatWatchesTheHouse() throws IOException {
    Job job = Jobs.sample("lakeside");
    Wording wording = new Wording(Locale.US, AllWords.ENGLISH, UnitSystem.FEET_AND_INCHES);
    Set<PlaceUse> watching =
        EnumSet.of(
            PlaceUse.CAMERA,
            PlaceUse.KEYPAD,
            PlaceUse.CONTACT,
            PlaceUse.MOTION_SENSOR,
            PlaceUse.GLASS_BREAK_SENSOR,
            PlaceUse.REPEATER);
    List<String> secrets =
        new ArrayList<>(List.of("camera", "keypad", "sensor", "contact,", "wireless contact"));
    for (Place place : job.places()) {
      if (watching.contains(place.use())) {
        secrets.add(place.name());
        if (place.offset().isPresent() || !place.ties().isEmpty()) {
          secrets.add(
              job.space(place.space()).name() + ", " + new Describe(job, wording).where(place));
        }
        job.runsAt(place).forEach(run -> secrets.add(run.label()));
      }
    }
    for (DocumentPlan plan : Documents.all()) {
      if (plan.file().startsWith("trades/")) {
        String text = plain(text(new Arguments("lakeside", plan.file())));
        for (String secret : secrets) {
          assertFalse(text.contains(plain(secret)), plan.file() + " tells: " + secret);
        }
      }
    }
  }

  private String text(Arguments which) throws IOException {
    PdfPages pages = pages(which);
    StringBuilder text = new StringBuilder();
    for (int page = 1; page <= pages.count(); page++) {
      text.append(pages.text(page));
    }
    return text.toString();
  }

  private static String plain(String text) {
    return text.replaceAll("[\\s\u00a0]+", " ").toLowerCase(Locale.ROOT);
  }

  @Test
  void tradeSheetsAreShortAndTheCardIsOnePage() throws IOException {
    for (DocumentPlan plan : Documents.all()) {
      if (plan.disclosure() == Disclosure.OUTSIDE) {
        int most = plan.file().startsWith("trades/") ? 3 : 1;
        for (String sample : List.of("lakeside", "flat")) {
          int pages = pages(new Arguments(sample, plan.file())).count();
          assertTrue(pages <= most, sample + " " + plan.file() + ": " + pages + " pages");
        }
      }
    }
  }

  @Test
  void everyPlannedDocumentIsInThePackage() {
    for (DocumentPlan plan : Documents.all()) {
      assertTrue(Files.exists(BuiltSamples.folder("lakeside").resolve(plan.file())), plan.file());
    }
  }

  private static DocumentPlan plan(Arguments which) {
    return Documents.all().stream()
        .filter(plan -> plan.file().equals(which.file()))
        .findFirst()
        .orElseThrow();
  }

  private static byte[] pdf(Arguments which) {
    try {
      return Files.readAllBytes(BuiltSamples.folder(which.sample()).resolve(which.file()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PdfPages pages(Arguments which) {
    return PAGES.computeIfAbsent(which, file -> PdfPages.of(pdf(file)));
  }
}
