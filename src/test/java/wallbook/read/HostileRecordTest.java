package wallbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.AllWords;
import wallbook.Jobs;
import wallbook.check.Checks;

/** Records made to break a reader: each gives a finding, or is the harmless text it spells. */
class HostileRecordTest {
  private static final String HEAD = "format: 1\njob: {id: s, title: S, revision: 1}\n";
  private static final String FLOOR = "floors: [{id: g, name: G, level: 0, elevation: 0 ft}]\n";

  @TempDir Path folder;

  private static ReadResult read(byte[] bytes) {
    ReadResult result =
        new JobReader(Jobs.TABLES)
            .read("job.yaml", bytes, new RecordFolder(Path.of("sample-jobs")));
    result.findings().forEach(AllWords::sayInEveryLanguage);
    return result;
  }

  private static ReadResult read(String yaml) {
    return read(yaml.getBytes(StandardCharsets.UTF_8));
  }

  private static void refused(String finding, ReadResult result) {
    assertTrue(result.job().isEmpty());
    assertTrue(
        result.findings().stream().anyMatch(f -> f.name().equals(finding)),
        () -> result.findings().toString());
  }

  private static ReadResult named(String name) {
    return read(HEAD + FLOOR + "spaces: [{id: den, name: " + name + ", floor: g, kind: hall}]\n");
  }

  private static String nameOfSpace(ReadResult result) {
    return result.job().orElseThrow().space("den").name();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "!!javax.script.ScriptEngineManager [!!java.net.URLClassLoader [[]]]",
        "!!java.io.File [x]",
        "!<tag:yaml.org,2002:java.lang.Runtime> {}",
        "!wallbook.record.Floor {}",
        "!!binary R0lGODlhDAAMAIQAAP",
        "!!set {a, b}",
        "!!omap [a: 1]",
        "!!python/object/apply:os.system [id]"
      })
  void aTagMakesNoObject(String value) {
    ReadResult result = read(HEAD + "floors: " + value + "\n");
    assertTrue(result.job().isEmpty());
    assertFalse(result.findings().isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "spaces: &a [*a]",
        "spaces: &a [{id: den, name: D, floor: g, kind: hall, outline: *a}]",
        "spaces: [&a {id: den, name: D, floor: g, kind: hall, openings: [*a]}]",
        "? &a [*a]\n: x",
        "<<: &a {<<: *a}",
        "runs: *nowhere"
      })
  void anAnchorInsideItselfIsAMistakeAndNoTrap(String yaml) {
    ReadResult result = read(HEAD + FLOOR + yaml + "\n");
    assertTrue(result.job().isEmpty());
    assertFalse(result.findings().isEmpty());
  }

  @Test
  void aliasesWithinTheLimitMultiplyNothing() {
    StringBuilder spaces = new StringBuilder("spaces:\n  - {id: den, name: D, floor: g, ");
    spaces.append("kind: hall, outline: &o [").append("[0 ft, 0 ft], ".repeat(2000)).append("]}\n");
    for (int i = 0; i < 150; i++) {
      spaces
          .append("  - {id: s")
          .append(i)
          .append(", name: D, floor: g, kind: hall, outline: *o}\n");
    }
    ReadResult result = read(HEAD + FLOOR + spaces);
    assertEquals(151, result.job().orElseThrow().spaces().size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-32", "ISO-8859-1", "IBM037"})
  void anotherEncodingIsRefused(String encoding) {
    String record = HEAD.replace("title: S", "title: Größe");
    ReadResult result = read(record.getBytes(Charset.forName(encoding)));
    assertTrue(result.job().isEmpty());
    assertFalse(result.findings().isEmpty());
  }

  @Test
  void bytesThatSpellACharacterInTooManyAreRefused() {
    byte[] bytes = HEAD.getBytes(StandardCharsets.UTF_8);
    int title = HEAD.indexOf("title: S") + 7;
    byte[] overlong = bytes.clone();
    overlong[title] = (byte) 0xC0;
    overlong[title + 1] = (byte) 0xAF;
    refused("not-utf-8", read(overlong));
  }

  @Test
  void aByteOfZeroIsForbidden() {
    refused("forbidden-character", read(HEAD + "# \u0000\n"));
    refused("control-character", named("\"D\\0\""));
    refused("control-character", named("\"D\\e[31m\""));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\u05D7\u05D3\u05E8",
        "a\u202Eb\u202C",
        "e\u0301\u0301\u0301\u0301\u0301",
        "\uD83D\uDD0C socket",
        "\u200Bx\u200D\uFE0F",
        "Z\u0336\u0341\u035Ca"
      })
  void aNameOfAnyScriptIsText(String name) {
    assertEquals(name.strip(), nameOfSpace(named("'" + name + "'")));
  }

  @Test
  void aNameMayBeLongButNotEndless() {
    assertEquals(10_000, nameOfSpace(named("n".repeat(10_000))).length());
    refused("text-too-long", named("n".repeat(20_001)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"1e400 ft", "-1e400 ft", "NaN ft", "Infinity ft", "0x1p9 ft", "1e ft", "9,9,9 ft"})
  void aHeightThatIsNoNumberIsRefused(String height) {
    ReadResult result =
        read(
            HEAD
                + FLOOR
                + "spaces: [{id: den, name: D, floor: g, kind: hall, ceiling_height: '"
                + height
                + "'}]\n");
    assertTrue(result.job().isEmpty(), () -> result.job().toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1e300 ft", "-1e300 ft", "1e-300 ft", "99999999999999999999 ft"})
  void anAbsurdHeightNeverStopsTheProgram(String height) {
    ReadResult result =
        read(
            HEAD
                + FLOOR
                + "spaces: [{id: den, name: D, floor: g, kind: hall, ceiling_height: "
                + height
                + ", outline: [[0 ft, 0 ft], ["
                + height
                + ", 0 ft], [1 ft, "
                + height
                + "]]}]\n");
    result
        .job()
        .ifPresent(job -> new Checks(Jobs.TABLES).check(job).forEach(AllWords::sayInEveryLanguage));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"99999999999999999999", "2147483648", "-1", "1.5", "1e3", "0b11", "0o17", "1_000"})
  void aRevisionIsAPlainWholeNumber(String revision) {
    ReadResult result = read(HEAD.replace("revision: 1", "revision: " + revision));
    result
        .job()
        .ifPresent(
            job ->
                assertTrue(
                    new Checks(Jobs.TABLES)
                        .check(job).stream().anyMatch(f -> f.position().toString().contains(":2:")),
                    revision));
  }

  @Test
  void namesOfFilesLeadNowhere() throws IOException {
    Path outside = Files.createDirectory(folder.resolve("outside"));
    Files.writeString(outside.resolve("x.csv"), "x");
    Path inside = Files.createDirectory(folder.resolve("inside"));
    Files.createSymbolicLink(inside.resolve("folder"), outside);
    Files.createSymbolicLink(inside.resolve("file"), outside.resolve("x.csv"));
    RecordFolder record = new RecordFolder(inside);
    for (String name :
        List.of(
            "../outside/x.csv",
            "folder/x.csv",
            "file",
            "./../outside/x.csv",
            "a/../../outside/x.csv",
            outside.resolve("x.csv").toString(),
            "x\u0000.csv",
            "",
            ".",
            "/dev/zero",
            "x".repeat(9000))) {
      assertTrue(record.file(name).isEmpty(), name);
    }
  }

  @Test
  void aFileThatIsNoFileIsNotOpened() {
    RecordFolder devices = new RecordFolder(Path.of("/dev"));
    assertTrue(devices.file("zero").isEmpty());
  }
}
