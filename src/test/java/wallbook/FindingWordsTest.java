package wallbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every kind of finding that the program can make has its words in every language. */
class FindingWordsTest {
  private static final Path SOURCES = Path.of("src", "main", "java", "wallbook");
  private static final Pattern WORDS =
      Pattern.compile("finding\\.([a-z0-9-]+)\\.(message|remedy|why)");
  private static final Pattern ARGUMENT = Pattern.compile("\\{([a-zA-Z0-9]+)}");
  private static final Pattern LITERAL = Pattern.compile("\"([a-z]+(?:-[a-z0-9]+)+)\"");

  @Test
  void everyKindHasMessageRemedyAndWhyInBothLanguages() {
    for (Map<String, String> words : Set.of(AllWords.ENGLISH, AllWords.SPANISH)) {
      Map<String, Set<String>> parts = new TreeMap<>();
      for (String key : words.keySet()) {
        Matcher matcher = WORDS.matcher(key);
        if (matcher.matches()) {
          parts.computeIfAbsent(matcher.group(1), k -> new TreeSet<>()).add(matcher.group(2));
        }
      }
      parts.forEach((name, found) -> assertEquals(Set.of("message", "remedy", "why"), found, name));
    }
    assertEquals(kinds(AllWords.ENGLISH), kinds(AllWords.SPANISH));
  }

  @Test
  void aWhyHoldsForEveryFindingOfItsKind() {
    for (String kind : kinds(AllWords.ENGLISH)) {
      assertEquals(Set.of(), arguments(AllWords.ENGLISH.get("finding." + kind + ".why")), kind);
    }
  }

  @Test
  void everyKindThatIsMadeHasWordsAndTheOtherWayRound() throws IOException {
    Set<String> made = new TreeSet<>();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        String source = Files.readString(file);
        if (source.contains("Findings findings") || source.contains("refuse(")) {
          Matcher literal = LITERAL.matcher(source);
          while (literal.find()) {
            made.add(literal.group(1));
          }
        }
      }
    }
    Set<String> unmade = new TreeSet<>(kinds(AllWords.ENGLISH));
    unmade.removeAll(made);
    assertEquals(Set.of(), unmade, "words for findings that nothing makes");
    Set<String> unsaid =
        called(SOURCES).stream()
            .filter(name -> !kinds(AllWords.ENGLISH).contains(name))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of(), unsaid, "findings without words");
  }

  /** Names that stand where a finding is made, right after its severity. */
  private static Set<String> called(Path sources) throws IOException {
    Pattern call = Pattern.compile("Severity\\.(?:ERROR|WARNING|REMARK),\\s*\"([a-z0-9-]+)\"");
    Set<String> names = new TreeSet<>();
    try (Stream<Path> files = Files.walk(sources)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        Matcher matcher = call.matcher(Files.readString(file));
        while (matcher.find()) {
          names.add(matcher.group(1));
        }
      }
    }
    assertTrue(names.size() > 50, "the scan finds nothing any more");
    return names;
  }

  private static Set<String> kinds(Map<String, String> words) {
    Set<String> kinds = new TreeSet<>();
    for (String key : words.keySet()) {
      Matcher matcher = WORDS.matcher(key);
      if (matcher.matches()) {
        kinds.add(matcher.group(1));
      }
    }
    return kinds;
  }

  private static Set<String> arguments(String text) {
    assertTrue(text != null, "no text");
    Set<String> names = new TreeSet<>();
    Matcher matcher = ARGUMENT.matcher(text);
    while (matcher.find()) {
      names.add(matcher.group(1));
    }
    return names;
  }
}
