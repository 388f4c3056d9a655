package wallbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wallbook.compose.Caution;
import wallbook.compose.RunState;
import wallbook.compose.drawing.SymbolKind;
import wallbook.finding.Severity;
import wallbook.record.Word;
import wallbook.reference.Standing;

/** Every language says everything, and nothing that nobody says. */
class LanguagesTest {
  private static final Path WORDS = Path.of("templates", "words");
  private static final Path SOURCES = Path.of("src", "main");
  private static final Pattern ARGUMENT = Pattern.compile("\\{([a-zA-Z][a-zA-Z0-9]*)}");
  private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/");
  private static final Pattern TEXT = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");
  private static final Pattern SAID =
      Pattern.compile(
          "(?:\\bsay|Phrase\\.of|Phrase\\.counted|\\bcounters)\\(\\s*\"([a-z][a-zA-Z0-9._-]*)\"\\s*([,)+])");

  /**
   * English sentences about the record's keys, which exist in English only; another language may
   * leave them out.
   */
  private static final Set<String> ENGLISH_ONLY = Set.of("says");

  /** Beginnings of keys whose end is computed, beside the choices of the record. */
  private static final List<String> COMPUTED =
      List.of(
          "asbuilt.by.",
          "asbuilt.coax.",
          "asbuilt.fact.",
          "asbuilt.tested.",
          "asbuilt.tests.column.",
          "cable-type.",
          "caution.",
          "change.",
          "check-report.",
          "coax.note.",
          "coax.use.",
          "conduit-text.",
          "conduit.bends.",
          "conduit.fill.asked.",
          "conduit.head.",
          "conduit.jam.",
          "conduit.largest-cable.asked.",
          "conduit.more.asked.",
          "conduit.pull.asked.",
          "drawing.oneline.medium.",
          "extract.for.",
          "fibre.asked.bend.",
          "fibre.assume.connectors",
          "fibre.assume.splices",
          "fibre.edition.",
          "finding.",
          "glossary.",
          "guide.effort.",
          "guide.figure",
          "guide.fit.",
          "guide.standing.",
          "guide.term.",
          "guide.verdict.",
          "houses.",
          "inquiry.way.",
          "kind.",
          "label-kind.",
          "landscaping.fact.",
          "landscaping.limit.",
          "manual.fact.",
          "outdoor.asked.mark.",
          "outdoor.asked.to-lay.",
          "outdoor.limit.cover.",
          "outdoor.limit.marked.",
          "outdoor.limit.unmarked.",
          "outlook.add.",
          "outlook.alternative.",
          "outlook.answer.",
          "outlook.condition.",
          "outlook.means.",
          "outlook.note.",
          "outlook.service.",
          "outlook.share.",
          "outlook.wish.",
          "page.fact.",
          "page.found",
          "page.kind.",
          "page.note.",
          "page.port.",
          "page.sign.",
          "pairs.category.",
          "pairs.class.",
          "pairs.configuration.",
          "pairs.end.",
          "pairs.ethernet.condition.",
          "pairs.kind.",
          "pairs.parameter.",
          "pairs.use.",
          "port-state.",
          "run-state.",
          "runsheet.",
          "severity.",
          "signoff.tick.",
          "speaker.asked.",
          "speaker.limit.",
          "standing.",
          "symbol.",
          "tested.",
          "theme.",
          "verdict.",
          "wall.",
          "wire.assume.");

  /** A beginning that a class of ours puts before all keys that it is asked to say. */
  private static final String OF_THE_PAGE = "page.";

  /** Words for the constants of a type, by the beginning of their keys. */
  private static final Map<String, Class<? extends Enum<?>>> CONSTANTS =
      Map.of(
          "caution.", Caution.class,
          "run-state.", RunState.class,
          "severity.", Severity.class,
          "standing.", Standing.class,
          "symbol.", SymbolKind.class);

  static Collection<String> translations() throws IOException {
    try (Stream<Path> files = Files.list(WORDS)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".properties") && !name.equals("en.properties"))
          .map(name -> name.replace(".properties", ""))
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("translations")
  void aLanguageHasTheKeysOfEnglishInOneFileOrInTheFilesOfEnglish(String language) {
    boolean oneFile = !Files.isDirectory(WORDS.resolve(language));
    Set<String> english = oneFile ? new TreeSet<>(words("en").keySet()) : keysByFile("en");
    Set<String> its = oneFile ? new TreeSet<>(words(language).keySet()) : keysByFile(language);
    Set<String> missing = new TreeSet<>(english);
    missing.removeAll(its);
    Set<String> besides = new TreeSet<>(its);
    besides.removeAll(english);
    assertEquals(Set.of(), missing, "missing");
    assertEquals(Set.of(), besides, "not in English");
  }

