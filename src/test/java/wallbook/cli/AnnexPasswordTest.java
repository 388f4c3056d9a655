package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AnnexPasswordTest {
  private static final String PASSWORD = "tall-grass-by-the-pier";

  @TempDir private Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("password.txt"), text);
  }

  @Test
  void thePasswordIsTheFirstLineWithoutBlanksAroundIt() throws IOException {
    assertEquals(
        Optional.of(PASSWORD), AnnexPassword.read(file(" " + PASSWORD + " \r\nsecond\n"), "?"));
    assertEquals(Optional.empty(), AnnexPassword.read(file("  \n"), "?"));
    assertEquals(Optional.empty(), AnnexPassword.read(file(""), "?"));
  }

  @Test
  void withoutATerminalNothingIsAsked() {
    assertThrows(IOException.class, () -> AnnexPassword.read(AnnexPassword.ASK, "?"));
  }

  @Test
  void aBlankPasswordIsRefusedAndNothingWritten() throws IOException {
    Path into = folder.resolve("out");
    StringWriter err = new StringWriter();
    int code = build(new StringWriter(), err, into, file("\n"));
    assertEquals(ExitCode.USAGE, code);
    assertTrue(err.toString().contains("blank"), err.toString());
    assertFalse(Files.exists(into));
  }

  @Test
  void theAnnexOpensWithThePasswordOnlyAndThePasswordIsNowhereElse() throws IOException {
    Path into = folder.resolve("out");
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    assertEquals(ExitCode.CLEAN, build(out, err, into, file(PASSWORD + "\n")));
    assertFalse((out.toString() + err).contains(PASSWORD));

    byte[] annex = Files.readAllBytes(into.resolve("flat-r1/security-annex.pdf"));
    assertThrows(InvalidPasswordException.class, () -> Loader.loadPDF(annex));
    assertDoesNotThrow(() -> Loader.loadPDF(annex, PASSWORD).close());
    try (PDDocument sheet =
        Loader.loadPDF(Files.readAllBytes(into.resolve("flat-r1/sign-off.pdf")))) {
      assertFalse(sheet.isEncrypted(), "the other documents stay open");
    }
    try (Stream<Path> files = Files.walk(into)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String bytes = Files.readString(file, StandardCharsets.ISO_8859_1);
        assertFalse(bytes.contains(PASSWORD), file.toString());
      }
    }
  }

  private static int build(StringWriter out, StringWriter err, Path into, Path password) {
    return Main.run(
        new PrintWriter(out, true),
        new PrintWriter(err, true),
        false,
        "build",
        Path.of("sample-jobs/flat/job.yaml").toString(),
        "--into",
        into.toString(),
        "--annex-password-file",
        password.toString());
  }
}
