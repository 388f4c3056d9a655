package wallbook.cli;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wallbook.compose.Composition;
import wallbook.record.PrintUnits;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** What the commands that ask a record something have in common. */
final class Inquiry {
  @Parameters(index = "0", paramLabel = "RECORD", description = "Job record in YAML.")
  private Path record;

  @Option(
      names = "--language",
      paramLabel = "TAG",
      description = "Language of the answer, such as en-US; usual: the record's.")
  private Optional<String> language = Optional.empty();

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      description = "Units of the answer: ${COMPLETION-CANDIDATES}; usual: the record's.")
  private Optional<PrintUnits> units = Optional.empty();

  /**
   * What is computed of the record; empty if it has errors, which are then printed.
   *
   * @throws TemplateProblem if there are no words for the language
   */
  Optional<Composition> compute(
      Groundwork groundwork, Console console, BiFunction<Reading, Wording, Composition> computation)
      throws TemplateProblem {
    Reading reading = Reading.forAnswer(record, groundwork);
    if (reading.job().isEmpty()) {
      reading = Reading.of(record, groundwork);
    }
    Readers readers = new Readers(language, units, Optional.empty());
    Wording wording = readers.wording(reading.about(), TemplateSource.carried());
    if (reading.job().isEmpty()) {
      new FindingPrinter(wording).printRefusal(reading.findings(), console.err());
      console.err().println(wording.say(Phrase.of("inquiry.refused", "file", record)));
      return Optional.empty();
    }
    return Optional.of(computation.apply(reading, wording));
  }

  /**
   * Gives the other answers there are, unheard, in a call whose classes the launcher keeps: later
   * calls then find prepared what this one had no use for, whatever was asked first.
   *
   * @param answers prints answers about a job
   * @throws TemplateProblem if there are no words for the language
   */
  void rehearse(Groundwork groundwork, BiConsumer<Composition, PrintWriter> answers)
      throws TemplateProblem {
    if (Boolean.getBoolean("wallbook.rehearse")) {
      PrintWriter unheard = new PrintWriter(Writer.nullWriter());
      compute(
              groundwork,
              new Console(unheard, unheard, false),
              (reading, wording) -> Computation.of(reading, groundwork.tables(), wording))
          .ifPresent(whole -> answers.accept(whole, unheard));
    }
  }
}
