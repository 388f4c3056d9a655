package wallbook.render;

import freemarker.core.CommonTemplateMarkupOutputModel;

/** A piece of output that needs no more escaping. */
final class Markup extends CommonTemplateMarkupOutputModel<Markup> {
  private final MarkupFormat format;

  Markup(MarkupFormat format, String plainText, String markup) {
    super(plainText, markup);
    this.format = format;
  }

  @Override
  public MarkupFormat getOutputFormat() {
    return format;
  }
}
