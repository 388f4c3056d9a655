package wallbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import wallbook.bundle.PackageContents;
import wallbook.bundle.PackageFile;
import wallbook.bundle.PackageWriter;
import wallbook.compose.Issue;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.record.Job;
import wallbook.reference.Tables;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.stock.LabelKind;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Makes one package: assess, compose, render, bundle. */
final class Handover {
  /** How long another build of the same package is waited for. */
  private static final Duration OTHER_WRITER = Duration.ofSeconds(30);

  private final Tables tables;
  private final TemplateSource templates;
  private final Readers readers;
  private final Optional<String> annexPassword;
  private final OfflinePage page;
  private final Console console;

  /**
   * @param annexPassword what locks documents for the owner alone, if they are to be locked
   * @param page makes the offline page
   */
  Handover(
      Tables tables,
      TemplateSource templates,
      Readers readers,
      Optional<String> annexPassword,
      OfflinePage page,
      Console console) {
    this.tables = tables;
    this.templates = templates;
    this.readers = readers;
    this.annexPassword = annexPassword;
    this.page = page;
    this.console = console;
  }

  /**
   * What became of a package.
   *
   * @param stored where it is; empty if labels can't be printed
   * @param onLabels what is wrong with its labels
   * @param labelFiles its files of labels
   */
  record Outcome(
      Optional<PackageWriter.Stored> stored, List<Finding> onLabels, List<String> labelFiles) {

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
   * @param record the file the job was read from; every document carries it, or an extract of it
   * @param reading the job, without errors
   * @param into folder that the package is stored in
   * @param labels what each kind of label is printed on
   * @throws TemplateProblem if a template can't be filled
   * @throws IOException if the record can't be read again or the package not be stored
   */
  Outcome make(
      Path record,
      Reading reading,
      Path into,
      Wording wording,
      Map<LabelKind, LabelOptions.Choice> labels)
      throws TemplateProblem, IOException {
    Job job = reading.job().orElseThrow();
    console.progress(wording.say("build.assessing"));
    SortedSet<Integer> unprintable = new TreeSet<>();
    List<PackageFile> files = new ArrayList<>();
    Findings onLabels = new Findings();
    try {
      for (PackageParts.Made made :
          new PackageParts(
                  record, reading, tables, templates, wording, readers, annexPassword, console)
              .make(page, labels)) {
        made.file().ifPresent(files::add);
        unprintable.addAll(made.unprintable());
        onLabels.addAll(made.findings());
      }
      Optional<PackageWriter.Stored> stored = Optional.empty();
      if (!onLabels.hasErrors()) {
        console.progress(wording.say("build.storing"));
        stored = Optional.of(store(job, into, files));
      }
      List<String> labelFiles =
          labels.keySet().stream()
              .map(LabelKind::file)
              .filter(path -> files.stream().anyMatch(file -> file.path().equals(path)))
              .toList();
      return new Outcome(stored, onLabels.inReportOrder(), labelFiles);
    } finally {
      console.progressDone();
      tellUnprintable(unprintable, wording);
    }
  }

  private PackageWriter.Stored store(Job job, Path into, List<PackageFile> files)
      throws IOException {
    Files.createDirectories(into);
    PackageContents contents =
        new PackageContents(
            job.facts().id(),
            Integer.toString(job.facts().revision()),
            Issue.date(job.facts()).orElseThrow(),
            Version.number(),
            files);
    return PackageWriter.waiting(OTHER_WRITER).write(into, contents);
  }

  /** The record may hold a sign that the books' font doesn't. */
  private void tellUnprintable(SortedSet<Integer> characters, Wording wording) {
    if (!characters.isEmpty()) {
      String listed =
          characters.stream()
              .map(c -> "%s (U+%04X)".formatted(Character.toString(c), c))
              .collect(Collectors.joining(", "));
      console.err().println(wording.say(Phrase.of("build.unprintable", "characters", listed)));
    }
  }
}
