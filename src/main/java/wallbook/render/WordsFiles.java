package wallbook.render;

import java.io.IOException;
import java.io.StringReader;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Reads the words of one language: {@code words/<language>.properties} and all properties files of
 * the folder {@code words/<language>}, in UTF-8. For {@code en-GB}, the words of {@code en} come
 * first and those of {@code en-GB} replace them.
 */
public final class WordsFiles {
  private WordsFiles() {}

  /**
   * @return the words by key
   * @throws TemplateProblem if the language has no words, a file is broken, or two files of one
   *     language have the same key
   */
  public static Map<String, String> read(TemplateSource source, Locale locale)
      throws TemplateProblem {
    Map<String, String> words = new LinkedHashMap<>(of(source, locale.getLanguage()));
    if (!locale.toLanguageTag().equals(locale.getLanguage())) {
      words.putAll(of(source, locale.toLanguageTag()));
    }
    if (words.isEmpty()) {
      throw new TemplateProblem("words", "there are no words for " + locale.toLanguageTag());
    }
    return words;
  }

  private static Map<String, String> of(TemplateSource source, String tag) throws TemplateProblem {
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
