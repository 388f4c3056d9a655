package wallbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.tools.ToolProvider;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** Does to a copy of the program what docs/extending.md says, and tries the result. */
@Order(7)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ExtendingTest {
  private static final Pattern SECTION = Pattern.compile("(?m)^## ");
  private static final Pattern BLOCK =
      Pattern.compile("```(\\w+)(?: (\\S+))?\\n(.*?)```", Pattern.DOTALL);
  private static final Path COMPILED = Path.of("target", "classes");

  /** Where a folder of the project lies in the compiled program. */
  private static final Map<String, String> PLACES =
      Map.of("src/main/resources/", "", "templates/", "templates/");

  /** The files that each section changes or adds, by the beginning of its heading. */
  private final Map<String, Set<String>> touched = new LinkedHashMap<>();

  private final List<Path> sources = new ArrayList<>();
  private final Map<String, String> said = new LinkedHashMap<>();
  private Path folder;
  private Path program;

  @BeforeAll
  void follow(@TempDir Path place) throws Exception {
    folder = place;
    program = place.resolve("program");
    copy(COMPILED, program);
    String[] sections = SECTION.split(Files.readString(Path.of("docs", "extending.md")));
    for (int i = 1; i < sections.length; i++) {
      follow(sections[i]);
    }
  }

  private void follow(String section) throws Exception {
    Set<String> files = new TreeSet<>();
    touched.put(section.lines().findFirst().orElseThrow(), files);
    Matcher block = BLOCK.matcher(section);
    while (block.find()) {
      String file = block.group(2);
      switch (block.group(1)) {
        case "sh" -> run(block.group(3));
        case "diff" -> write(file, changed(current(file), block.group(3)), files);
        case "yaml" -> Files.writeString(folder.resolve(file), block.group(3));
        case "properties" -> write(file, changedWords(file, block.group(3)), files);
        default -> write(file, block.group(3), files);
      }
    }
  }

  private void run(String commands) throws Exception {
    compile();
    for (String line : commands.lines().toList()) {
      if (line.startsWith("wallbook ")) {
        said.put(line, wallbook(line.substring("wallbook ".length()).split(" ")));
      } else {
        assertEquals(
            "cat templates/words/en.properties templates/words/en/*.properties"
                + " > templates/words/fr.properties",
            line);
        write("templates/words/fr.properties", english(), new TreeSet<>());
      }
    }
  }

  private void compile() throws IOException {
    if (!sources.isEmpty()) {
      List<String> options =
          new ArrayList<>(
              List.of("-proc:none", "-d", program.toString(), "-cp", classpath(), "-parameters"));
      sources.forEach(source -> options.add(source.toString()));
      int result =
          ToolProvider.getSystemJavaCompiler()
              .run(null, null, null, options.toArray(String[]::new));
      assertEquals(0, result, "the additions compile");
    }
  }

  private String wallbook(String... arguments) throws Exception {
    Path out = Files.createTempFile(folder, "said", ".txt");
    int code =
        new ProcessBuilder(
                OtherJava.command(
                    OtherJava.HOME, classpath(), "wallbook.cli.Main", List.of(), arguments))
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(out.toFile())
            .start()
            .waitFor();
    String text = Files.readString(out);
    assertTrue(code < 2, text);
    return text;
  }

  /** The copy in place of the program itself, and the libraries. */
  private String classpath() {
    Path own = COMPILED.toAbsolutePath();
    return program
        + File.pathSeparator
        + Pattern.compile(File.pathSeparator, Pattern.LITERAL)
            .splitAsStream(System.getProperty("java.class.path"))
            .filter(entry -> !Path.of(entry).toAbsolutePath().equals(own))
            .collect(Collectors.joining(File.pathSeparator));
  }

  private String english() throws IOException {
    StringBuilder all = new StringBuilder();
    all.append(Files.readString(copyOf("templates/words/en.properties")));
    try (var files = Files.list(copyOf("templates/words/en"))) {
      for (Path file : files.sorted().toList()) {
        all.append(Files.readString(file)).append('\n');
      }
    }
    return all.toString();
  }

  /** A file of words as it is, with the given keys in place of its own. */
  private String changedWords(String file, String words) throws IOException {
    String text = Files.exists(copyOf(file)) ? Files.readString(copyOf(file)) : "";
    for (String line : words.lines().toList()) {
      String key = line.substring(0, line.indexOf('=') + 1);
      text = text.replaceAll("(?m)^" + Pattern.quote(key) + ".*\\n", "");
    }
    return text + words;
  }

  private String current(String file) throws IOException {
    return Files.readString(
        file.endsWith(".java") && !Files.exists(copyOf(file)) ? Path.of(file) : copyOf(file));
  }

  private Path copyOf(String file) {
    if (file.endsWith(".java")) {
      return folder.resolve(file);
    }
    String prefix = PLACES.keySet().stream().filter(file::startsWith).findFirst().orElseThrow();
    return program.resolve(PLACES.get(prefix) + file.substring(prefix.length()));
  }

  private void write(String file, String text, Set<String> files) throws IOException {
    Path copy = copyOf(file);
    Files.createDirectories(copy.getParent());
    Files.writeString(copy, text);
    files.add(file);
    if (file.endsWith(".java") && !sources.contains(copy)) {
      sources.add(copy);
    }
  }

  private static String changed(String text, String diff) {
    String old = side(diff, '-');
    int first = text.indexOf(old);
    assertTrue(first >= 0 && text.indexOf(old, first + 1) < 0, "not there once: " + old);
    return text.replace(old, side(diff, '+'));
  }

  private static String side(String diff, char sign) {
    return diff.lines()
        .filter(line -> line.charAt(0) == ' ' || line.charAt(0) == sign)
        .map(line -> line.substring(1) + "\n")
        .collect(Collectors.joining());
  }

  private static void copy(Path from, Path to) throws IOException {
    Files.walkFileTree(
        from,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes attributes)
              throws IOException {
            Files.createDirectories(to.resolve(from.relativize(dir).toString()));
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.copy(file, to.resolve(from.relativize(file).toString()));
            return FileVisitResult.CONTINUE;
          }
        });
  }

  private String said(String beginning) {
    return said.entrySet().stream()
        .filter(e -> e.getKey().startsWith(beginning))
        .findFirst()
        .orElseThrow()
        .getValue();
  }

  @Test
  void dataIsAddedWithoutCode() {
    List.of("1. A cable type", "2. An optical application", "3. A label sheet", "6. A language")
        .forEach(
            heading ->
                assertTrue(
                    touched.get(heading).stream().noneMatch(file -> file.endsWith(".java")),
                    heading));
  }

  @Test
  void aCheckChangesOneFileOfCodeAndAddsOne() {
    assertEquals(
        Set.of(
            "src/main/java/wallbook/check/Checks.java",
            "src/main/java/wallbook/check/PanelRoomChecks.java",
            "templates/words/en/check.properties",
            "templates/words/es/check.properties"),
        touched.get("4. A check"));
  }

  @Test
  void aDocumentChangesOneFileOfCode() {
    assertEquals(
        List.of("src/main/java/wallbook/compose/Documents.java"),
        touched.get("5. A document").stream().filter(file -> Files.exists(Path.of(file))).toList());
  }

  @Test
  void theCheckSpeaks() {
    assertTrue(said("wallbook check").contains("No port of Fibre tray in Rack is free."));
  }

  @Test
  void theCableTypeIsKnownAndTheApplicationComputed() {
    String run = said("wallbook run");
    assertTrue(run.contains("Multimode OM5, two fibres"), run);
    assertTrue(run.contains("100GBASE-SR2"), run);
  }

  @Test
  void theSheetIsListed() {
    assertTrue(said("wallbook labels").contains("letter-tag-large"));
  }

  @Test
  void theDocumentIsMadeInTheLanguageAdded() throws IOException {
    Path made = folder.resolve("out").resolve("trial-r1");
    assertTrue(Files.exists(made.resolve("trades/shades.pdf")), said("wallbook build"));
    try (var pdf = Loader.loadPDF(made.resolve("homeowner-manual.pdf").toFile())) {
      assertEquals("Manuel de l'installation", pdf.getDocumentInformation().getTitle());
    }
  }
}
