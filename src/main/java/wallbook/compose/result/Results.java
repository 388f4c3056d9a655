package wallbook.compose.result;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Quantity;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Puts assessments into words for one document. */
public final class Results {
  private static final String MINUS = "−";

  private final Wording wording;
  private final SourceList sources;

  /**
   * @param sources of the document; whatever is put into words is added to them
   */
  public Results(Wording wording, SourceList sources) {
    this.wording = wording;
    this.sources = sources;
  }

  /** An assessment in words. */
  public ResultView view(Assessment assessment) {
    return new ResultView(
        wording.say(assessment.asked()),
        verdict(assessment.verdict()),
        assessment.value().map(wording::print),
        assessment.limit().map(wording::print),
        assessment.margin().map(this::margin),
        assessment.limitedBy().map(wording::say),
        said(assessment.assumptions()),
        said(assessment.missing()),
        source(assessment));
  }

  /**
   * An assessment in one line: value, limit, margin, answer and source; without a limit the value,
   * without a value what decides.
   */
  public String line(Assessment assessment) {
    ResultView view = view(assessment);
    if (view.margin().isPresent()) {
      return wording.say(
          Phrase.of(
              "result.line.judged",
              "asked",
              view.asked(),
              "value",
              view.value().orElse(""),
              "limit",
              view.limit().orElse(""),
              "margin",
              view.margin().get(),
              "verdict",
              view.verdict(),
              "source",
              view.source()));
    }
    if (assessment.verdict() == Verdict.INFORMATION && view.value().isPresent()) {
      return wording.say(
          Phrase.of(
              "result.line.value",
              "asked",
              view.asked(),
              "value",
              view.value().get(),
              "source",
              view.source()));
    }
    String decides =
        view.limitedBy()
            .orElseGet(
                () ->
                    wording.say(
                        Phrase.of("result.missing", "missing", String.join("; ", view.missing()))));
    return wording.say(
        Phrase.of(
            "result.line.plain",
            "asked",
            view.asked(),
            "verdict",
            view.verdict(),
            "decides",
            decides,
            "source",
            view.source()));
  }

  /** A verdict as an answer, such as "yes, under conditions". */
  public String verdict(Verdict verdict) {
    return wording.say("verdict." + verdict.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  /** A margin with its sign. */
  public String margin(Quantity margin) {
    String printed = wording.print(margin);
    boolean zero = printed.chars().noneMatch(c -> (c >= '1' && c <= '9') || c == '½');
    return zero || printed.startsWith(MINUS) ? printed : "+" + printed;
  }

  /** The margin of an assessment, where it has one. */
  public Optional<String> margin(Assessment assessment) {
    return assessment.margin().map(this::margin);
  }

  /** Number of the source of an assessment. */
  public String source(Assessment assessment) {
    return sources.number(assessment.source());
  }

  private List<String> said(List<Phrase> phrases) {
    return phrases.stream().map(wording::say).distinct().toList();
  }
}
