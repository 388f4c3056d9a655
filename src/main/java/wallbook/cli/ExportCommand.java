package wallbook.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wallbook.read.ScheduleWriter;
import wallbook.reference.Tables;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Writes the lists of a record as schedules for a spreadsheet. */
@Command(
    name = "export",
    mixinStandardHelpOptions = true,
    description = {
      "Writes every list of a record as a schedule for a spreadsheet: <list>.csv, comma-separated,",
      "UTF-8. With errors in the record nothing is written. Files of the same name are replaced."
    })
final class ExportCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(paramLabel = "RECORD", description = "Job record in YAML.")
  private Path record;

  @Option(
      names = "--into",
      required = true,
      paramLabel = "FOLDER",
      description = "Folder for the schedules; made if need be.")
  private Path into;

  ExportCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws TemplateProblem, IOException {
    Reading reading = Reading.of(record, new Tables());
    Wording wording = Readers.OF_THE_RECORD.wording(reading.about(), TemplateSource.carried());
    if (reading.job().isEmpty()) {
      new FindingPrinter(wording).printRefusal(reading.findings(), console.err());
      return reading.exitCode();
    }
    Files.createDirectories(into);
    for (ScheduleWriter.Schedule schedule : ScheduleWriter.all(reading.job().get().record())) {
      Path file = into.resolve(schedule.list() + ".csv");
      WholeFile.write(file, schedule.text().getBytes(StandardCharsets.UTF_8));
      console.out().println(wording.say(Phrase.of("export.done", "file", file)));
    }
    return ExitCode.CLEAN;
  }
}
