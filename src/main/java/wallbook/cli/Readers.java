package wallbook.cli;

import java.util.Locale;
import java.util.Optional;
import wallbook.compose.Issue;
import wallbook.record.Job;
import wallbook.record.Paper;
import wallbook.record.PrintUnits;
import wallbook.render.DocumentFacts;
import wallbook.render.PaperSize;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.render.WordsFiles;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

/** What the readers of a package are given: language, units and paper, by command or by record. */
record Readers(Optional<String> language, Optional<PrintUnits> units, Optional<Paper> paper) {
  private static final String USUAL_LANGUAGE = "en-US";

  /** Readers as the record has them. */
  static final Readers OF_THE_RECORD =
      new Readers(Optional.empty(), Optional.empty(), Optional.empty());

  /**
   * Words and units for the readers of a job; of messages, if there is no job.
   *
   * @throws TemplateProblem if there are no words for the language
   */
  Wording wording(Optional<Job> job, TemplateSource templates) throws TemplateProblem {
    String tag = language.or(() -> job.flatMap(j -> j.facts().language())).orElse(USUAL_LANGUAGE);
    Locale locale = Locale.forLanguageTag(tag);
    return new Wording(locale, WordsFiles.read(templates, locale), unitSystem(job));
  }

  /**
   * Words for messages about a record: in its language, or in English if there are no words for it,
   * so that a slip in the language itself can be told.
   *
   * @throws TemplateProblem if there are no words for a language that the command asks for
   */
  Wording messages(Optional<Job> job, TemplateSource templates) throws TemplateProblem {
    Optional<String> wanted = language.or(() -> job.flatMap(j -> j.facts().language()));
    boolean known =
        wanted.isEmpty()
            || language.isPresent()
            || WordsFiles.know(templates, Locale.forLanguageTag(wanted.get()));
    Readers readers = known ? this : new Readers(Optional.of(USUAL_LANGUAGE), units, paper);
    return readers.wording(job, templates);
  }

  /**
   * Paper for the readers of a job: Letter where feet and inches are printed, unless it says so.
   */
  Paper paper(Job job) {
    return paper
        .or(() -> job.facts().paper())
        .orElseGet(
            () -> unitSystem(Optional.of(job)) == UnitSystem.METRIC ? Paper.A4 : Paper.LETTER);
  }

  /** What is printed on and recorded in a document of a job that passed the checks. */
  DocumentFacts facts(Job job, Wording wording, String titleKey) {
    return new DocumentFacts(
        job.facts().title(),
        wording.say(titleKey),
        wording.locale().toLanguageTag(),
        Integer.toString(job.facts().revision()),
        Issue.date(job.facts()).orElseThrow(),
        paper(job) == Paper.A4 ? PaperSize.A4 : PaperSize.LETTER,
        Version.number(),
        job.facts().invented().orElse(false));
  }

  private UnitSystem unitSystem(Optional<Job> job) {
    PrintUnits chosen =
        units.or(() -> job.flatMap(j -> j.facts().units())).orElse(PrintUnits.FEET_AND_INCHES);
    return chosen == PrintUnits.METRIC ? UnitSystem.METRIC : UnitSystem.FEET_AND_INCHES;
  }
}
