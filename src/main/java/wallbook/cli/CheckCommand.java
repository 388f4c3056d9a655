package wallbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wallbook.finding.Finding;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.render.data.FindingsJson;
import wallbook.render.data.SarifReport;
import wallbook.wording.Wording;

/** Says everything that is still wrong with a record, gravest first. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = {
      "Says everything that is still wrong with a record, what blocks a handover first:",
      "where it stands, what was found, what was expected, how to mend it. Writes nothing."
    })
final class CheckCommand implements Callable<Integer> {
  /** How findings are printed. */
  enum Form {
    /** For a person. */
    TEXT,
    /** An array of objects. */
    JSON,
    /** SARIF 2.1.0, for editors and code hosts. */
    SARIF
  }

  private final Console console;
  private final Groundwork groundwork;

  @Parameters(paramLabel = "RECORD", arity = "1..*", description = "Job record in YAML.")
  private List<Path> records;

  @Option(
      names = "--form",
      paramLabel = "FORM",
      description = "How findings are printed: ${COMPLETION-CANDIDATES}; usual: text.")
  private Form form = Form.TEXT;

  @Option(
      names = "--language",
      paramLabel = "TAG",
      description = "Language of the messages, such as es-MX; usual: the record's.")
  private Optional<String> language = Optional.empty();

  @Option(
      names = "--watch",
      description =
          "Check again whenever a record is saved, or a file it names, until interrupted.")
  private boolean watch;

  CheckCommand(Console console, Groundwork groundwork) {
    this.console = console;
    this.groundwork = groundwork;
  }

  @Override
  public Integer call() throws TemplateProblem, IOException, InterruptedException {
    if (!watch) {
      return checkAll(new HashSet<>());
    }
    try (SourceWatch saves = new SourceWatch(Sources.files(records))) {
      while (true) {
        Set<Path> files = new HashSet<>(records);
        checkAll(files);
        saves.follow(Sources.files(files));
        saves.awaitSave();
      }
    }
  }

  /**
   * @param named takes the files that the records name
   */
  private int checkAll(Set<Path> named) throws TemplateProblem {
    int worst = ExitCode.CLEAN;
    List<Finding> all = new ArrayList<>();
    Wording wording = wording(Optional.empty());
    for (Path record : records) {
      Reading reading = Reading.of(record, groundwork);
      reading.about().map(job -> Sources.named(record, job)).ifPresent(named::addAll);
      wording = wording(Optional.of(reading));
      all.addAll(reading.findings());
      if (form == Form.TEXT) {
        FindingPrinter printer = new FindingPrinter(wording);
        printer.print(reading.findings(), console.out());
        console.out().println(record + ": " + printer.summary(reading.findings()));
      }
      worst = Math.max(worst, reading.exitCode());
    }
    switch (form) {
      case JSON -> console.out().print(new FindingsJson(wording).text(all));
      case SARIF -> console.out().print(new SarifReport(wording, Version.number()).text(all));
      case TEXT -> {
        // printed record by record above
      }
    }
    console.out().flush();
    return worst;
  }

  private Wording wording(Optional<Reading> reading) throws TemplateProblem {
    Readers readers = new Readers(language, Optional.empty(), Optional.empty());
    return readers.messages(reading.flatMap(Reading::about), TemplateSource.carried());
  }
}
