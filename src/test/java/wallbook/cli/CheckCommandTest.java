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
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
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
  @Timeout(60)
  void aSavedRecordIsNoticed(@TempDir Path folder) throws Exception {
    Path record = Files.writeString(folder.resolve("job.yaml"), "format: 1\n");
    try (RecordWatch watch = new RecordWatch(List.of(record))) {
      CompletableFuture<Void> noticed =
          CompletableFuture.runAsync(
              () -> {
                try {
                  watch.awaitSave();
                } catch (InterruptedException e) {
                  throw new IllegalStateException(e);
                }
              });
      Files.writeString(folder.resolve("other.yaml"), "not watched\n");
      Files.writeString(record, "format: 1\njob: {}\n");
      noticed.get(50, TimeUnit.SECONDS);
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
