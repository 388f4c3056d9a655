package wallbook.wording;

import java.io.IOException;
import java.io.Reader;
import java.util.HashMap;
import java.util.Map;
import java.util.Properties;

/** Reads a words file: lines of {@code key=text} in the form of Java properties, in UTF-8. */
public final class WordsFile {
  private WordsFile() {}

  /** The texts by key. */
  public static Map<String, String> read(Reader in) throws IOException {
    Properties properties = new Properties();
    properties.load(in);
    Map<String, String> words = new HashMap<>();
    properties.stringPropertyNames().forEach(key -> words.put(key, properties.getProperty(key)));
    return words;
  }
}
