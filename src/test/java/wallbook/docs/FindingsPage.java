package wallbook.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import wallbook.AllWords;

/** Writes the page that explains every kind of finding, from its words. */
final class FindingsPage {
  private static final String HEAD =
      """
      # Findings

      What the program may say about a record: the name of each kind, what it means, how to mend it and why it matters. A finding comes with
      file, line and column, and where it helps with what was found, what was expected and the nearest value that would do.

      - **error**: the record can't be understood or contradicts itself. No package is made.
      - **warning**: the package is made, but this should be settled before anyone signs. Errors, then warnings, are what stands in the way of a
        handover.
      - **remark**: worth knowing; nothing is wrong.

      Figures that decide whether a difference is worth a word lie in the reference tables `record-checks`, `plausible-values`,
      `environment-needs`, `jacket-fire-levels`, `conduit-bend-limits`, `tie-practice` and `burial-cover`, each with its source. Codes hold as adopted where
      the house stands.

      This page is generated from the words of the findings; `mvn -q test -Dtest=PublishedPagesTest -Dapprove=true` writes it anew.
      """;
  private static final Path WORDS = Path.of("templates", "words");
  private static final Path SOURCES = Path.of("src", "main", "java", "wallbook");
  private static final Pattern MESSAGE = Pattern.compile("finding\\.([a-z0-9-]+)\\.message=.*");
  private static final Pattern SEVERITY = Pattern.compile("Severity\\.(ERROR|WARNING|REMARK)");

  private FindingsPage() {}

  static String page() throws IOException {
    StringBuilder page = new StringBuilder(HEAD);
    Map<String, String> severities = severities();
    for (Map.Entry<String, String> section : sections().entrySet()) {
      page.append("\n## ").append(section.getKey()).append("\n");
      for (String name : section.getValue().split(" ")) {
        page.append("\n### ").append(name).append("\n\n");
        page.append("*")
            .append(severities.get(name))
            .append("* — ")
            .append(words(name, "message"))
            .append("\n\n");
        page.append("- Why it matters: ").append(words(name, "why")).append("\n");
        page.append("- How to mend it: ").append(words(name, "remedy")).append("\n");
      }
    }
    return page.toString();
  }

  private static String words(String name, String part) {
    return AllWords.ENGLISH.get("finding." + name + "." + part).replaceAll("\\{(\\w+)}", "‹$1›");
  }

  /** Names of findings, parted by blanks, by the comment that they stand under in their file. */
  private static Map<String, String> sections() throws IOException {
    Map<String, String> sections = new LinkedHashMap<>();
    try (Stream<Path> files = Files.walk(WORDS)) {
      List<Path> english =
          files
              .filter(f -> f.toString().replace('\\', '/').matches(".*/en(\\.|/.*\\.)properties"))
              .sorted()
              .toList();
      for (Path file : english) {
        String heading = "";
        for (String line : Files.readAllLines(file)) {
          Matcher message = MESSAGE.matcher(line);
          if (line.startsWith("# ")) {
            heading = line.substring(2);
          } else if (message.matches()) {
            sections.merge(heading, message.group(1), (a, b) -> a + " " + b);
          }
        }
      }
    }
    return sections;
  }

  /**
   * Severity of every kind, as its source has it: in the statement that names the kind, else in the
   * method that the statement calls.
   */
  private static Map<String, String> severities() throws IOException {
    Map<String, String> severities = new TreeMap<>();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
        String source = Files.readString(file);
        Matcher literal = Pattern.compile("\"([a-z]+(?:-[a-z0-9]+)+)\"").matcher(source);
        while (literal.find()) {
          String name = literal.group(1);
          if (AllWords.ENGLISH.containsKey("finding." + name + ".message")) {
            severities.merge(
                name, severity(source, literal.start()), (a, b) -> a.equals(b) ? a : a + ", " + b);
          }
        }
      }
    }
    return severities;
  }

  private static String severity(String source, int at) {
    int start = Math.max(source.lastIndexOf(';', at), source.lastIndexOf('{', at));
    int end = source.indexOf(';', at);
    Matcher inStatement = SEVERITY.matcher(source.substring(start, end));
    StringBuilder found = new StringBuilder();
    while (inStatement.find()) {
      found.insert(0, found.isEmpty() ? "" : " or ").insert(0, word(inStatement));
    }
    if (!found.isEmpty()) {
      return found.toString();
    }
    Matcher inHelper =
        Pattern.compile("Severity\\.(ERROR|WARNING|REMARK),\\s*(?:name|finding),").matcher(source);
    if (!inHelper.find()) {
      throw new IllegalStateException("no severity near " + source.substring(start, end));
    }
    return word(inHelper);
  }

  private static String word(Matcher severity) {
    return severity.group(1).toLowerCase(Locale.ROOT);
  }
}
