package wallbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import wallbook.compose.disclosure.Recipient;
import wallbook.render.Preparations;
import wallbook.render.TemplateProblem;
import wallbook.wording.Wording;

/** Builds the handover package of one record. */
@Command(
    name = "build",
    mixinStandardHelpOptions = true,
    description = {
      "Builds the handover package of a record: a folder <job>-r<revision> and the same as a",
      "zip. The record is checked first; with errors in it nothing is written. An earlier",
      "package of the same name is replaced whole, or stays as it was."
    })
final class BuildCommand implements Callable<Integer> {
  private final Console console;
  private final Groundwork groundwork;
  private Optional<String> password = Optional.empty();

  @Parameters(paramLabel = "RECORD", description = "Job record in YAML.")
  private Path record;

  @Option(
      names = "--into",
      paramLabel = "FOLDER",
      description = "Folder that the package is stored in; made if need be. Usual: here.")
  private Path into = Path.of("");

  @Mixin private ReaderOptions readerOptions;

  @Option(
      names = "--annex-password-file",
      paramLabel = "FILE",
      description = {
        "File whose first line is the password that locks the security annex; - asks for it at the",
        "terminal. Usual: the annex is not locked."
      })
  private Optional<Path> annexPassword = Optional.empty();

  @Mixin private LabelOptions labelOptions;

  @Option(
      names = "--owner-copy",
      description = {
        "Make the offline page the owner's copy: it then also tells where keypads, contacts, sensors",
        "and cameras are. Usual: it leaves them out."
      })
  private boolean ownerCopy;

  @Option(
      names = "--allow-warnings",
      description = "End with exit code 0 although there are warnings.")
  private boolean allowWarnings;

  @Option(
      names = "--watch",
      description = {
        "Build again whenever something is saved that the package is made from, until interrupted:",
        "the record, a file it names, a template, the label sheets."
      })
  private boolean watch;

  @Spec private CommandSpec spec;

  BuildCommand(Console console, Groundwork groundwork) {
    this.console = console;
    this.groundwork = groundwork;
  }

  @Override
  public Integer call() throws TemplateProblem, IOException, InterruptedException {
    ForkJoinPool.commonPool().execute(Preparations::documents);
    Recipient recipient = ownerCopy ? Recipient.OWNER : Recipient.PAGE;
    HouseBuild build =
        new HouseBuild(
            record,
            into,
            readerOptions.readers(),
            readerOptions.templates(),
            labelOptions,
            this::lock,
            recipient,
            groundwork,
            console);
    BuildReport report = new BuildReport(console, recipient, annexPassword.isPresent());
    if (watch) {
      new BuildWatch(build, report).untilInterrupted();
    }
    HouseBuild.Built built = build.make(build.read());
    report.tellAll(built);
    return allowWarnings && built.isStored() ? ExitCode.CLEAN : built.exitCode();
  }

  /** What locks the annex, if it is to be locked; read or asked for once. */
  private Optional<String> lock(Wording wording) throws IOException {
    if (annexPassword.isPresent() && password.isEmpty()) {
      password = AnnexPassword.read(annexPassword.get(), wording.say("build.annex-password"));
      if (password.isEmpty()) {
        throw new CommandLine.ParameterException(
            spec.commandLine(), "The password of the annex is blank: nothing would be locked");
      }
    }
    return password;
  }
}
