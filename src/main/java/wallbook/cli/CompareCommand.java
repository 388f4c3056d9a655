package wallbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wallbook.compose.Issue;
import wallbook.compose.change.Change;
import wallbook.compose.change.ChangeNoticeComposer;
import wallbook.compose.change.Comparison;
import wallbook.read.JobReader;
import wallbook.record.Job;
import wallbook.record.Paper;
import wallbook.reference.Tables;
import wallbook.render.Attachment;
import wallbook.render.CarriedRecord;
import wallbook.render.DocumentFacts;
import wallbook.render.DocumentRenderer;
import wallbook.render.DocumentRequest;
import wallbook.render.PaperSize;
import wallbook.render.PlanFigures;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Says what changed from one record of a house to the next. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    description = {
      "Says what changed from one record to the next, thing by thing: put in service, new, moved,",
      "tested again, out of use, gone, renamed, otherwise changed. With --into, also as a notice",
      "for the homeowner."
    })
final class CompareCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(index = "0", paramLabel = "OLD", description = "Record, or package as folder or zip.")
  private Path old;

  @Parameters(index = "1", paramLabel = "NEW", description = "The same of the later issue.")
  private Path now;

  @Option(names = "--into", paramLabel = "FILE", description = "PDF for the change notice.")
  private Optional<Path> into = Optional.empty();

  @Option(
      names = "--language",
      paramLabel = "TAG",
      description = "Language to say it in, such as es-MX; usual: that of the later record.")
  private Optional<String> language = Optional.empty();

  CompareCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws TemplateProblem, IOException {
    Readers readers = new Readers(language, Optional.empty(), Optional.empty());
    Wording messages = readers.wording(Optional.empty(), TemplateSource.carried());
    JobReader reader = new JobReader(new Tables());
    Optional<Job> before = job(old, reader, messages);
    Optional<Job> after = job(now, reader, messages);
    if (before.isEmpty() || after.isEmpty()) {
      return ExitCode.ERRORS;
    }
    Wording wording = readers.wording(after, TemplateSource.carried());
    print(before.get(), after.get(), wording);
    if (into.isPresent()) {
      byte[] record = KeptRecord.bytes(now).orElseThrow();
      WholeFile.write(into.get(), notice(before.get(), after.get(), record, readers, wording));
    }
    return ExitCode.CLEAN;
  }

  private Optional<Job> job(Path path, JobReader reader, Wording messages) throws IOException {
    Optional<byte[]> bytes = KeptRecord.bytes(path);
    if (bytes.isEmpty()) {
      console.err().println(messages.say(Phrase.of("change.no-record", "file", path)));
      return Optional.empty();
    }
    Optional<Job> job = KeptRecord.job(path, bytes.get(), reader);
    if (job.isEmpty()) {
      console.err().println(messages.say(Phrase.of("change.unreadable", "file", path)));
    }
    return job;
  }

  private void print(Job before, Job after, Wording wording) {
    List<Change> changes = Comparison.of(before.record(), after.record(), wording);
    for (Change change : changes) {
      String sort = wording.say("change." + change.sort().name().toLowerCase(Locale.ROOT));
      Phrase line =
          Phrase.of(
              "change.line",
              "sort",
              sort,
              "kind",
              wording.say("change.list." + change.list()),
              "name",
              change.name() + " [" + change.id() + "]");
      console.out().println(wording.say(line));
      for (Change.FieldChange field : change.fields()) {
        console
            .out()
            .println("    " + field.key() + ": " + field.before() + " -> " + field.after());
      }
    }
    Phrase summary =
        Phrase.of(
            "change.summary",
            "count",
            changes.size(),
            "old",
            before.facts().revision(),
            "new",
            after.facts().revision());
    console.out().println(wording.say(summary));
  }

  private byte[] notice(Job before, Job after, byte[] record, Readers readers, Wording wording)
      throws TemplateProblem {
    DocumentFacts facts =
        new DocumentFacts(
            after.facts().title(),
            wording.say("change.title"),
            wording.locale().toLanguageTag(),
            Integer.toString(after.facts().revision()),
            Issue.date(after.facts()).orElseThrow(),
            readers.paper(after) == Paper.A4 ? PaperSize.A4 : PaperSize.LETTER,
            Version.number(),
            after.facts().invented().orElse(false));
    DocumentRequest request =
        new DocumentRequest(
            "change-notice.pdf",
            "change-notice.md",
            new ChangeNoticeComposer(before.record(), after.record(), wording).compose(),
            facts,
            List.of(
                new Attachment(
                    CarriedRecord.FILE_NAME,
                    "application/yaml",
                    wording.say("attachment.record"),
                    Attachment.Relationship.SOURCE,
                    record)));
    return new DocumentRenderer(TemplateSource.carried(), wording, new PlanFigures())
        .render(request)
        .pdf();
  }
}
