package wallbook.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wallbook.compose.Composition;
import wallbook.record.PrintUnits;
import wallbook.reference.Tables;
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
   * What is computed of the record, without pictures and wishes; empty if it has errors, which are
   * then printed.
   *
   * @throws TemplateProblem if there are no words for the language
   */
  Optional<Composition> compute(Tables tables, Console console) throws TemplateProblem {
    Reading reading = Reading.withoutPictures(record, tables);
    if (reading.job().isEmpty()) {
      reading = Reading.of(record, tables);
    }
    Readers readers = new Readers(language, units, Optional.empty());
    Wording wording = readers.wording(reading.about(), TemplateSource.carried());
    if (reading.job().isEmpty()) {
      FindingPrinter printer = new FindingPrinter(wording);
      printer.print(reading.findings(), console.err());
      console.err().println(printer.summary(reading.findings()));
      console.err().println(wording.say(Phrase.of("inquiry.refused", "file", record)));
      return Optional.empty();
    }
    return Optional.of(Computation.withoutWishes(reading, tables, wording));
  }
}
