package wallbook.render;

import com.fasterxml.jackson.core.util.ByteArrayBuilder;
import freemarker.cache.ConditionalTemplateConfigurationFactory;
import freemarker.cache.FileExtensionMatcher;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.core.TemplateConfiguration;
import freemarker.template.Configuration;
import freemarker.template.MalformedTemplateNameException;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNotFoundException;
import freemarker.template.TemplateScalarModel;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import wallbook.wording.Wording;

/**
 * Fills templates with view models. A template is strict: whatever is missing, misspelt or can't be
 * printed is a {@link TemplateProblem} with its place. It is shut in: it reads the values of the
 * view model, calls the functions given to it, includes other templates, and reaches nothing else.
 *
 * <p>Every template knows {@code say(key, values)} (see {@link Say}) and {@code anchor(text)},
 * which makes a name for an {@code id} or an {@code href="#..."} of any text. Parsed templates are
 * kept.
 */
final class Templates {
  /** Pieces that every document knows as {@code block}. */
  private static final String BLOCKS = "theme/blocks.ftl";

  private final Configuration engine = new Configuration(Configuration.VERSION_2_3_34);

  private Templates(TemplateSource source, Wording wording, MarkupFormat format) {
    Say say = new Say(wording, format);
    engine.setTemplateLoader(new SourceLoader(source));
    engine.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
    engine.setLocalizedLookup(false);
    engine.setDefaultEncoding("UTF-8");
    engine.setOutputFormat(format);
    engine.setAutoEscapingPolicy(Configuration.FORCE_AUTO_ESCAPING_POLICY);
    engine.setRecognizeStandardFileExtensions(false);
    engine.setInterpolationSyntax(Configuration.DOLLAR_INTERPOLATION_SYNTAX);
    engine.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    engine.setAPIBuiltinEnabled(false);
    engine.setObjectWrapper(new ViewValues(say));
    engine.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    engine.setLogTemplateExceptions(false);
    engine.setWrapUncheckedExceptions(true);
    engine.setLocale(Locale.ROOT);
    engine.setNumberFormat("c");
    engine.setTimeZone(TimeZone.getTimeZone("UTC"));
    engine.setSharedVariable("say", say);
    engine.setSharedVariable(
        "anchor", (TemplateMethodModelEx) arguments -> anchor(arguments, format));
  }

  /** Templates of documents, which are Markdown. */
  static Templates ofDocuments(TemplateSource source, Wording wording) {
    Templates templates = new Templates(source, wording, MarkupFormat.MARKDOWN);
    templates.engine.addAutoImport("block", BLOCKS);
    TemplateConfiguration stylesheets = new TemplateConfiguration();
    stylesheets.setOutputFormat(MarkupFormat.CSS);
    templates.engine.setTemplateConfigurations(
        new ConditionalTemplateConfigurationFactory(new FileExtensionMatcher("css"), stylesheets));
    return templates;
  }

  /** Templates of pages, which are HTML. */
  static Templates ofPages(TemplateSource source, Wording wording) {
    return new Templates(source, wording, MarkupFormat.HTML);
  }

  /**
   * Fills a template.
   *
   * @param name path of the template below the templates folder
   * @param values what the template sees, by name, beside the functions of every template
   */
  String fill(String name, Map<String, ?> values) throws TemplateProblem {
    StringWriter out = new StringWriter();
    fill(name, values, out);
    return out.toString();
  }

  /** The same in UTF-8, for what is large. */
  byte[] filled(String name, Map<String, ?> values) throws TemplateProblem {
    ByteArrayBuilder bytes = new ByteArrayBuilder();
    fill(name, values, new BufferedWriter(new OutputStreamWriter(bytes, StandardCharsets.UTF_8)));
    return bytes.toByteArray();
  }

  private void fill(String name, Map<String, ?> values, Writer out) throws TemplateProblem {
    try {
      Template template = engine.getTemplate(name);
      template.process(new HashMap<>(values), out);
      out.flush();
    } catch (ParseException e) {
      throw problem(
          e.getTemplateName(),
          name,
          e.getLineNumber(),
          e.getColumnNumber(),
          e.getEditorMessage(),
          e);
    } catch (TemplateException e) {
      throw problem(
          e.getTemplateSourceName(),
          name,
          e.getLineNumber(),
          e.getColumnNumber(),
          firstCause(e),
          e);
    } catch (TemplateNotFoundException | MalformedTemplateNameException e) {
      throw new TemplateProblem(name, 0, 0, "there is no such template", e);
    } catch (SourceLoader.Refused e) {
      throw e.problem();
    } catch (IOException e) {
      throw new TemplateProblem(name, 0, 0, "the template can't be read: " + e.getMessage(), e);
    }
  }

  private static TemplateProblem problem(
      String file, String asked, Integer line, Integer column, String text, Exception cause) {
    String place = file == null ? asked : file;
    return new TemplateProblem(
        place, line == null ? 0 : line, column == null ? 0 : column, firstParagraph(text), cause);
  }

  /** The engine wraps what a function of ours says; the innermost says it best. */
  private static String firstCause(TemplateException e) {
    Throwable cause = e;
    while (cause.getCause() instanceof TemplateException
        || cause.getCause() instanceof SourceLoader.Refused) {
      cause = cause.getCause();
    }
    return cause instanceof TemplateException inner
        ? inner.getMessageWithoutStackTop()
        : cause.getMessage();
  }

  /** Drops the engine's tips for programmers. */
  private static String firstParagraph(String message) {
    String text = message == null ? "the template failed" : message;
    int end = text.indexOf("\n----");
    return (end < 0 ? text : text.substring(0, end)).strip().replaceAll("\\s+", " ");
  }

  @SuppressWarnings("rawtypes") // the engine's interface has a raw list
  private static Object anchor(List arguments, MarkupFormat format) throws TemplateModelException {
    if (arguments.size() != 1 || !(arguments.get(0) instanceof TemplateScalarModel text)) {
      throw new TemplateModelException("anchor takes one text");
    }
    return format.ready(Escape.anchor(text.getAsString()));
  }
}
