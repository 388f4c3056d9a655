package wallbook.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.TestFactory;
import wallbook.Jobs;
import wallbook.compose.disclosure.Recipient;
import wallbook.record.Job;

/**
 * The page in a real browser: search, addresses, keyboard, phone, print, accessibility. The tests
 * themselves are in {@code src/test/browser/page.test.mjs}. Without a browser or its driver they
 * are skipped, but never on a build server.
 */
@Order(1)
class BrowserTest {
  private static final Path TESTS = Path.of("src/test/browser");
  private static final Path PAGES = Path.of("target/page");
  private static final Pattern OUTCOME = Pattern.compile("(?m)^(not )?ok \\d+ - (.*)$");

  @TestFactory
  List<DynamicTest> thePageWorksInABrowser() throws IOException, InterruptedException {
    Optional<String> lacking = lacking();
    if (System.getenv("CI") == null) {
      assumeTrue(lacking.isEmpty(), () -> "no browser test: " + lacking.orElseThrow());
    }
    assertEquals(Optional.empty(), lacking, "a build server must have the browser");
    Files.createDirectories(PAGES);
    write("lakeside", SamplePage.html("lakeside", Recipient.PAGE));
    write("owner", SamplePage.html("lakeside", Recipient.OWNER));
    write("spanish", spanish());
    write("hostile", HostileJob.html());
    return outcomes(run());
  }

  private static String spanish() {
    Job job = Jobs.sample("lakeside");
    return SamplePage.html(
        job, SamplePage.view(job, Recipient.PAGE, SamplePage.SPANISH), SamplePage.SPANISH);
  }

  private static Optional<String> lacking() {
    if (!Files.isExecutable(browser())) {
      return Optional.of("install chromium, or name it in the variable CHROMIUM");
    }
    if (!Files.isDirectory(TESTS.resolve("node_modules"))) {
      return Optional.of("run 'npm ci' in " + TESTS);
    }
    return Optional.empty();
  }

  private static Path browser() {
    return Path.of(Optional.ofNullable(System.getenv("CHROMIUM")).orElse("/usr/bin/chromium"));
  }

  private static void write(String name, String html) throws IOException {
    Files.writeString(PAGES.resolve(name + ".html"), html);
  }

  private static String run() throws IOException, InterruptedException {
    ProcessBuilder builder =
        new ProcessBuilder(
            "node", "--test", "--test-reporter=tap", TESTS.resolve("page.test.mjs").toString());
    builder.redirectErrorStream(true);
    builder.environment().put("WALLBOOK_PAGES", PAGES.toAbsolutePath().toString());
    builder.environment().put("CHROMIUM", browser().toString());
    Process process = builder.start();
    String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor();
    return output;
  }

  /** One test for each line of the report; what it says of a failure is its message. */
  private static List<DynamicTest> outcomes(String report) {
    List<DynamicTest> tests = new ArrayList<>();
    Matcher outcome = OUTCOME.matcher(report);
    while (outcome.find()) {
      boolean failed = outcome.group(1) != null;
      int end = report.indexOf("\n  ...", outcome.end());
      String details = report.substring(outcome.end(), end < 0 ? report.length() : end);
      tests.add(
          DynamicTest.dynamicTest(outcome.group(2), () -> assertFalse(failed, () -> details)));
    }
    assertFalse(tests.isEmpty(), () -> "no test was run:\n" + report);
    return tests;
  }
}
