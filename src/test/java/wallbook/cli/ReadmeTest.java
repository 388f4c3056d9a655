package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README shows is what happens. */
class ReadmeTest {
  private final String readme = read(Path.of("README.md"));

  @TempDir private Path folder;

  @Test
  void itsRecordHasNoErrors() throws IOException {
    Result result = run("check", record(yaml()).toString());

    assertTrue(result.exitCode != ExitCode.ERRORS, result.out);
  }

  @Test
  void itsMistakeIsToldAsShown() throws IOException {
    Path record = record(yaml().replace("to: {place: den-a", "to: {place: den-b"));
    String shown = block("(?ms)^    (job\\.yaml:\\d+:\\d+: error: .*?)\\n\\n").indent(-4).strip();

    String out = run("check", record.toString()).out.replace(record.toString(), "job.yaml");
    assertTrue(out.contains(shown), out + "\n\nshown:\n" + shown);
  }

  @Test
  void itsCommandsWork() throws IOException {
    for (String line : readme.lines().filter(l -> l.startsWith("    java -jar ")).toList()) {
      String[] words = line.strip().split(" ");
      String[] args = Arrays.copyOfRange(words, 3, words.length);
      for (int i = 0; i < args.length; i++) {
        // The small sample serves as well; the large one is built by another test.
        args[i] = args[i].replace("lakeside", "flat");
        args[i] = args[i].equals("handover") ? folder.resolve("handover").toString() : args[i];
      }
      int exitCode = run(args).exitCode;
      assertTrue(exitCode == ExitCode.CLEAN || exitCode == ExitCode.WARNINGS, line);
    }
  }

  @Test
  void itsExitCodesAreTheProgramsOwn() {
    assertTrue(
        readme
            .replaceAll("\\s+", " ")
            .contains(
                "0 clean, 1 warnings, 2 errors in the record (nothing was written), 64 command not"
                    + " understood, 70 failed"));
    assertEquals(0, ExitCode.CLEAN);
    assertEquals(1, ExitCode.WARNINGS);
    assertEquals(2, ExitCode.ERRORS);
    assertEquals(64, ExitCode.USAGE);
    assertEquals(70, ExitCode.FAILED);
  }

  private String yaml() {
    return block("(?s)```yaml\\n(.*?)```");
  }

  private Path record(String yaml) throws IOException {
    return Files.writeString(folder.resolve("job.yaml"), yaml);
  }

  private String block(String pattern) {
    Matcher matcher = Pattern.compile(pattern).matcher(readme);
    assertTrue(matcher.find(), pattern);
    return matcher.group(1).lines().collect(Collectors.joining("\n", "", "\n"));
  }

  private record Result(int exitCode, String out) {}

  private static Result run(String... args) {
    StringWriter out = new StringWriter();
    int exitCode =
        Main.run(
            new PrintWriter(out, true), new PrintWriter(new StringWriter(), true), false, args);
    return new Result(exitCode, out.toString());
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
