package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wallbook.AllWords;
import wallbook.compose.Documents;
import wallbook.render.PdfOverlaps;

/**
 * The sample jobs for a reader of Spanish: in the United States, and with metric units in Spain.
 */
@Order(8)
@TestInstance(Lifecycle.PER_CLASS)
class SpanishPackageTest {
  /** Three words and no value to be filled in: enough to tell a sentence of ours in a document. */
  private static final Pattern SENTENCE = Pattern.compile("[^{}*]*\\p{L}+ \\p{L}+ \\p{L}+[^{}*]*");

  private final Map<String, Map<String, byte[]>> packages = new HashMap<>();
  private final Map<String, Map<String, String>> sentences = new HashMap<>();

  record Which(String sample, String file) {}

  @BeforeAll
  void build(@TempDir Path into) throws IOException {
    packages.put("lakeside", build("lakeside", into, "--language", "es-US"));
    packages.put("flat", build("flat", into, "--language", "es-ES", "--units", "metric"));
    for (String sample : packages.keySet()) {
      sentences.put(sample, sentences(sample));
    }
  }

  Stream<Which> documents() {
    return Stream.of("lakeside", "flat")
        .flatMap(s -> Documents.all().stream().map(d -> new Which(s, d.file())));
  }

  @ParameterizedTest
  @MethodSource("documents")
  void noTextRunsIntoOtherText(Which which) throws IOException {
    PdfOverlaps.assertNone(pdf(which));
  }

  @ParameterizedTest
  @MethodSource("documents")
  void nothingOfOursIsLeftInEnglish(Which which) throws IOException {
    String text = text(which);
    Set<String> left = new TreeSet<>();
    sentences
        .get(which.sample())
        .forEach(
            (key, english) -> {
              if (text.contains(english)) {
                left.add(key);
              }
            });
    assertEquals(Set.of(), left);
  }

  /** English sentences of ours, by their key, that neither record nor sources have written. */
  private static Map<String, String> sentences(String sample) throws IOException {
    String asWritten = oneLine(Files.readString(record(sample)) + sources());
    Map<String, String> sentences = new TreeMap<>();
    AllWords.ENGLISH.forEach(
        (key, english) -> {
          boolean sentence = SENTENCE.matcher(english).matches();
          if (sentence
              && !english.equals(AllWords.SPANISH.get(key))
              && !asWritten.contains(oneLine(english))) {
            sentences.put(key, oneLine(english));
          }
        });
    assertTrue(sentences.size() > 100, () -> sentences.size() + " sentences");
    return sentences;
  }

  /** What the reference tables cite; a title keeps its language. */
  private static String sources() throws IOException {
    StringBuilder all = new StringBuilder();
    try (Stream<Path> tables = Files.list(Path.of("src/main/resources/wallbook/reference"))) {
      for (Path table : tables.toList()) {
        all.append(' ').append(Files.readString(table));
      }
    }
    return all.toString();
  }

  private static Path record(String sample) {
    return Path.of("sample-jobs", sample, "job.yaml");
  }

  @Test
  void inSpainDecimalsHaveACommaAndTheSheetIsA4() throws IOException {
    Which manual = new Which("flat", "homeowner-manual.pdf");
    String text = text(manual);

    assertTrue(text.contains("a 2,20 m de su esquina izquierda"), text);
    assertFalse(Pattern.compile("\\d\\.\\d+ m\\b").matcher(text).find());
    assertTrue(text.contains("20 de marzo de 2026"));
    assertEquals(Math.round(PDRectangle.A4.getWidth()), Math.round(width(manual)));
  }

  @Test
  void inTheUnitedStatesFeetAndInchesArePrintedOnLetter() throws IOException {
    Which manual = new Which("lakeside", "homeowner-manual.pdf");
    String text = text(manual);

    assertTrue(text.contains("4800 ft²"), text);
    assertTrue(Pattern.compile("a \\d+ ft \\d+ in sobre el piso").matcher(text).find());
    assertTrue(text.contains("14 de mayo de 2026"));
    assertEquals(Math.round(PDRectangle.LETTER.getWidth()), Math.round(width(manual)));
  }

  @Test
  void theTextOfTheRecordStaysAsItWasWritten() throws IOException {
    assertTrue(text(new Which("lakeside", "homeowner-manual.pdf")).contains("Great room"));
  }

  private static Map<String, byte[]> build(String sample, Path into, String... options)
      throws IOException {
    StringWriter err = new StringWriter();
    Path folder = into.resolve(sample);
    String[] command =
        Stream.concat(
                Stream.of(
                    "build",
                    record(sample).toString(),
                    "--into",
                    folder.toString(),
                    "--allow-warnings"),
                Stream.of(options))
            .toArray(String[]::new);
    int code =
        Main.run(new PrintWriter(new StringWriter()), new PrintWriter(err, true), false, command);
    assertEquals(ExitCode.CLEAN, code, err.toString());
    Map<String, byte[]> files = new HashMap<>();
    try (Stream<Path> made = Files.walk(folder)) {
      for (Path file : made.filter(f -> f.toString().endsWith(".pdf")).toList()) {
        Path root = folder.relativize(file).subpath(0, 1);
        String name = folder.resolve(root).relativize(file).toString().replace('\\', '/');
        files.put(name, Files.readAllBytes(file));
      }
    }
    return files;
  }

  private byte[] pdf(Which which) {
    return packages.get(which.sample()).get(which.file());
  }

  private String text(Which which) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(which))) {
      return oneLine(new PDFTextStripper().getText(document));
    }
  }

  private float width(Which which) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf(which))) {
      return document.getPage(0).getMediaBox().getWidth();
    }
  }

  private static String oneLine(String text) {
    return text.replaceAll("[\\s\u00a0]+", " ").strip();
  }
}
