package wallbook.render;

import freemarker.template.TemplateHashModelEx;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateModelIterator;
import freemarker.template.TemplateNumberModel;
import freemarker.template.TemplateScalarModel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/**
 * The template function {@code say(key)} or {@code say(key, {"name": value})}: the words of a key
 * in the format of the template. In Markdown the words are trusted and may hold marks of their own;
 * what is put in their places is escaped. With a number {@code count} among the values, {@code
 * key.one} or {@code key.other} is said if the words have no plain {@code key}.
 */
final class Say implements TemplateMethodModelEx {
  private static final Pattern PLACE = Pattern.compile("\\{([a-zA-Z][a-zA-Z0-9]*)}");

  private final Wording wording;
  private final MarkupFormat format;
  private final Map<String, Pieces> known = new ConcurrentHashMap<>();

  /**
   * The words of a key, taken apart once.
   *
   * @param words in the format of the template: before, between and behind the places
   * @param places names of the values
   */
  private record Pieces(List<String> words, List<String> places) {}

  Say(Wording wording, MarkupFormat format) {
    this.wording = wording;
    this.format = format;
  }

  @Override
  @SuppressWarnings("rawtypes") // the engine's interface has a raw list
  public Object exec(List arguments) throws TemplateModelException {
    if (arguments.isEmpty()
        || arguments.size() > 2
        || !(arguments.get(0) instanceof TemplateScalarModel key)) {
      throw new TemplateModelException("say takes a key and, if need be, named values");
    }
    Map<String, String> values = new HashMap<>();
    String suffix = "";
    if (arguments.size() == 2) {
      if (!(arguments.get(1) instanceof TemplateHashModelEx named)) {
        throw new TemplateModelException("the second argument of say is {\"name\": value, ...}");
      }
      TemplateModelIterator names = named.keys().iterator();
      while (names.hasNext()) {
        String name = ((TemplateScalarModel) names.next()).getAsString();
        TemplateModel value = named.get(name);
        values.put(name, markup(name, value));
        if (name.equals("count") && value instanceof TemplateNumberModel number) {
          suffix = number.getAsNumber().intValue() == 1 ? ".one" : ".other";
        }
      }
    }
    String plainKey = key.getAsString();
    return fill(wording.knows(plainKey) ? plainKey : plainKey + suffix, values);
  }

  /** A phrase of the view model. */
  Markup phrase(Phrase phrase) throws TemplateModelException {
    Map<String, String> values = new HashMap<>();
    for (Map.Entry<String, Object> argument : phrase.arguments().entrySet()) {
      Object value = argument.getValue();
      values.put(
          argument.getKey(),
          value instanceof Phrase inner
              ? format.getMarkupString(phrase(inner))
              : format.escapePlainText(wording.print(value)));
    }
    return fill(phrase.key(), values);
  }

  /** A quantity, date or number as plain text for the reader. */
  String text(Object value) {
    return wording.print(value);
  }

  private String markup(String name, TemplateModel value) throws TemplateModelException {
    if (value instanceof Markup markup) {
      return format.getMarkupString(markup);
    } else if (value instanceof TemplateScalarModel text) {
      return format.escapePlainText(text.getAsString());
    } else if (value instanceof TemplateNumberModel number) {
      return format.escapePlainText(wording.print(number.getAsNumber()));
    }
    throw new TemplateModelException(
        value == null ? "the value '" + name + "' is missing" : "'" + name + "' can't be printed");
  }

  private Markup fill(String key, Map<String, String> values) throws TemplateModelException {
    if (!wording.knows(key)) {
      throw new TemplateModelException("there are no words for '" + key + "'");
    }
    Pieces pieces = known.computeIfAbsent(key, this::pieces);
    StringBuilder said = new StringBuilder();
    for (int i = 0; i < pieces.places().size(); i++) {
      String name = pieces.places().get(i);
      String value = values.get(name);
      if (value == null) {
        throw new TemplateModelException("the words '" + key + "' need a value '" + name + "'");
      }
      said.append(pieces.words().get(i)).append(value);
    }
    return format.ready(said.append(pieces.words().get(pieces.places().size())).toString());
  }

  private Pieces pieces(String key) {
    String template = wording.template(key);
    Matcher place = PLACE.matcher(template);
    List<String> words = new ArrayList<>();
    List<String> places = new ArrayList<>();
    int end = 0;
    while (place.find()) {
      words.add(format.words(template.substring(end, place.start())));
      places.add(place.group(1));
      end = place.end();
    }
    words.add(format.words(template.substring(end)));
    return new Pieces(List.copyOf(words), List.copyOf(places));
  }
}
