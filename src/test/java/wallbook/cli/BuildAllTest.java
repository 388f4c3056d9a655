package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wallbook.OtherJava;

/** Many houses at once, built by two programs into one folder, as two build machines would. */
@Order(6)
class BuildAllTest {
  private static final Pattern ENTRY =
      Pattern.compile("\"path\"\\s*:\\s*\"([^\"]+)\"[^}]*?\"sha256\"\\s*:\\s*\"([0-9a-f]{64})\"");

  @TempDir private Path folder;

  @Test
  void twoProgramsAtOnceBothEndWellAndLeaveWholePackages() throws Exception {
    Path houses = Files.createDirectories(folder.resolve("houses/flat"));
    Files.copy(Path.of("sample-jobs/flat/job.yaml"), houses.resolve("job.yaml"));
    Files.copy(Path.of("sample-jobs/broken/job.yaml"), folder.resolve("houses/broken.yaml"));
    Path out = folder.resolve("out");
    List<Process> programs = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      programs.add(
          new ProcessBuilder(
                  OtherJava.command(
                      Main.class,
                      List.of("-Xmx700m"),
                      "build-all",
                      folder.resolve("houses").toString(),
                      "--into",
                      out.toString(),
                      "--jobs",
                      "2"))
              .redirectErrorStream(true)
              .redirectOutput(folder.resolve("log" + i).toFile())
              .start());
    }
    for (int i = 0; i < 2; i++) {
      int exitCode = programs.get(i).waitFor();
      String log = Files.readString(folder.resolve("log" + i));
      assertEquals(ExitCode.ERRORS, exitCode, log);
      assertTrue(log.contains("flat/job.yaml: flat, revision 1: built; 0 errors"), log);
      assertTrue(log.contains("broken.yaml: "), log);
    }
    assertEquals(List.of("flat-r1", "flat-r1.zip", "index.html", "outcomes.csv"), names(out));
    assertSumsHold(out.resolve("flat-r1"));
    Document page = Jsoup.parse(Files.readString(out.resolve("index.html")));
    assertEquals("flat-r1/", page.select("tbody a").attr("href"));
    assertEquals(2, page.select("tbody th[scope=row]").size());
    assertEquals("en-US", page.select("html").attr("lang"));
    assertEquals(3, Files.readString(out.resolve("outcomes.csv")).lines().count());
  }

  @Test
  void aFolderWithoutRecordsGivesAnEmptyList() {
    assertEquals(
        ExitCode.CLEAN, Cli.run("build-all", folder, "--into", folder.resolve("out")).exitCode());
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  /** SHA-256 by the platform's library (FIPS 180-4). */
  private static void assertSumsHold(Path packageFolder) throws Exception {
    Matcher entry = ENTRY.matcher(Files.readString(packageFolder.resolve("manifest.json")));
    int checked = 0;
    while (entry.find()) {
      byte[] bytes = Files.readAllBytes(packageFolder.resolve(entry.group(1)));
      byte[] sum = MessageDigest.getInstance("SHA-256").digest(bytes);
      assertEquals(entry.group(2), HexFormat.of().formatHex(sum), entry.group(1));
      checked++;
    }
    assertTrue(checked > 5, "the manifest lists " + checked + " files");
  }
}
