package wallbook.render;

import java.io.IOException;
import java.io.StringReader;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads the words of one language: {@code words/<language>.properties} and all properties files of
 * the folder {@code words/<language>}, in UTF-8. For {@code en-GB}, the words of {@code en} come
 * first and those of {@code en-GB} replace them. So another language is one file.
 */
public final class WordsFiles {
  private WordsFiles() {}

  /**
   * The language whose words the program carries whole and every other language is held against.
   */
  private static final String MODEL = "en";

  private static final int MOST_NAMED = 12;

  /** The program's own words by language or language and region; they can't change. */
  private static final Map<String, Map<String, String>> CARRIED = new HashMap<>();

  private static final Pattern ARGUMENT = Pattern.compile("\\{([a-zA-Z][a-zA-Z0-9]*)}");

  /**
   * @return the words by key
   * @throws TemplateProblem if the language has no words, lacks some, or asks for a value that the
   *     English words don't have; if a file is broken, or two files of one language have the same
   *     key
   */
  public static Map<String, String> read(TemplateSource source, Locale locale)
      throws TemplateProblem {
    Map<String, String> words = found(source, locale);
    if (words.isEmpty()) {
      throw new TemplateProblem(
          file(locale), "there are no words for " + locale.toLanguageTag() + ": no such file");
    }
    check(words, of(TemplateSource.carried(), MODEL), locale);
    return words;
  }

  /** Whether there are words for a language. */
  public static boolean know(TemplateSource source, Locale locale) throws TemplateProblem {
    return !found(source, locale).isEmpty();
  }

  private static Map<String, String> found(TemplateSource source, Locale locale)
      throws TemplateProblem {
    Map<String, String> words = new LinkedHashMap<>(of(source, locale.getLanguage()));
    if (!locale.toLanguageTag().equals(locale.getLanguage())) {
      words.putAll(of(source, locale.toLanguageTag()));
    }
    return words;
  }

  private static void check(Map<String, String> words, Map<String, String> model, Locale locale)
      throws TemplateProblem {
    SortedSet<String> missing = new TreeSet<>(model.keySet());
    missing.removeAll(words.keySet());
    if (!missing.isEmpty()) {
      String named = missing.stream().limit(MOST_NAMED).collect(Collectors.joining(", "));
      throw new TemplateProblem(
          file(locale),
          missing.size()
              + " of the keys that English has are missing: "
              + named
              + (missing.size() > MOST_NAMED ? ", …" : ""));
    }
    for (Map.Entry<String, String> word : model.entrySet()) {
      if (words.get(word.getKey()).equals(word.getValue())) {
        continue;
      }
      Set<String> odd = arguments(words.get(word.getKey()));
      odd.removeAll(arguments(word.getValue()));
      if (!odd.isEmpty()) {
        throw new TemplateProblem(
            file(locale), "'%s' has no value {%s}".formatted(word.getKey(), odd.iterator().next()));
      }
    }
  }

  private static Set<String> arguments(String text) {
    return ARGUMENT
        .matcher(text)
        .results()
        .map(match -> match.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String file(Locale locale) {
    return "words/" + locale.getLanguage() + ".properties";
  }

  private static Map<String, String> of(TemplateSource source, String tag) throws TemplateProblem {
    if (!source.isCarried()) {
      return load(source, tag);
    }
    synchronized (CARRIED) {
      Map<String, String> words = CARRIED.get(tag);
      if (words == null) {
        words = load(source, tag);
        CARRIED.put(tag, words);
      }
      return words;
    }
  }

  private static Map<String, String> load(TemplateSource source, String tag)
      throws TemplateProblem {
    SortedSet<String> paths = new TreeSet<>(source.list("words/" + tag, ".properties"));
    paths.addAll(source.list("words/parts", "." + tag + ".properties"));
    paths.add("words/" + tag + ".properties");
    Map<String, String> words = new LinkedHashMap<>();
    Map<String, String> files = new LinkedHashMap<>();
    for (String path : paths) {
      Properties file = load(path, source.find(path).orElse(""));
      for (String key : new TreeSet<>(file.stringPropertyNames())) {
        String other = files.put(key, path);
        if (other != null) {
          throw new TemplateProblem(path, "'" + key + "' is in " + other + " too");
        }
        words.put(key, file.getProperty(key));
      }
    }
    return words;
  }

  private static Properties load(String path, String text) throws TemplateProblem {
    Properties file = new Properties();
    try {
      file.load(new StringReader(text));
      return file;
    } catch (IOException | IllegalArgumentException e) {
      throw new TemplateProblem(path, 0, 0, "the words can't be read: " + e.getMessage(), e);
    }
  }
}
