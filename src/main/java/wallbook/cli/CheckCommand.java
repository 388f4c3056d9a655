package wallbook.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import wallbook.reference.Tables;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
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
  private final Console console;

  @Parameters(paramLabel = "RECORD", arity = "1..*", description = "Job record in YAML.")
  private List<Path> records;

  CheckCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws TemplateProblem {
    Tables tables = new Tables();
    int worst = ExitCode.CLEAN;
    for (Path record : records) {
      Reading reading = Reading.of(record, tables);
      Wording wording = Readers.OF_THE_RECORD.wording(reading.about(), TemplateSource.carried());
      FindingPrinter printer = new FindingPrinter(wording);
      printer.print(reading.findings(), console.out());
      console.out().println(record + ": " + printer.summary(reading.findings()));
      worst = Math.max(worst, reading.exitCode());
    }
    return worst;
  }
}
