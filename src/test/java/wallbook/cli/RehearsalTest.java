package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.OtherJava;

/** In a call whose classes are kept all answers are given, and the one asked for is printed. */
class RehearsalTest {
  private static final String FLAT = "sample-jobs/flat/job.yaml";

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({"run, L-01, fibre.ApplicationJudge", "wish, --wish=more-wifi, speaker.LineAssessor"})
  void loadsWhatOtherAnswersTake(String command, String asked, String elsewhere) throws Exception {
    Cli plain = Cli.run(command, FLAT, asked);

    assertEquals(plain.out(), said(false, command, FLAT, asked));
    assertFalse(loaded().contains("wallbook.assess." + elsewhere + " "), elsewhere);
    assertEquals(plain.out(), said(true, command, FLAT, asked));
    assertTrue(loaded().contains("wallbook.assess." + elsewhere + " "), elsewhere);
  }

  private String said(boolean rehearsed, String... arguments) throws Exception {
    List<String> options = new ArrayList<>();
    options.add("-Xlog:class+load:file=" + folder.resolve("classes.txt"));
    if (rehearsed) {
      options.add("-Dwallbook.rehearse=true");
    }
    Process process =
        new ProcessBuilder(OtherJava.command(Main.class, options, arguments))
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(ExitCode.CLEAN, process.waitFor(), said);
    return said.replace("\r\n", "\n");
  }

  private String loaded() throws IOException {
    return Files.readString(folder.resolve("classes.txt"));
  }
}
