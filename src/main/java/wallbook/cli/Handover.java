package wallbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import wallbook.bundle.PackageContents;
import wallbook.bundle.PackageDraft;
import wallbook.bundle.PackageWriter;
import wallbook.compose.Issue;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.record.Job;
import wallbook.reference.Tables;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.stock.LabelKind;
import wallbook.wording.Wording;

/** Makes one package: assess, compose, render, bundle. */
final class Handover {
  /** How long another build of the same package is waited for, which a large house may take. */
  private static final Duration OTHER_WRITER = Duration.ofMinutes(2);

  private final Tables tables;
  private final TemplateSource templates;
  private final Readers readers;
  private final Optional<String> annexPassword;
  private final OfflinePage page;
  private final int processors;
  private final Console console;

  /**
   * @param annexPassword what locks documents for the owner alone, if they are to be locked
   * @param page makes the offline page
   * @param processors how many files are made at a time
   */
  Handover(
      Tables tables,
      TemplateSource templates,
      Readers readers,
      Optional<String> annexPassword,
      OfflinePage page,
      int processors,
      Console console) {
    this.tables = tables;
    this.templates = templates;
    this.readers = readers;
    this.annexPassword = annexPassword;
    this.page = page;
    this.processors = processors;
    this.console = console;
  }

  /**
   * What became of a package.
   *
   * @param stored where it is; empty if labels can't be printed
   * @param onLabels what is wrong with its labels
   * @param labelFiles its files of labels
   * @param unprintable characters of the record that the font of the documents lacks
   */
  record Outcome(
      Optional<PackageDraft.Stored> stored,
      List<Finding> onLabels,
      List<String> labelFiles,
      SortedSet<Integer> unprintable) {
    /** Nothing was begun. */
    static final Outcome NONE =
        new Outcome(Optional.empty(), List.of(), List.of(), Collections.emptySortedSet());

    /** The exit code that findings on the record and on its labels call for. */
    int exitCode(Reading reading) {
      if (stored.isEmpty()) {
        return ExitCode.ERRORS;
      }
      return onLabels.isEmpty()
          ? reading.exitCode()
          : Math.max(ExitCode.WARNINGS, reading.exitCode());
    }
  }

  /**
   * Makes the package of a job.
   *
   * @param reading the job, without errors
   * @param whole what the job was read from; every document carries it, or an extract of it
   * @param into folder that the package is stored in
   * @param labels what each kind of label is printed on
   * @throws TemplateProblem if a template can't be filled
   * @throws IOException if the package can't be stored
   */
  Outcome make(
      Reading reading,
      WholeRecord whole,
      Path into,
      Wording wording,
      Map<LabelKind, LabelOptions.Choice> labels)
      throws TemplateProblem, IOException {
    Job job = reading.job().orElseThrow();
    PackageContents contents =
        new PackageContents(
            job.facts().id(),
            Integer.toString(job.facts().revision()),
            Issue.date(job.facts()).orElseThrow(),
            Version.number());
    console.progress(wording.say("build.assessing"));
    PackageParts parts =
        new PackageParts(
            reading, whole, tables, templates, wording, readers, annexPassword, console);
    SortedSet<Integer> unprintable = new TreeSet<>();
    try (NewFolder folder = NewFolder.make(into);
        PackageDraft draft = PackageWriter.waiting(OTHER_WRITER).begin(into, contents)) {
      Set<String> files = new HashSet<>();
      Findings onLabels = new Findings();
      for (PackageParts.Told told : parts.make(draft, processors, page, labels)) {
        told.path().ifPresent(files::add);
        unprintable.addAll(told.unprintable());
        onLabels.addAll(told.findings());
      }
      Optional<PackageDraft.Stored> stored = Optional.empty();
      if (!onLabels.hasErrors()) {
        console.progress(wording.say("build.storing"));
        stored = Optional.of(draft.store());
        folder.keep();
      }
      List<String> labelFiles =
          labels.keySet().stream().map(LabelKind::file).filter(files::contains).toList();
      return new Outcome(stored, onLabels.inReportOrder(), labelFiles, unprintable);
    } finally {
      console.progressDone();
    }
  }
}
