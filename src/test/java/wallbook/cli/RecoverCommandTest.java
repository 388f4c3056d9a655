package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecoverCommandTest {
  private static final Path RECORD = Path.of("sample-jobs/flat/job.yaml");
  private final Path report = BuiltSamples.folder("flat").resolve("check-report.pdf");

  @Test
  void theRecordComesBackToTheLastByte(@TempDir Path work) throws IOException {
    Path recovered = work.resolve("job.yaml");

    assertEquals(ExitCode.CLEAN, run("recover", report.toString(), "--into", recovered.toString()));
    assertArrayEquals(Files.readAllBytes(RECORD), Files.readAllBytes(recovered));
  }

  @Test
  void oneChangedByteIsTold(@TempDir Path work) throws IOException {
    byte[] pdf = Files.readAllBytes(report);
    int title = new String(pdf, StandardCharsets.ISO_8859_1).indexOf("Check report");
    pdf[title] = 'K';
    Path altered = Files.write(work.resolve("altered.pdf"), pdf);

    assertEquals(
        ExitCode.WARNINGS,
        run("recover", altered.toString(), "--into", work.resolve("job.yaml").toString()));
  }

  @Test
  void aDocumentSavedByAnotherProgramIsTold(@TempDir Path work) throws IOException {
    Path saved = work.resolve("saved.pdf");
    try (PDDocument document = Loader.loadPDF(Files.readAllBytes(report))) {
      document.save(saved.toFile());
    }

    assertEquals(
        ExitCode.WARNINGS,
        run("recover", saved.toString(), "--into", work.resolve("job.yaml").toString()));
  }

  @Test
  void aDocumentWithoutARecordWritesNothing(@TempDir Path work) throws IOException {
    Path empty = work.resolve("empty.pdf");
    try (PDDocument document = new PDDocument()) {
      document.addPage(new PDPage());
      document.save(empty.toFile());
    }

    Path target = work.resolve("job.yaml");
    assertEquals(ExitCode.ERRORS, run("recover", empty.toString(), "--into", target.toString()));
    assertFalse(Files.exists(target));
  }

  @Test
  void aFileThatIsThereIsNotOverwritten(@TempDir Path work) throws IOException {
    Path there = Files.writeString(work.resolve("job.yaml"), "mine");

    assertEquals(ExitCode.FAILED, run("recover", report.toString(), "--into", there.toString()));
    assertTrue(Files.readString(there).equals("mine"));
  }

  private static int run(String... args) {
    return Main.run(
        new PrintWriter(new StringWriter()), new PrintWriter(new StringWriter()), false, args);
  }
}
