package wallbook;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.stream.Stream;
import wallbook.finding.Finding;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

/** The words of every language, from all the files that hold some. */
public final class AllWords {
  public static final Map<String, String> ENGLISH = words("en");
  public static final Map<String, String> SPANISH = words("es");

  private static final List<Wording> WORDINGS =
      List.of(
          new Wording(Locale.US, ENGLISH, UnitSystem.FEET_AND_INCHES),
          new Wording(Locale.forLanguageTag("es-US"), SPANISH, UnitSystem.METRIC));

  private AllWords() {}

  /** Says message, remedy and expectation of a finding; throws if a word or argument lacks. */
  public static void sayInEveryLanguage(Finding finding) {
    for (Wording wording : WORDINGS) {
      wording.say(finding.message());
      wording.say(finding.remedy());
      finding.expected().ifPresent(wording::say);
    }
  }

  private static Map<String, String> words(String language) {
    Map<String, String> words = new HashMap<>();
    try (Stream<Path> files = Files.walk(Path.of("templates", "words"))) {
      for (Path file : files.filter(f -> belongs(f, language)).sorted().toList()) {
        Properties properties = new Properties();
        try (Reader in = Files.newBufferedReader(file)) {
          properties.load(in);
        }
        properties.forEach((key, text) -> words.put((String) key, (String) text));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Map.copyOf(words);
  }

  private static boolean belongs(Path file, String language) {
    String name = file.getFileName().toString();
    boolean inFolder = file.getParent().getFileName().toString().equals(language);
    return name.endsWith(".properties")
        && (inFolder
            || name.equals(language + ".properties")
            || name.endsWith("." + language + ".properties"));
  }
}
