package wallbook.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wallbook.assess.Assessments;
import wallbook.assess.Assessor;
import wallbook.assess.outlook.Outlook;
import wallbook.assess.outlook.OutlookAssessor;
import wallbook.assess.outlook.WishAssessor;
import wallbook.check.Checks;
import wallbook.compose.CableNames;
import wallbook.compose.Composition;
import wallbook.compose.Discretion;
import wallbook.compose.DocumentPlan;
import wallbook.compose.Documents;
import wallbook.compose.Issue;
import wallbook.compose.disclosure.DisclosedJob;
import wallbook.compose.disclosure.DisclosureRules;
import wallbook.compose.disclosure.Recipient;
import wallbook.compose.labels.LabelsComposer;
import wallbook.compose.page.PageComposer;
import wallbook.compose.page.PageView;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.read.JobReader;
import wallbook.read.ReadResult;
import wallbook.read.RecordFolder;
import wallbook.record.Job;
import wallbook.reference.Tables;
import wallbook.render.DocumentFacts;
import wallbook.render.DocumentRenderer;
import wallbook.render.DocumentRequest;
import wallbook.render.PageRenderer;
import wallbook.render.PaperSize;
import wallbook.render.PlanFigures;
import wallbook.render.PrintedPages;
import wallbook.render.PrintedTables;
import wallbook.render.RenderedDocument;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.render.WordsFiles;
import wallbook.render.labels.LabelOrder;
import wallbook.render.labels.LabelPrinter;
import wallbook.stock.LabelKind;
import wallbook.stock.LabelSheet;
import wallbook.stock.LabelSheets;
import wallbook.stock.Legibility;
import wallbook.stock.Stock;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

/** The stages of the program over one record, each callable on its own. */
public final class MeasuredHouse {
  private final Tables tables = new Tables();
  private final TemplateSource templates = TemplateSource.carried();
  private final byte[] record;
  private final RecordFolder folder;
  private final Wording wording;

  private MeasuredHouse(byte[] record, RecordFolder folder) {
    this.record = record;
    this.folder = folder;
    try {
      this.wording =
          new Wording(Locale.US, WordsFiles.read(templates, Locale.US), UnitSystem.FEET_AND_INCHES);
    } catch (TemplateProblem e) {
      throw new IllegalStateException(e);
    }
  }

  /** An invented house of so many cables. */
  static MeasuredHouse invented(int runs) {
    byte[] record = new JobGenerator("invented", runs).yaml().getBytes(StandardCharsets.UTF_8);
    return new MeasuredHouse(record, new RecordFolder(Path.of("").toAbsolutePath()));
  }

  /** A record on disk. */
  static MeasuredHouse of(Path file) {
    try {
      Path path = file.toAbsolutePath();
      return new MeasuredHouse(Files.readAllBytes(path), new RecordFolder(path.getParent()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  ReadResult read() {
    return new JobReader(tables).read("job.yaml", record, folder);
  }

  Job job() {
    return read().job().orElseThrow();
  }

  List<Finding> check(Job job) {
    return new Checks(tables).check(job);
  }

  /** Everything computed of a job. */
  Composition assess(Job job, List<Finding> findings) {
    Job named = CableNames.in(wording, job);
    Assessments assessments = new Assessor(tables).assess(named);
    Outlook outlook = new OutlookAssessor(tables).assess(named, assessments);
    return new Composition(
        named,
        findings,
        assessments,
        outlook,
        new WishAssessor(tables).answers(named, assessments, outlook),
        wording);
  }

  Composition composition() {
    Job job = job();
    return assess(job, check(job));
  }

  /** The view models of all documents. */
  List<Object> compose(Composition composition) {
    return Documents.all().stream().map(plan -> plan.view().apply(composition)).toList();
  }

  DocumentRenderer renderer() {
    try {
      return new DocumentRenderer(templates, wording, new PlanFigures());
    } catch (TemplateProblem e) {
      throw new IllegalStateException(e);
    }
  }

  RenderedDocument print(DocumentRenderer renderer, DocumentPlan plan, Composition composition) {
    try {
      return renderer.render(request(plan, composition));
    } catch (TemplateProblem e) {
      throw new IllegalStateException(e);
    }
  }

  private DocumentRequest request(DocumentPlan plan, Composition composition) {
    return new DocumentRequest(
        plan.file(),
        plan.template(),
        plan.view().apply(composition),
        facts(composition.job(), plan.titleKey()),
        List.of());
  }

  /** The page that a document is printed from, without its stylesheet. */
  String html(DocumentRenderer renderer, DocumentPlan plan, Composition composition) {
    try {
      return renderer.html(request(plan, composition));
    } catch (TemplateProblem e) {
      throw new IllegalStateException(e);
    }
  }

  /** The same with its stylesheet. */
  String page(DocumentRenderer renderer, DocumentPlan plan, Composition composition)
      throws TemplateProblem {
    return new PrintedPages(templates, wording)
        .whole(
            html(renderer, plan, composition),
            plan.template(),
            facts(composition.job(), plan.titleKey()));
  }

  /** The tables of the page of a document, ready to be printed. */
  PrintedTables tables(DocumentRenderer renderer, DocumentPlan plan, Composition composition) {
    try {
      return new PrintedTables(
          templates,
          wording,
          html(renderer, plan, composition),
          plan.template(),
          facts(composition.job(), plan.titleKey()));
    } catch (TemplateProblem e) {
      throw new IllegalStateException(e);
    }
  }

  /** The files of labels, on the usual sheets. */
  List<byte[]> labels(Job job) {
    LabelSheets sheets = LabelSheets.of(tables);
    LabelPrinter printer = new LabelPrinter(new Legibility(tables), wording);
    LabelsComposer composer = new LabelsComposer(job, wording);
    List<byte[]> files = new ArrayList<>();
    for (LabelKind kind : LabelKind.values()) {
      LabelSheet sheet = sheets.usual(kind, Stock.LETTER);
      LabelOrder order =
          new LabelOrder(sheet, 1, composer.labels(kind, sheet.label().cells().orElse(1)));
      String title = "label-kind." + kind.word();
      printer.print(order, facts(job, title), List.of(), new Findings()).ifPresent(files::add);
    }
    return files;
  }

  /** The offline page. */
  byte[] page(Composition composition) {
    Job job = composition.job();
    Discretion discretion = new Discretion(job, wording);
    DisclosedJob disclosed =
        DisclosedJob.of(job, new DisclosureRules(tables), Recipient.PAGE, discretion::isTellable);
    PageView view = new PageComposer(composition, disclosed, Recipient.PAGE).compose();
    try {
      return new PageRenderer(templates, wording).render(view, facts(job, "page.title"), record);
    } catch (TemplateProblem e) {
      throw new IllegalStateException(e);
    }
  }

  DocumentFacts facts(Job job, String titleKey) {
    return new DocumentFacts(
        job.facts().title(),
        wording.say(titleKey),
        wording.locale().toLanguageTag(),
        Integer.toString(job.facts().revision()),
        Issue.date(job.facts()).orElseThrow(),
        PaperSize.LETTER,
        "measured",
        job.facts().invented().orElse(false));
  }

  /** The document of a name. */
  static DocumentPlan plan(String file) {
    Optional<DocumentPlan> plan =
        Documents.all().stream().filter(p -> p.file().equals(file)).findFirst();
    return plan.orElseThrow();
  }
}
