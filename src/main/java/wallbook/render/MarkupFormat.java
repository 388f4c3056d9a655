package wallbook.render;

import freemarker.core.CommonMarkupOutputFormat;
import java.io.IOException;
import java.io.Writer;
import java.util.function.UnaryOperator;

/** An output format of the template engine that escapes every printed value in one way. */
final class MarkupFormat extends CommonMarkupOutputFormat<Markup> {
  /** Markdown with raw HTML in it. */
  static final MarkupFormat MARKDOWN =
      new MarkupFormat(
          "wallbook-markdown", "text/markdown", Escape::markdown, UnaryOperator.identity());

  /** A page of HTML. */
  static final MarkupFormat HTML =
      new MarkupFormat("wallbook-html", "text/html", Escape::html, Escape::html);

  /** A stylesheet, whose values stand in strings. */
  static final MarkupFormat CSS =
      new MarkupFormat("wallbook-css", "text/css", Escape::css, Escape::css);

  private final String name;
  private final String mimeType;
  private final UnaryOperator<String> escape;
  private final UnaryOperator<String> words;

  private MarkupFormat(
      String name, String mimeType, UnaryOperator<String> escape, UnaryOperator<String> words) {
    this.name = name;
    this.mimeType = mimeType;
    this.escape = escape;
    this.words = words;
  }

  /** Output that is in this format already. */
  Markup ready(String markup) {
    return new Markup(this, null, markup);
  }

  /** Text of a words file in this format; in Markdown it may hold marks of its own. */
  String words(String text) {
    return words.apply(text);
  }

  @Override
  public String getName() {
    return name;
  }

  @Override
  public String getMimeType() {
    return mimeType;
  }

  @Override
  public void output(String plainText, Writer out) throws IOException {
    out.write(escape.apply(plainText));
  }

  @Override
  public String escapePlainText(String plainText) {
    return escape.apply(plainText);
  }

  @Override
  public boolean isLegacyBuiltInBypassed(String builtInName) {
    return false;
  }

  @Override
  protected Markup newTemplateMarkupOutputModel(String plainText, String markup) {
    return new Markup(this, plainText, markup);
  }
}
