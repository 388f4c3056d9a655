package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {
  private static final String BROKEN = "sample-jobs/broken/job.yaml";
  private static final String FLAT = "sample-jobs/flat/job.yaml";

  @Test
  void aCleanRecordPrintsOneLineAndEndsWithZero() {
    Run run = run("check", FLAT);

    assertEquals(ExitCode.CLEAN, run.exitCode);
    assertEquals(FLAT + ": 0 errors, 0 warnings, 0 remarks\n", run.out);
  }

  @Test
  void theWorstOfSeveralRecordsDecidesTheExitCode() {
    assertEquals(ExitCode.ERRORS, run("check", FLAT, BROKEN).exitCode);
  }

  @Test
  void aFindingIsPrintedWithPlaceFoundExpectedNearestAndRemedy() {
    String out = run("check", BROKEN).out;

    assertTrue(out.contains(": error: "), out);
    assertTrue(out.contains("    found: "), out);
    assertTrue(out.contains("    expected: "), out);
    assertTrue(out.contains("    did you mean: "), out);
  }

  @Test
  void messagesComeInTheLanguageAskedFor() {
    String out = run("check", "--language", "es-MX", FLAT).out;

    assertTrue(out.contains("0 errores"), out);
  }

  @Test
  void anUnknownOptionIsAUsageError() {
    assertEquals(ExitCode.USAGE, run("check", "--colour", FLAT).exitCode);
  }

  @Test
  void jsonHoldsEveryFindingOfTheTextReport() {
    String json = run("check", "--form", "json", BROKEN).out;
    String text = run("check", BROKEN).out;

    long inText = text.lines().filter(l -> l.matches(".*job\\.yaml:\\d+:\\d+: .*")).count();
    assertEquals(inText, json.lines().filter(l -> l.contains("\"severity\"")).count());
  }

  /**
   * The structure that OASIS SARIF 2.1.0 requires (sections 3.13, 3.14, 3.18, 3.27), as a schema.
   */
  @Test
  void sarifHasTheStructureThatTheStandardRequires() {
    String required =
        """
        {"$schema": "https://json-schema.org/draft/2020-12/schema", "type": "object",
         "required": ["version", "runs"],
         "properties": {
           "version": {"const": "2.1.0"},
           "runs": {"type": "array", "minItems": 1, "items": {"type": "object", "required": ["tool", "results"],
             "properties": {
               "columnKind": {"enum": ["utf16CodeUnits", "unicodeCodePoints"]},
               "tool": {"required": ["driver"], "properties": {"driver": {"required": ["name", "rules"]}}},
               "results": {"type": "array", "minItems": 1, "items": {"required": ["message", "ruleId", "level", "locations"],
                 "properties": {
                   "level": {"enum": ["none", "note", "warning", "error"]},
                   "message": {"required": ["text"]},
                   "locations": {"type": "array", "minItems": 1, "items": {"properties": {"physicalLocation": {
                     "required": ["artifactLocation", "region"],
                     "properties": {"region": {"properties": {"startLine": {"type": "integer", "minimum": 1},
                                                              "startColumn": {"type": "integer", "minimum": 1}}}}}}}}}}}}}}}}
        """;
    String sarif = run("check", "--form", "sarif", BROKEN).out;

    assertEquals(
        List.of(),
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(required)
            .validate(sarif, InputFormat.JSON));
  }

  @Test
  @Timeout(300)
  void watchingItChecksAgainWhenTheRecordIsSavedOrAFileItNames(@TempDir Path folder)
      throws Exception {
    String flat = Files.readString(Path.of(FLAT));
    Path record = Files.writeString(folder.resolve("job.yaml"), flat);
    try (Staying check = new Staying("check", record, "--watch")) {
      check.await("0 errors, 0 warnings", 1);
      String named =
          flat.replace("  invented: yes\n", "  invented: yes\n  look: {logo: logo.png}\n");
      Path whole = Files.writeString(folder.resolve("being-saved"), named);
      Files.move(whole, record, StandardCopyOption.ATOMIC_MOVE);
      assertTrue(check.await("0 errors, 1 warning", 1).contains("[photo-missing]"));
      Files.writeString(folder.resolve("logo.png"), "no picture");
      check.await("[photo-of-unknown-form]", 1);
    }
  }

  private record Run(int exitCode, String out) {}

  private static Run run(String... args) {
    StringWriter out = new StringWriter();
    int exitCode =
        Main.run(
            new PrintWriter(out, true), new PrintWriter(new StringWriter(), true), false, args);
    return new Run(exitCode, out.toString().replace("\r\n", "\n"));
  }
}
