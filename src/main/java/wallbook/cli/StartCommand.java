package wallbook.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wallbook.read.StarterRecord;
import wallbook.record.PrintUnits;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Begins the record of a job. */
@Command(
    name = "start",
    mixinStandardHelpOptions = true,
    description = {
      "Begins a record: job.yaml in a folder named after the job, with the rooms given and",
      "comments on what comes next. A record that is there already is never touched."
    })
final class StartCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(paramLabel = "FOLDER", description = "Folder of the job; made if need be.")
  private Path folder;

  @Option(
      names = "--rooms",
      required = true,
      split = ",",
      paramLabel = "ROOMS",
      description = "Names of the rooms, parted by commas.")
  private List<String> rooms;

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      description = "Units to print: ${COMPLETION-CANDIDATES}; usual: feet and inches.")
  private PrintUnits units = PrintUnits.FEET_AND_INCHES;

  @Option(
      names = "--language",
      paramLabel = "TAG",
      description = "Language of the comments and documents, such as en-US.")
  private Optional<String> language = Optional.empty();

  StartCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws TemplateProblem, IOException {
    Wording wording =
        new Readers(language, Optional.of(units), Optional.empty())
            .wording(Optional.empty(), TemplateSource.carried());
    Path record = folder.resolve("job.yaml");
    if (Files.exists(record)) {
      console.err().println(wording.say(Phrase.of("start.there-already", "file", record)));
      return ExitCode.FAILED;
    }
    String job = folder.toAbsolutePath().normalize().getFileName().toString();
    List<String> names = rooms.stream().map(String::strip).filter(r -> !r.isEmpty()).toList();
    Files.createDirectories(folder);
    WholeFile.write(
        record, StarterRecord.text(job, names, units, wording).getBytes(StandardCharsets.UTF_8));
    console.out().println(wording.say(Phrase.of("start.done", "file", record)));
    return ExitCode.CLEAN;
  }
}
