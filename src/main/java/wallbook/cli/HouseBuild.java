package wallbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wallbook.compose.disclosure.Recipient;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.record.Job;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.stock.LabelKind;
import wallbook.wording.Wording;

/** Builds the package of one record, as often as need be; tells nothing but its progress. */
final class HouseBuild {
  private final Path record;
  private final Path into;
  private final Readers readers;
  private final TemplateSource templates;
  private final LabelOptions labelOptions;
  private final Lock lock;
  private final Recipient recipient;
  private final Groundwork groundwork;
  private final Console console;
  private Set<Path> named = Set.of();

  /** What locks documents for the owner alone. */
  interface Lock {
    /**
     * The password, if they are to be locked.
     *
     * @param wording asks for it
     */
    Optional<String> password(Wording wording) throws IOException;
  }

  /**
   * @param recipient who is to open the offline page
   */
  HouseBuild(
      Path record,
      Path into,
      Readers readers,
      TemplateSource templates,
      LabelOptions labelOptions,
      Lock lock,
      Recipient recipient,
      Groundwork groundwork,
      Console console) {
    this.record = record;
    this.into = into;
    this.readers = readers;
    this.templates = templates;
    this.labelOptions = labelOptions;
    this.lock = lock;
    this.recipient = recipient;
    this.groundwork = groundwork;
    this.console = console;
  }

  /**
   * A record in memory.
   *
   * @param wording the words of what is told of it
   * @param whole what it was read from; empty if it has errors
   */
  record Read(Reading reading, Wording wording, Optional<WholeRecord> whole) {}

  /**
   * What became of a build.
   *
   * @param refusal why nothing was written; empty if the package is stored
   * @param onSheets what else is to be said of the user's label sheets
   * @param outcome the package; {@link Handover.Outcome#NONE} if nothing was begun
   */
  record Built(Read read, List<Finding> refusal, List<Finding> onSheets, Handover.Outcome outcome) {
    private static Built refused(Read read, List<Finding> why) {
      return new Built(read, why, List.of(), Handover.Outcome.NONE);
    }

    boolean isStored() {
      return outcome.stored().isPresent();
    }

    int exitCode() {
      return outcome.exitCode(read.reading());
    }
  }

  /**
   * Reads and checks the record.
   *
   * @throws TemplateProblem if there are no words to tell what was found
   * @throws IOException if the record was taken away meanwhile
   */
  Read read() throws TemplateProblem, IOException {
    Reading reading = Reading.of(record, groundwork);
    reading.about().ifPresent(job -> named = Sources.named(record, job));
    if (reading.job().isEmpty()) {
      return new Read(reading, readers.messages(reading.about(), templates), Optional.empty());
    }
    Wording wording = readers.wording(reading.about(), templates);
    WholeRecord whole = WholeRecord.read(record, reading.job().get().record());
    return new Read(reading, wording, Optional.of(whole));
  }

  /**
   * Makes and stores the package.
   *
   * @throws TemplateProblem if a template can't be filled
   * @throws IOException if it can't be stored
   */
  Built make(Read read) throws TemplateProblem, IOException {
    if (read.whole().isEmpty()) {
      return Built.refused(read, read.reading().findings());
    }
    Job job = read.reading().job().orElseThrow();
    Findings onSheets = new Findings();
    Map<LabelKind, LabelOptions.Choice> labels =
        labelOptions.choice(groundwork.tables(), readers.paper(job), onSheets);
    if (onSheets.hasErrors()) {
      return Built.refused(read, onSheets.inReportOrder());
    }
    Handover handover =
        new Handover(
            groundwork.tables(),
            templates,
            readers,
            lock.password(read.wording()),
            new OfflinePage(templates, recipient),
            Runtime.getRuntime().availableProcessors(),
            console);
    Handover.Outcome outcome =
        handover.make(read.reading(), read.whole().get(), into, read.wording(), labels);
    List<Finding> refusal = outcome.stored().isPresent() ? List.of() : outcome.onLabels();
    return new Built(read, refusal, onSheets.inReportOrder(), outcome);
  }

  /**
   * What the package is made from, as far as it is known by now: the templates that were used so
   * far, and what the record named when it could be understood last.
   */
  Sources sources() {
    Set<Path> files = new HashSet<>(named);
    files.add(record);
    labelOptions.file().ifPresent(files::add);
    files.addAll(templates.usersFiles());
    return new Sources(files, templates.usersFolders());
  }
}
