package wallbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wallbook.compose.labels.Label;
import wallbook.compose.labels.LabelsComposer;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Nearest;
import wallbook.record.Job;
import wallbook.record.Paper;
import wallbook.reference.Tables;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.render.labels.LabelOrder;
import wallbook.stock.LabelKind;
import wallbook.stock.LabelSheet;
import wallbook.stock.LabelSheets;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Prints labels of one kind again, all or some. */
@Command(
    name = "labels",
    mixinStandardHelpOptions = true,
    description = {
      "Lays labels of one kind out for printing, all of a record or those named. A file of",
      "that name is replaced."
    })
final class LabelsCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(paramLabel = "RECORD", arity = "0..1", description = "Job record in YAML.")
  private Optional<Path> record = Optional.empty();

  @Option(
      names = "--kind",
      paramLabel = "KIND",
      description = "One of " + LabelSheetsOption.KINDS + ". Usual: what the sheet is for.")
  private Optional<LabelKind> kind = Optional.empty();

  @Option(
      names = "--sheet",
      paramLabel = "NAME",
      description = "Sheet or tape to lay out for. Usual: a sheet of the paper.")
  private Optional<String> sheetName = Optional.empty();

  @Option(
      names = "--start",
      paramLabel = "POSITION",
      description = "Where the first label goes on the first sheet, row by row. Usual: 1.")
  private int start = 1;

  @Option(
      names = "--only",
      paramLabel = "LABEL",
      split = ",",
      description = "Labels or ids of cables, plates, panels or conduits. Usual: all.")
  private List<String> only = List.of();

  @Option(
      names = "--into",
      paramLabel = "FILE",
      description = "PDF to write. Usual: named after the kind, here.")
  private Optional<Path> into = Optional.empty();

  @Option(names = "--list-sheets", description = "Lists the sheets and tapes, and ends.")
  private boolean listSheets;

  @Mixin private LabelSheetsOption sheets;

  @Mixin private ReaderOptions readerOptions;

  LabelsCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws TemplateProblem, IOException {
    Tables tables = new Tables();
    TemplateSource source = readerOptions.templates();
    Readers readers = readerOptions.readers();
    Findings findings = new Findings();
    LabelSheets all = sheets.read(tables, findings);
    if (listSheets || findings.hasErrors()) {
      Wording wording = readers.wording(Optional.empty(), source);
      return findings.hasErrors()
          ? refuse(findings.inReportOrder(), wording)
          : new SheetList(wording, console).print(all);
    }
    Path file = record.orElseThrow(() -> sheets.refused("A record is wanted: RECORD"));
    Reading reading = Reading.of(file, tables);
    Wording wording = readers.wording(reading.about(), source);
    if (reading.job().isEmpty()) {
      return refuse(reading.findings(), wording);
    }
    Job job = reading.job().get();
    LabelSheet sheet = sheet(all, readers.paper(job));
    List<Label> labels =
        chosen(
            new LabelsComposer(job, wording)
                .labels(sheet.purpose(), sheet.label().cells().orElse(1)));
    LabelOrder order = new LabelOrder(sheet, sheets.position(start, sheet), labels);
    Optional<byte[]> pdf =
        new LabelFiles(tables, job, readers, wording, new Extracts(tables, job, wording))
            .print(order, findings);
    if (findings.hasErrors()) {
      return refuse(findings.inReportOrder(), wording);
    }
    Path target = into.orElseGet(() -> Path.of(sheet.purpose().hyphened() + ".pdf"));
    Files.createDirectories(target.toAbsolutePath().getParent());
    WholeFile.write(target, pdf.orElseThrow());
    new FindingPrinter(wording).print(findings.inReportOrder(), console.err());
    console
        .out()
        .println(
            wording.say(
                Phrase.counted(
                    "labels.done", labels.size(), "sheet", sheet.name(), "file", target)));
    return findings.inReportOrder().isEmpty() ? ExitCode.CLEAN : ExitCode.WARNINGS;
  }

  private LabelSheet sheet(LabelSheets all, Paper usualPaper) {
    if (sheetName.isEmpty()) {
      return all.usual(
          kind.orElseThrow(() -> sheets.refused("--kind or --sheet is wanted")),
          LabelOptions.stock(usualPaper));
    }
    LabelSheet sheet = sheets.named(sheetName.get(), all);
    if (kind.filter(k -> k != sheet.purpose()).isPresent()) {
      throw sheets.refused("the sheet " + sheet.name() + " is for " + sheet.purpose().hyphened());
    }
    return sheet;
  }

  /** The labels asked for; a name that none of them has is refused. */
  private List<Label> chosen(List<Label> labels) {
    TreeSet<String> known = new TreeSet<>();
    labels.forEach(label -> known.addAll(label.names()));
    List<String> unknown = new ArrayList<>();
    for (String name : only) {
      if (!known.contains(name)) {
        unknown.add(
            name + Nearest.to(name, known).map(near -> " (did you mean " + near + "?)").orElse(""));
      }
    }
    if (!unknown.isEmpty()) {
      throw sheets.refused("no label of this kind is called " + String.join(", ", unknown));
    }
    List<Label> chosen =
        only.isEmpty()
            ? labels
            : labels.stream().filter(l -> only.stream().anyMatch(l.names()::contains)).toList();
    if (chosen.isEmpty()) {
      throw sheets.refused("the record has nothing that such labels are for");
    }
    return chosen;
  }

  private int refuse(List<Finding> findings, Wording wording) {
    new FindingPrinter(wording).printRefusal(findings, console.err());
    console.err().println(wording.say("build.refused"));
    return ExitCode.ERRORS;
  }
}
