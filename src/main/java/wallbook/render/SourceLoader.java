package wallbook.render;

import freemarker.cache.TemplateLoader;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Gives the template engine the files of a {@link TemplateSource}. */
final class SourceLoader implements TemplateLoader {
  /** What would let a record's text act as a template or go out unescaped. */
  private static final Pattern REFUSED =
      Pattern.compile(
          "\\?\\s*(eval|eval_json|interpret|no_esc)\\b"
              + "|<#(noautoesc|noescape|outputformat|setting)\\b"
              + "|<#ftl\\b[^>]*\\b(output_format|auto_esc)\\b");

  private final TemplateSource source;

  SourceLoader(TemplateSource source) {
    this.source = source;
  }

  @Override
  public Object findTemplateSource(String name) throws IOException {
    try {
      Optional<String> text = source.find(name);
      if (text.isEmpty()) {
        return null;
      }
      checkAllowed(name, text.get());
      return new Loaded(name, text.get());
    } catch (TemplateProblem e) {
      throw new Refused(e);
    }
  }

  @Override
  public long getLastModified(Object templateSource) {
    return 0;
  }

  @Override
  public Reader getReader(Object templateSource, String encoding) {
    return new StringReader(((Loaded) templateSource).text());
  }

  @Override
  public void closeTemplateSource(Object templateSource) {}

  private static void checkAllowed(String name, String text) throws TemplateProblem {
    Matcher refused = REFUSED.matcher(text);
    if (refused.find()) {
      String before = text.substring(0, refused.start());
      int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
      int column = before.length() - before.lastIndexOf('\n');
      String what = refused.group().strip();
      throw new TemplateProblem(name, line, column, "a template can't use " + what, null);
    }
  }

  private record Loaded(String name, String text) {}

  /** Carries a problem through the engine, which knows only I/O exceptions here. */
  static final class Refused extends IOException {
    private static final long serialVersionUID = 1L;
    private final TemplateProblem problem;

    Refused(TemplateProblem problem) {
      super(problem.getMessage(), problem);
      this.problem = problem;
    }

    TemplateProblem problem() {
      return problem;
    }
  }
}
