package wallbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wallbook.render.CarriedRecord;
import wallbook.render.PdfSeal;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Gets the job record back out of a document that carries it. */
@Command(
    name = "recover",
    mixinStandardHelpOptions = true,
    description = {
      "Gets the job record back out of a PDF or the offline page of a package, and says whether that",
      "document was altered since it was made. Full sweeps that the record names come back beside",
      "it from a PDF. Documents that leave the household carry an extract, which says so.",
      "Exit codes: 0 recovered and intact, 1 recovered but the document was altered or carries",
      "no seal, 2 there is no record in it (nothing written)."
    })
final class RecoverCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(paramLabel = "DOCUMENT", description = "A PDF or the offline page of a package.")
  private Path document;

  @Option(
      names = "--into",
      paramLabel = "FILE",
      description = "File to write; must not be there yet. Usual: job.yaml here.")
  private Path into = Path.of("job.yaml");

  @Option(
      names = "--password-file",
      paramLabel = "FILE",
      description = "File whose first line opens a locked document.")
  private Optional<Path> passwordFile = Optional.empty();

  RecoverCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException, TemplateProblem {
    Wording wording = Readers.OF_THE_RECORD.wording(Optional.empty(), TemplateSource.carried());
    Optional<CarriedRecord> carried = CarriedRecord.in(Files.readAllBytes(document), password());
    if (carried.isEmpty() || carried.get().bytes().isEmpty()) {
      String key = carried.isEmpty() ? "recover.unknown" : "recover.none";
      console.err().println(wording.say(Phrase.of(key, "file", document)));
      return ExitCode.ERRORS;
    }
    RecoveredFiles files = new RecoveredFiles(into, carried.get());
    files.write();
    console.out().println(wording.say(Phrase.of("recover.done", "file", into)));
    files
        .extractFor()
        .ifPresent(
            reader ->
                console.out().println(wording.say(Phrase.of("recover.extract", "reader", reader))));
    if (!files.missing().isEmpty()) {
      String names = String.join(", ", files.missing());
      console.out().println(wording.say(Phrase.of("recover.files", "files", names)));
    }
    console
        .out()
        .println(
            wording.say(
                switch (carried.get().seal()) {
                  case INTACT -> "recover.intact";
                  case ALTERED ->
                      carried.get().agrees() ? "recover.altered-around" : "recover.altered";
                  case UNSEALED -> "recover.unsealed";
                }));
    return carried.get().seal() == PdfSeal.State.INTACT ? ExitCode.CLEAN : ExitCode.WARNINGS;
  }

  private String password() throws IOException {
    if (passwordFile.isEmpty()) {
      return "";
    }
    return Files.readAllLines(passwordFile.get()).stream().findFirst().orElse("");
  }
}
