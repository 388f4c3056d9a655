package wallbook.assess;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import wallbook.wording.Phrase;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;
import wallbook.wording.WordsFile;

/** The words of one part of the program in one language, for tests. */
public final class PartWords {
  private static final Pattern ARGUMENT = Pattern.compile("\\{[a-zA-Z0-9]+}");

  private PartWords() {}

  /** Texts by key of, say, {@code fibre.en}. */
  public static Map<String, String> of(String part) {
    String[] name = part.split("\\.");
    String file = "/templates/words/" + name[1] + "/" + name[0] + ".properties";
    try (InputStream in = PartWords.class.getResourceAsStream(file)) {
      return WordsFile.read(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(file, e);
    }
  }

  /** The names in braces of a text. */
  public static Set<String> arguments(String text) {
    return ARGUMENT
        .matcher(text)
        .results()
        .map(MatchResult::group)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /**
   * Says every phrase in the words of a part and those that join clauses; one without words or with
   * an argument missing throws.
   */
  public static List<String> say(String part, Locale locale, UnitSystem units, List<Phrase> all) {
    Map<String, String> words = new HashMap<>(of(part));
    words.putAll(of("assess." + part.substring(part.indexOf('.') + 1)));
    Wording wording = new Wording(locale, words, units);
    return all.stream().map(wording::say).toList();
  }
}
