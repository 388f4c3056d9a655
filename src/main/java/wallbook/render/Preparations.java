package wallbook.render;

import java.util.Locale;

/**
 * Makes ahead what is the same for every record and is kept, so that one processor can do that
 * while another one reads. Whoever needs it makes it all the same if it is not there.
 */
public final class Preparations {
  private Preparations() {}

  /** The words of the language that all others are held against. */
  public static void words() {
    try {
      WordsFiles.read(TemplateSource.carried(), Locale.ENGLISH);
    } catch (TemplateProblem e) {
      // Told by whoever reads the words to use them.
      return;
    }
  }

  /** What documents are made with: words, fonts, the reader of Markdown. */
  public static void documents() {
    words();
    for (Face face : Face.values()) {
      Fonts.typeface(face);
    }
    Markdown.toHtml("");
  }
}
