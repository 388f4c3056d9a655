package wallbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import wallbook.record.Paper;
import wallbook.record.PrintUnits;
import wallbook.render.TemplateSource;

/** What a command that prints may be told about its readers, and the templates to print from. */
final class ReaderOptions {
  @Option(
      names = "--language",
      paramLabel = "TAG",
      description = "Language to print in, such as en-US; usual: the record's.")
  private Optional<String> language = Optional.empty();

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      description = "Units to print: ${COMPLETION-CANDIDATES}; usual: the record's.")
  private Optional<PrintUnits> units = Optional.empty();

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      description = "Paper to lay out for: ${COMPLETION-CANDIDATES}; usual: by the units.")
  private Optional<Paper> paper = Optional.empty();

  @Option(
      names = "--templates",
      paramLabel = "FOLDER",
      description = "Folder whose files take the place of the program's own of the same name.")
  private Optional<Path> templates = Optional.empty();

  Readers readers() {
    return new Readers(language, units, paper);
  }

  /**
   * The program's templates, under those of the folder that the command names.
   *
   * @throws IOException if there is no such folder
   */
  TemplateSource templates() throws IOException {
    return templates.isPresent()
        ? TemplateSource.overriddenBy(templates.get())
        : TemplateSource.carried();
  }
}
