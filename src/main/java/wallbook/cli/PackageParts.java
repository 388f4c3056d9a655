package wallbook.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import wallbook.bundle.PackageDraft;
import wallbook.bundle.PackageFile;
import wallbook.compose.Composition;
import wallbook.compose.Disclosure;
import wallbook.compose.DocumentPlan;
import wallbook.compose.Documents;
import wallbook.compose.disclosure.Recipient;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.read.ScheduleWriter;
import wallbook.record.Job;
import wallbook.reference.Tables;
import wallbook.render.Attachment;
import wallbook.render.CarriedRecord;
import wallbook.render.DocumentFacts;
import wallbook.render.DocumentRenderer;
import wallbook.render.DocumentRequest;
import wallbook.render.PdfLock;
import wallbook.render.PlanFigures;
import wallbook.render.RenderedDocument;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.render.data.AssessmentsJson;
import wallbook.render.data.FindingsJson;
import wallbook.stock.LabelKind;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/**
 * The files of one package, each made on its own so that all processors can be at work. What
 * several need is made by the one that needs it first.
 */
final class PackageParts {
  private static final String RECORD = "data/job.yaml";
  private static final String FINDINGS = "data/findings.json";
  private static final String ASSESSMENTS = "data/assessments.json";

  /**
   * What takes longest and is begun first. Labels come before the page, since they need nothing
   * that the as-built waits for: the assessments.
   */
  private static final List<String> LONG =
      List.of("technician-as-built.pdf", LabelKind.CABLE_WRAPS.file(), OfflinePage.FILE);

  private final Reading reading;
  private final Job job;
  private final Wording wording;
  private final Readers readers;
  private final Optional<String> annexPassword;
  private final Console console;
  private final WholeRecord whole;
  private final List<Attachment> attached;
  private final Extracts extracts;
  private final LabelFiles labelFiles;
  private final Once<Composition, TemplateProblem> composition;
  private final Once<DocumentRenderer, TemplateProblem> renderer;

  /**
   * @param reading the job, without errors
   * @param whole what the job was read from
   * @param annexPassword what locks documents for the owner alone, if they are to be locked
   */
  PackageParts(
      Reading reading,
      WholeRecord whole,
      Tables tables,
      TemplateSource templates,
      Wording wording,
      Readers readers,
      Optional<String> annexPassword,
      Console console) {
    this.reading = reading;
    this.job = reading.job().orElseThrow();
    this.wording = wording;
    this.readers = readers;
    this.annexPassword = annexPassword;
    this.console = console;
    this.whole = whole;
    this.attached = whole.attachments(wording);
    this.extracts = new Extracts(tables, job, wording);
    this.labelFiles = new LabelFiles(tables, job, readers, wording, extracts);
    this.composition = new Once<>(() -> Computation.of(reading, tables, wording));
    this.renderer =
        new Once<>(
            () ->
                new DocumentRenderer(templates, wording, new PlanFigures(), Looks.of(job, tables)));
  }

  /**
   * What became of a file.
   *
   * @param path the file; empty if there was nothing to put in it, or an error
   * @param unprintable characters that the font doesn't have
   * @param findings what is wrong with it
   */
  record Told(Optional<String> path, SortedSet<Integer> unprintable, List<Finding> findings) {}

  private record Made(
      Optional<byte[]> file, SortedSet<Integer> unprintable, List<Finding> findings) {
    static Made of(byte[] file) {
      return new Made(Optional.of(file), new TreeSet<>(), List.of());
    }
  }

  private interface Maker {
    Made make() throws TemplateProblem, IOException;
  }

  private record Part(String path, Maker maker) {
    int turn() {
      return LONG.contains(path) ? LONG.indexOf(path) : LONG.size();
    }
  }