  @ParameterizedTest
  @MethodSource("translations")
  void aLanguageTakesTheArgumentsOfEnglish(String language) {
    Map<String, String> english = words("en");
    words(language)
        .forEach(
            (key, text) -> {
              Set<String> wanted = arguments(english.getOrDefault(key, text));
              Set<String> taken = arguments(text);
              if (!taken.containsAll(ENGLISH_ONLY)) {
                wanted.removeAll(ENGLISH_ONLY);
              }
              assertEquals(wanted, taken, key);
            });
  }

  @ParameterizedTest
  @MethodSource("translations")
  void nothingIsLeftInEnglish(String language) {
    Map<String, String> english = words("en");
    Set<String> same =
        words(language).entrySet().stream()
            .filter(e -> e.getValue().equals(english.get(e.getKey())))
            .filter(e -> !e.getKey().equals("discretion.words"))
            .filter(
                e ->
                    Pattern.compile("\\p{L}{3,} \\p{L}{2,} \\p{L}{2,}")
                        .matcher(e.getValue())
                        .find())
            .map(Map.Entry::getKey)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of(), same);
  }

  /** A record in English may be printed in Spanish, and the other way round. */
  @Test
  void noTextThatGivesAWatchingThingAwayIsMissedForItsLanguage() throws IOException {
    Set<String> all = new TreeSet<>(givingAway("en"));
    for (String language : translations()) {
      all.addAll(givingAway(language));
    }
    for (String language : translations()) {
      assertEquals(all, givingAway(language), language);
    }
    assertEquals(all, givingAway("en"));
  }

  private static Set<String> givingAway(String language) {
    return new TreeSet<>(List.of(words(language).get("discretion.words").split(", ")));
  }

  @Test
  void everyKeyThatIsSaidHasWords() throws IOException {
    Set<String> known = words("en").keySet();
    Map<String, Set<String>> choices = choices();
    Set<String> unsaid = new TreeSet<>();
    Matcher said = SAID.matcher(sources());
    int calls = 0;
    while (said.find()) {
      calls++;
      String key = said.group(1);
      boolean computed = said.group(2).equals("+");
      boolean there =
          isSaid(key, computed, known, choices)
              || isSaid(OF_THE_PAGE + key, computed, known, choices);
      if (!there) {
        unsaid.add(key);
      }
    }
    assertTrue(calls > 300, "the scan finds nothing any more");
    assertEquals(Set.of(), unsaid, "said without words, or computed and not declared here");
  }

  private static boolean isSaid(
      String key, boolean computed, Set<String> known, Map<String, Set<String>> choices) {
    return computed
        ? choices.containsKey(key.replaceFirst("\\.$", ""))
            || COMPUTED.stream().anyMatch(c -> c.startsWith(key) || key.startsWith(c))
        : known.contains(key) || known.contains(key + ".one") && known.contains(key + ".other");
  }

  @Test
  void everyKeyIsSaidSomewhere() throws IOException {
    Set<String> texts = texts();
    Set<String> choices =
        choices().keySet().stream().map(prefix -> prefix + ".").collect(Collectors.toSet());
    Set<String> unused = new TreeSet<>();
    for (String key : words("en").keySet()) {
      boolean computed =
          COMPUTED.stream().anyMatch(key::startsWith) || choices.stream().anyMatch(key::startsWith);
      if (!computed
          && !texts.contains(key)
          && !texts.contains(key.replaceFirst("\\.(one|other)$", ""))
          && !(key.startsWith(OF_THE_PAGE)
              && texts.contains(key.substring(OF_THE_PAGE.length())))) {
        unused.add(key);
      }
    }
    assertEquals(Set.of(), unused);
  }

  @Test
  void everyDeclaredBeginningIsNeeded() {
    Set<String> keys = words("en").keySet();
    Set<String> texts = texts();
    for (String beginning : COMPUTED) {
      assertTrue(keys.stream().anyMatch(key -> key.startsWith(beginning)), beginning);
      String whole = beginning.replaceFirst("\\.$", "");
      boolean begun =
          texts.stream()
              .anyMatch(
                  text ->
                      text.equals(whole)
                          || text.endsWith(".") && beginning.startsWith(text)
                          || beginning.equals(OF_THE_PAGE + text));
      assertTrue(begun, () -> "nothing begins with " + beginning);
    }
  }

  @Test
  void everyChoiceOfTheRecordHasItsWordAndNoOther() throws IOException {
    Set<String> keys = words("en").keySet();
    Map<String, Set<String>> choices = choices();
    assertTrue(choices.size() > 30, "the scan finds nothing any more");
    choices.forEach(
        (prefix, words) -> assertEquals(words, ends(keys, prefix + "."), "words of " + prefix));
  }

  @Test
  void everyBuiltInCableTypeHasItsNameAndInEnglishThatOfItsTable() {
    Map<String, String> names = new TreeMap<>();
    Jobs.TABLES
        .table("cable-catalogue")
        .rows()
        .forEach(row -> names.put("cable-type." + row.text("id"), row.text("name")));
    Map<String, String> said = words("en");
    said.keySet().removeIf(key -> !key.startsWith("cable-type."));
    assertEquals(names, said);
  }

  @Test
  void everyConstantThatReadersMeetHasItsWordAndNoOther() {
    Set<String> keys = words("en").keySet();
    CONSTANTS.forEach(
        (prefix, type) -> {
          Set<String> constants =
              Arrays.stream(type.getEnumConstants())
                  .map(c -> c.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                  .collect(Collectors.toCollection(TreeSet::new));
          Set<String> said =
              ends(keys, prefix).stream()
                  .map(end -> end.replaceFirst("\\..*", "").replace('_', '-'))
                  .collect(Collectors.toCollection(TreeSet::new));
          assertEquals(constants, said, "words of " + prefix);
        });
  }

  /** The choices of the record and of the outlook by the beginning of their keys. */
  private static Map<String, Set<String>> choices() throws IOException {
    Map<String, Set<String>> choices = new TreeMap<>();
    choices.putAll(choicesIn("wallbook.record"));
    choices.putAll(choicesIn("wallbook.assess.outlook"));
    choices.remove("service-family"); // decides what is listed where, and is never said
    return choices;
  }

  private static Map<String, Set<String>> choicesIn(String inPackage) throws IOException {
    Map<String, Set<String>> choices = new TreeMap<>();
    Path folder = SOURCES.resolve("java").resolve(inPackage.replace('.', '/'));
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        String name = file.getFileName().toString().replace(".java", "");
        Class<?> type = type(inPackage + "." + name);
        if (type.isEnum() && Word.class.isAssignableFrom(type)) {
          choices.put(
              name.replaceAll("([a-z])([A-Z])", "$1-$2").toLowerCase(Locale.ROOT),
              Arrays.stream(type.getEnumConstants())
                  .map(c -> ((Word) c).word())
                  .collect(Collectors.toCollection(TreeSet::new)));
        }
      }
    }
    return choices;
  }

  private static Class<?> type(String name) {
    try {
      return name.endsWith("package-info") ? Object.class : Class.forName(name);
    } catch (ClassNotFoundException e) {
      throw new AssertionError(e);
    }
  }

  private static Set<String> ends(Set<String> keys, String beginning) {
    return keys.stream()
        .filter(key -> key.startsWith(beginning))
        .map(key -> key.substring(beginning.length()))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> arguments(String text) {
    return ARGUMENT
        .matcher(text)
        .results()
        .map(match -> match.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Map<String, String> words(String language) {
    Map<String, String> words = new TreeMap<>();
    files(language)
        .forEach((name, file) -> file.forEach((k, v) -> words.put((String) k, (String) v)));
    return words;
  }

  /** Keys with the file they stand in. */
  private static Set<String> keysByFile(String language) {
    Set<String> keys = new TreeSet<>();
    files(language).forEach((name, file) -> file.keySet().forEach(k -> keys.add(name + ": " + k)));
    return keys;
  }

  /** The words files of a language by name; the one beside its folder is nameless. */
  private static Map<String, Properties> files(String language) {
    Map<String, Properties> files = new TreeMap<>();
    files.put("", load(WORDS.resolve(language + ".properties")));
    if (!Files.isDirectory(WORDS.resolve(language))) {
      return files;
    }
    try (Stream<Path> folder = Files.list(WORDS.resolve(language))) {
      folder.forEach(file -> files.put(file.getFileName().toString(), load(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }

  private static Properties load(Path file) {
    Properties properties = new Properties();
    try (Reader in = Files.newBufferedReader(file)) {
      properties.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return properties;
  }

  /** All texts that the sources hold, some of which are keys or begin keys. */
  private static Set<String> texts() {
    Set<String> texts = new HashSet<>();
    String sources = sources();
    for (Pattern pattern : List.of(TEXT, SAID)) {
      Matcher text = pattern.matcher(sources);
      while (text.find()) {
        texts.add(text.group(1));
      }
    }
    return texts;
  }

  /** Everything that can say a key: classes, templates, reference tables. */
  private static String sources() {
    StringBuilder all = new StringBuilder();
    for (Path root : List.of(SOURCES, Path.of("templates"))) {
      try (Stream<Path> files = Files.walk(root)) {
        for (Path file : files.filter(LanguagesTest::saysKeys).sorted().toList()) {
          all.append(Files.readString(file)).append('\n');
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return COMMENT.matcher(all).replaceAll("");
  }

  private static boolean saysKeys(Path file) {
    return file.toString().matches(".*\\.(java|md|ftl|html|css|js)");
  }
}
