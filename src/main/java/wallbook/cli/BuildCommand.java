package wallbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import wallbook.bundle.PackageDraft;
import wallbook.compose.Disclosure;
import wallbook.compose.DocumentPlan;
import wallbook.compose.Documents;
import wallbook.compose.disclosure.Recipient;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.record.Job;
import wallbook.reference.Tables;
import wallbook.render.Preparations;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.stock.LabelKind;
import wallbook.wording.Phrase;
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

  @Spec private CommandSpec spec;

  BuildCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws TemplateProblem, IOException {
    ForkJoinPool.commonPool().execute(Preparations::documents);
    Tables tables = new Tables();
    TemplateSource source = readerOptions.templates();
    Readers readers = readerOptions.readers();
    Reading reading = Reading.of(record, tables);
    if (reading.job().isEmpty()) {
      Wording messages = readers.messages(reading.about(), source);
      return refuse(reading.findings(), new FindingPrinter(messages), messages);
    }
    Wording wording = readers.wording(reading.about(), source);
    FindingPrinter printer = new FindingPrinter(wording);
    Job job = reading.job().get();
    Findings onSheets = new Findings();
    Map<LabelKind, LabelOptions.Choice> labels =
        labelOptions.choice(tables, readers.paper(job), onSheets);
    if (onSheets.hasErrors()) {
      return refuse(onSheets.inReportOrder(), printer, wording);
    }
    printer.print(onSheets.inReportOrder(), console.err());
    Handover.Outcome outcome =
        new Handover(
                tables,
                source,
                readers,
                lock(wording),
                page(source),
                Runtime.getRuntime().availableProcessors(),
                console)
            .make(record, reading, into, wording, labels);
    if (outcome.stored().isEmpty()) {
      return refuse(outcome.onLabels(), printer, wording);
    }
    printer.print(outcome.onLabels(), console.err());
    PackageDraft.Stored stored = outcome.stored().get();
    console.out().println(say(wording, "build.done", "folder", stored.folder()));
    console
        .out()
        .println(
            say(
                wording,
                "build.open",
                "file",
                stored.folder().resolve(Documents.all().get(0).file())));
    console
        .out()
        .println(
            say(
                wording,
                "build.also",
                "files",
                Documents.all().stream()
                    .skip(1)
                    .map(DocumentPlan::file)
                    .collect(Collectors.joining(", "))));
    console
        .out()
        .println(
            say(
                wording,
                ownerCopy ? "build.page-owner" : "build.page",
                "file",
                stored.folder().resolve(OfflinePage.FILE)));
    if (!outcome.labelFiles().isEmpty()) {
      String files = String.join(", ", outcome.labelFiles());
      console.out().println(say(wording, "build.labels", "files", files));
    }
    boolean hasAnnex =
        Documents.all().stream().anyMatch(d -> d.disclosure() == Disclosure.OWNER_ALONE);
    if (hasAnnex && annexPassword.isEmpty()) {
      console.out().println(wording.say("build.annex-open"));
    }
    console.out().println(printer.summary(reading.findings()));
    return allowWarnings ? ExitCode.CLEAN : outcome.exitCode(reading);
  }

  private int refuse(List<Finding> findings, FindingPrinter printer, Wording wording) {
    printer.printRefusal(findings, console.err());
    console.err().println(wording.say("build.refused"));
    return ExitCode.ERRORS;
  }

  private OfflinePage page(TemplateSource source) {
    return new OfflinePage(source, ownerCopy ? Recipient.OWNER : Recipient.PAGE);
  }

  /** What locks the annex, if it is to be locked. */
  private Optional<String> lock(Wording wording) throws IOException {
    if (annexPassword.isEmpty()) {
      return Optional.empty();
    }
    Optional<String> password =
        AnnexPassword.read(annexPassword.get(), wording.say("build.annex-password"));
    if (password.isEmpty()) {
      throw new CommandLine.ParameterException(
          spec.commandLine(), "The password of the annex is blank: nothing would be locked");
    }
    return password;
  }

  private static String say(Wording wording, String key, String name, Object value) {
    return wording.say(Phrase.of(key, name, value));
  }
}
