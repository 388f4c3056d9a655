package wallbook.docs;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

/** The list of licences names every library that the jar is made of, and its texts are there. */
class LicencesTest {
  private static final Path TEXTS = Path.of("src/main/resources/META-INF/licences");

  private static List<String> rows() throws IOException {
    return Files.readAllLines(Path.of("docs/licences.md")).stream()
        .filter(line -> line.startsWith("| ") && line.contains("`"))
        .toList();
  }

  @Test
  void everyLibraryOfTheJarIsListedWithItsVersion() throws IOException {
    Document pom = Jsoup.parse(Files.readString(Path.of("pom.xml")), Parser.xmlParser());
    for (Element library : pom.select("project > dependencies > dependency")) {
      if (!text(library, "scope").equals("test")) {
        String name = text(library, "artifactId");
        String version = resolved(pom, text(library, "version"));
        assertTrue(
            rows().stream()
                .anyMatch(
                    row ->
                        row.matches(".*\\b" + name + "\\b.*")
                            && row.contains("| " + version + " |")),
            name + " " + version);
      }
    }
  }

  @Test
  void everyTextNamedIsCarried() throws IOException {
    for (String row : rows()) {
      for (String part : row.split("`")) {
        if (part.endsWith(".txt") && !part.contains("/")) {
          assertTrue(Files.size(TEXTS.resolve(part)) > 0, part);
        }
      }
    }
  }

  private static String text(Element library, String tag) {
    Element child = library.selectFirst("> " + tag);
    return child == null ? "" : child.text();
  }

  private static String resolved(Document pom, String version) {
    return version.startsWith("${")
        ? pom.selectFirst("properties").children().stream()
            .filter(p -> p.tagName().equals(version.substring(2, version.length() - 1)))
            .map(Element::text)
            .findFirst()
            .orElseThrow()
        : version;
  }
}
