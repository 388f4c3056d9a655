package wallbook.render;

import freemarker.core.CommonMarkupOutputFormat;
import java.io.IOException;
import java.io.Writer;
import java.util.function.UnaryOperator;

/** An output format of the template engine that escapes every printed value in one way. */
final class MarkupFormat extends CommonMarkupOutputFormat<Markup> {
  /** Markdown with raw HTML in it. */
  static final MarkupFormat MARKDOWN =
      new MarkupFormat("wallbook-markdown", "text/markdown", Escape::markdown);

  /** A stylesheet, whose values stand in strings. */
  static final MarkupFormat CSS = new MarkupFormat("wallbook-css", "text/css", Escape::css);

  private final String name;
  private final String mimeType;
  private final UnaryOperator<String> escape;

  private MarkupFormat(String name, String mimeType, UnaryOperator<String> escape) {
    this.name = name;
    this.mimeType = mimeType;
    this.escape = escape;
  }

  /** Output that is in this format already. */
  Markup ready(String markup) {
    return new Markup(this, null, markup);
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