  /**
   * Makes all files.
   *
   * @param draft takes each as soon as it is made
   * @param processors how many are made at a time
   * @param labels what each kind of label is printed on
   * @throws TemplateProblem if a template can't be filled
   */
  List<Told> make(
      PackageDraft draft,
      int processors,
      OfflinePage page,
      Map<LabelKind, LabelOptions.Choice> labels)
      throws TemplateProblem, IOException {
    List<Part> parts = new ArrayList<>();
    for (DocumentPlan plan : Documents.all()) {
      parts.add(new Part(plan.file(), () -> document(plan)));
    }
    parts.add(new Part(OfflinePage.FILE, () -> page(page)));
    labels.forEach((kind, on) -> parts.add(new Part(kind.file(), () -> labels(kind, on))));
    parts.add(new Part(RECORD, () -> Made.of(whole.bytes())));
    parts.add(new Part(FINDINGS, this::findings));
    parts.add(new Part(ASSESSMENTS, this::assessments));
    for (ScheduleWriter.Schedule schedule : ScheduleWriter.all(job.record())) {
      String path = "data/" + schedule.list() + ".csv";
      parts.add(new Part(path, () -> Made.of(schedule.text().getBytes(StandardCharsets.UTF_8))));
    }
    parts.sort(Comparator.comparingInt(Part::turn));
    return AllProcessors.each(parts, processors, part -> put(part, draft));
  }

  private static Told put(Part part, PackageDraft draft) throws TemplateProblem, IOException {
    Made made = part.maker().make();
    if (made.file().isPresent()) {
      draft.add(new PackageFile(part.path(), made.file().get()));
    }
    return new Told(made.file().map(file -> part.path()), made.unprintable(), made.findings());
  }

  private Made document(DocumentPlan plan) throws TemplateProblem {
    Composition composed = composition.get();
    tell(plan.file());
    DocumentRequest request =
        new DocumentRequest(
            plan.file(),
            plan.template(),
            plan.view().apply(composed),
            readers.facts(job, wording, plan.titleKey()),
            plan.disclosure().carriesWholeRecord()
                ? attached
                : List.of(extracts.of(Recipient.TRADE, plan.part(), readerOf(plan))));
    RenderedDocument document = renderer.get().render(request);
    return new Made(Optional.of(locked(plan, document.pdf())), document.unprintable(), List.of());
  }

  /** The words for whom a document is made go by its name. */
  private static String readerOf(DocumentPlan plan) {
    return plan.file().replaceFirst(".*/", "").replaceFirst("\\.pdf$", "");
  }

  private byte[] locked(DocumentPlan plan, byte[] pdf) {
    return plan.disclosure() == Disclosure.OWNER_ALONE && annexPassword.isPresent()
        ? PdfLock.lock(pdf, annexPassword.get())
        : pdf;
  }

  private Made page(OfflinePage page) throws TemplateProblem {
    Composition composed = composition.get();
    tell(OfflinePage.FILE);
    DocumentFacts facts = readers.facts(job, wording, "page.title");
    return Made.of(page.html(composed, facts, whole, extracts));
  }

  private Made labels(LabelKind kind, LabelOptions.Choice on) {
    tell(kind.file());
    Findings findings = new Findings();
    Optional<byte[]> file = labelFiles.print(kind, on, findings);
    return new Made(file, new TreeSet<>(), findings.inReportOrder());
  }

  /** What was found, in the copy of the record that lies beside it and not where it was read. */
  private Made findings() {
    String read = job.record().origin().position().file();
    List<Finding> inPackage =
        reading.findings().stream()
            .map(f -> f.position().file().equals(read) ? f.inFile(CarriedRecord.FILE_NAME) : f)
            .toList();
    return Made.of(new FindingsJson(wording).bytes(inPackage));
  }

  private Made assessments() throws TemplateProblem {
    return Made.of(new AssessmentsJson(wording).bytes(composition.get().assessments().all()));
  }

  private void tell(String file) {
    console.progress(wording.say(Phrase.of("build.document", "file", file)));
  }
}
