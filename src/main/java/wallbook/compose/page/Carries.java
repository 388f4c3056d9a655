package wallbook.compose.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.assess.outlook.Prospect;
import wallbook.assess.outlook.ServiceFamily;
import wallbook.compose.Describe;
import wallbook.compose.Speech;
import wallbook.compose.result.Extremes;
import wallbook.compose.result.Results;
import wallbook.compose.result.SourceList;
import wallbook.quantity.Quantity;
import wallbook.reference.Source;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Puts what a cable or conduit could carry into words. */
final class Carries {
  private final Wording wording;
  private final Describe describe;
  private final Speech speech;
  private final Notes notes;
  private final Results results;

  Carries(Wording wording, Describe describe, Notes notes) {
    this.wording = wording;
    this.describe = describe;
    this.speech = new Speech(wording, describe);
    this.notes = notes;
    this.results = new Results(wording, new SourceList());
  }

  List<CarryView> of(List<Prospect> prospects) {
    return prospects.stream().map(this::of).toList();
  }

  /** The answer with the key of its sign. */
  Sign verdict(Prospect prospect) {
    return new Sign(key(prospect.verdict()), speech.answer(prospect.verdict()));
  }

  Optional<String> margin(Prospect prospect) {
    return results.margin(prospect.decisive());
  }

  private CarryView of(Prospect prospect) {
    Assessment decisive = prospect.decisive();
    List<String> numbers = new ArrayList<>();
    decisive.limitedBy().ifPresent(limit -> note(numbers, "limited-by", wording.say(limit)));
    notes(numbers, "missing", decisive.missing().stream());
    List<Phrase> conditions =
        prospect.bases().stream().flatMap(b -> b.conditions().stream()).toList();
    notes(numbers, "conditions", conditions.stream());
    notes(
        numbers,
        "assumptions",
        prospect.bases().stream()
            .flatMap(b -> b.assumptions().stream())
            .filter(assumption -> !conditions.contains(assumption)));
    if (prospect.verdict() != Verdict.BEYOND) {
      notes(numbers, "adds", Stream.concat(prospect.first().stream(), prospect.adds().stream()));
      note(numbers, "by", by(prospect));
    }
    prospect.bases().stream()
        .map(Assessment::source)
        .distinct()
        .forEach(source -> note(numbers, "source", source(source)));
    return new CarryView(
        speech.capital(wording.say(prospect.name())),
        verdict(prospect),
        brief(prospect),
        prospect.family() == ServiceFamily.CABLE ? Optional.empty() : figures(decisive),
        numbers);
  }

  private void notes(List<String> numbers, String term, Stream<Phrase> phrases) {
    phrases.map(wording::say).distinct().forEach(text -> note(numbers, term, text));
  }

  private void note(List<String> numbers, String term, String text) {
    numbers.add(notes.number(term, text));
  }

  /** Cables that fit are counted by the stricter of the rules that were asked. */
  private Optional<String> brief(Prospect prospect) {
    if (prospect.family() == ServiceFamily.CABLE) {
      return Extremes.least(prospect.bases())
          .flatMap(Assessment::value)
          .map(count -> say("page.more", "count", count));
    }
    return margin(prospect).map(margin -> say("page.margin", "margin", margin));
  }

  private Optional<String> figures(Assessment basis) {
    Optional<Quantity> value = basis.value();
    if (value.isEmpty()) {
      return basis.limit().map(limit -> say("page.figures.limit", "limit", limit));
    }
    return Optional.of(
        basis.limit().isPresent() && basis.margin().isPresent()
            ? say(
                "page.figures.all",
                "value",
                value.get(),
                "limit",
                basis.limit().get(),
                "margin",
                results.margin(basis).orElseThrow())
            : wording.print(value.get()));
  }

  private String by(Prospect prospect) {
    return say(
        "page.by",
        "who",
        speech.who(prospect.everyone()),
        "effort",
        describe.word(prospect.effort()));
  }

  private String source(Source source) {
    return say(
        "page.source",
        "citation",
        source.citation(),
        "standing",
        wording.say("standing." + key(source.standing())));
  }

  private static String key(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
