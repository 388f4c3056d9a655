package wallbook.render;

import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateScalarModel;
import java.io.IOException;
import java.io.StringReader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wallbook.render.press.StyleProblem;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/**
 * The look of all documents: measures and colours from one file, joined to the stylesheet.
 *
 * <p>A stylesheet is filled like any template; it knows {@code measure("name")}, a value of the
 * measures file, and {@code counters("key")}, words with {@code {page}} and {@code {pages}} in them
 * as the value of a {@code content} property.
 */
final class Theme {
  /** Measures and colours, below the templates folder. */
  static final String MEASURES = "theme/theme.properties";

  static final String STYLESHEET = "theme/print.css";
  private static final Pattern SAFE = Pattern.compile("[#A-Za-z0-9 .,%\"'-]+");
  private static final Pattern COUNTER = Pattern.compile("\\{(page|pages)}");

  private final Map<String, String> measures = new LinkedHashMap<>();
  private final TemplateSource source;
  private final Templates templates;
  private final Wording wording;
  private final HouseStyle style;

  Theme(TemplateSource source, Templates templates, Wording wording, HouseStyle style)
      throws TemplateProblem {
    this.source = source;
    this.templates = templates;
    this.wording = wording;
    this.style = style;
    Properties file = new Properties();
    try {
      file.load(new StringReader(source.read(MEASURES)));
    } catch (IOException | IllegalArgumentException e) {
      throw new TemplateProblem(MEASURES, 0, 0, "the measures can't be read: " + e.getMessage(), e);
    }
    for (String name : file.stringPropertyNames()) {
      String value = file.getProperty(name).strip();
      if (!SAFE.matcher(value).matches()) {
        throw new TemplateProblem(MEASURES, "'" + name + "' is no measure or colour: " + value);
      }
      measures.put(name, value);
    }
    style
        .accent()
        .ifPresent(
            accent -> {
              measures.put("accent", accent.colour().toString());
              measures.put("accent-tint", accent.ground().toString());
            });
  }

  /** A mistake of the stylesheet, with its line in the file where the file has it just once. */
  TemplateProblem problem(StyleProblem problem) throws TemplateProblem {
    String file = source.read(STYLESHEET);
    int at = problem.near().isEmpty() ? -1 : file.indexOf(problem.near());
    boolean found = at >= 0 && file.indexOf(problem.near(), at + 1) < 0;
    int line = found ? (int) file.substring(0, at).chars().filter(c -> c == '\n').count() + 1 : 0;
    int column = found ? at - file.lastIndexOf('\n', at) : 0;
    return new TemplateProblem(STYLESHEET, line, column, problem.getMessage(), problem);
  }

  /** The stylesheet of one document. */
  String stylesheet(DocumentHead head, DocumentFacts facts) throws TemplateProblem {
    PaperSize paper = facts.paper();
    Phrase revision =
        Phrase.of("theme.revision-and-date", "revision", facts.revision(), "date", facts.issued());
    return templates.fill(
        STYLESHEET,
        Map.of(
            "measure",
            (TemplateMethodModelEx) this::measure,
            "counters",
            (TemplateMethodModelEx) this::counters,
            "width",
            MarkupFormat.CSS.ready(head.landscape() ? paper.longSide() : paper.shortSide()),
            "height",
            MarkupFormat.CSS.ready(head.landscape() ? paper.shortSide() : paper.longSide()),
            "job",
            facts.jobTitle(),
            "head",
            head,
            "revision",
            wording.say(revision),
            "footer",
            style.footer().orElse(""),
            "invented",
            facts.invented() ? wording.say("theme.invented") : ""));
  }

  @SuppressWarnings("rawtypes") // the engine's interface has a raw list
  private Object measure(List arguments) throws TemplateModelException {
    String value = measures.get(only(arguments));
    if (value == null) {
      throw new TemplateModelException("'" + only(arguments) + "' is not in " + MEASURES);
    }
    return MarkupFormat.CSS.ready(value);
  }

  @SuppressWarnings("rawtypes") // the engine's interface has a raw list
  private Object counters(List arguments) throws TemplateModelException {
    String key = only(arguments);
    if (!wording.knows(key)) {
      throw new TemplateModelException("there are no words for '" + key + "'");
    }
    Matcher counter = COUNTER.matcher(wording.template(key));
    StringBuilder content = new StringBuilder();
    int end = 0;
    while (counter.find()) {
      appendText(content, wording.template(key).substring(end, counter.start()));
      content.append("counter(").append(counter.group(1)).append(") ");
      end = counter.end();
    }
    appendText(content, wording.template(key).substring(end));
    return MarkupFormat.CSS.ready(content.toString());
  }

  private static void appendText(StringBuilder content, String text) {
    if (!text.isEmpty()) {
      content.append('"').append(Escape.css(text)).append("\" ");
    }
  }

  @SuppressWarnings("rawtypes")
  private static String only(List arguments) throws TemplateModelException {
    if (arguments.size() == 1 && arguments.get(0) instanceof TemplateScalarModel name) {
      return name.getAsString();
    }
    throw new TemplateModelException("one name is wanted here");
  }
}
