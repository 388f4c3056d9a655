package wallbook.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import wallbook.bundle.PackageContents;
import wallbook.bundle.PackageFile;
import wallbook.bundle.PackageWriter;
import wallbook.compose.Composition;
import wallbook.compose.Disclosure;
import wallbook.compose.DocumentPlan;
import wallbook.compose.Documents;
import wallbook.compose.Issue;
import wallbook.compose.disclosure.Recipient;
import wallbook.read.ScheduleWriter;
import wallbook.record.Job;
import wallbook.reference.Tables;
import wallbook.render.Attachment;
import wallbook.render.DocumentRenderer;
import wallbook.render.DocumentRequest;
import wallbook.render.PdfLock;
import wallbook.render.PlanFigures;
import wallbook.render.RenderedDocument;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.render.data.AssessmentsJson;
import wallbook.render.data.FindingsJson;
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
   * Makes the package of a job.
   *
   * @param record the file the job was read from; every document carries it, or an extract of it
   * @param reading the job, without errors
   * @param into folder that the package is stored in
   * @param labels files of labels
   * @throws TemplateProblem if a template can't be filled
   * @throws IOException if the record can't be read again or the package not be stored
   */
  PackageWriter.Stored make(
      Path record, Reading reading, Path into, Wording wording, List<PackageFile> labels)
      throws TemplateProblem, IOException {
    Job job = reading.job().orElseThrow();
    console.progress(wording.say("build.assessing"));
    Composition composition = Computation.of(reading, tables, wording);
    DocumentRenderer renderer =
        new DocumentRenderer(templates, wording, new PlanFigures(), Looks.of(job, tables));
    LocalDate issued = Issue.date(job.facts()).orElseThrow();
    WholeRecord whole = WholeRecord.read(record, job.record());
    List<Attachment> attached = whole.attachments(wording);
    Extracts extracts = new Extracts(tables, job, wording);
    List<Part> parts = new ArrayList<>();
    for (DocumentPlan plan : Documents.all()) {
      parts.add(
          () -> {
            console.progress(wording.say(Phrase.of("build.document", "file", plan.file())));
            DocumentRequest request =
                new DocumentRequest(
                    plan.file(),
                    plan.template(),
                    plan.view().apply(composition),
                    readers.facts(job, wording, plan.titleKey()),
                    plan.disclosure().carriesWholeRecord()
                        ? attached
                        : List.of(extracts.of(Recipient.TRADE, plan.part(), readerOf(plan))));
            RenderedDocument document = renderer.render(request);
            PackageFile file = PackageFile.of(plan.file(), locked(plan, document.pdf()));
            return new Made(file, document.unprintable());
          });
    }
    parts.add(
        () -> {
          console.progress(wording.say(Phrase.of("build.document", "file", OfflinePage.FILE)));
          String html = page.html(composition, readers.facts(job, wording, "page.title"), whole);
          return Made.of(text(OfflinePage.FILE, html));
        });
    int beforeLabels = parts.size();
    parts.add(
        () ->
            Made.of(
                text("data/findings.json", new FindingsJson(wording).text(reading.findings()))));
    parts.add(
        () ->
            Made.of(
                text(
                    "data/assessments.json",
                    new AssessmentsJson(wording).text(composition.assessments().all()))));
    SortedSet<Integer> unprintable = new TreeSet<>();
    List<PackageFile> made = new ArrayList<>();
    for (Made one : AllProcessors.each(parts, Part::make)) {
      made.add(one.file());
      unprintable.addAll(one.unprintable());
    }
    List<PackageFile> files = new ArrayList<>(made.subList(0, beforeLabels));
    files.addAll(labels);
    files.add(PackageFile.of("data/job.yaml", whole.bytes()));
    files.addAll(made.subList(beforeLabels, made.size()));
    for (ScheduleWriter.Schedule schedule : ScheduleWriter.all(job.record())) {
      files.add(text("data/" + schedule.list() + ".csv", schedule.text()));
    }
    console.progress(wording.say("build.storing"));
    Files.createDirectories(into);
    PackageContents contents =
        new PackageContents(
            job.facts().id(),
            Integer.toString(job.facts().revision()),
            issued,
            Version.number(),
            files);
    PackageWriter.Stored stored;
    try {
      stored = PackageWriter.waiting(OTHER_WRITER).write(into, contents);
    } finally {
      console.progressDone();
    }
    tellUnprintable(unprintable, wording);
    return stored;
  }

  /** Makes one file of the package. */
  private interface Part {
    Made make() throws TemplateProblem, IOException;
  }

  private record Made(PackageFile file, SortedSet<Integer> unprintable) {
    static Made of(PackageFile file) {
      return new Made(file, new TreeSet<>());
    }
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

  /** The words for whom a document is made go by its name. */
  private static String readerOf(DocumentPlan plan) {
    return plan.file().replaceFirst(".*/", "").replaceFirst("\\.pdf$", "");
  }

  private static PackageFile text(String path, String text) {
    return PackageFile.of(path, text.getBytes(StandardCharsets.UTF_8));
  }

  private byte[] locked(DocumentPlan plan, byte[] pdf) {
    return plan.disclosure() == Disclosure.OWNER_ALONE && annexPassword.isPresent()
        ? PdfLock.lock(pdf, annexPassword.get())
        : pdf;
  }
}
