package wallbook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallbook.bundle.PackageFile;
import wallbook.compose.disclosure.Part;
import wallbook.compose.disclosure.Recipient;
import wallbook.compose.labels.Label;
import wallbook.compose.labels.LabelsComposer;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.record.Job;
import wallbook.reference.Tables;
import wallbook.render.Attachment;
import wallbook.render.labels.LabelOrder;
import wallbook.render.labels.LabelPrinter;
import wallbook.stock.LabelKind;
import wallbook.stock.Legibility;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Makes the files of labels of a package. */
final class LabelFiles {
  private final Tables tables;
  private final Readers readers;
  private final Wording wording;
  private final Console console;
  private final LabelPrinter printer;

  LabelFiles(Tables tables, Readers readers, Wording wording, Console console) {
    this.tables = tables;
    this.readers = readers;
    this.wording = wording;
    this.console = console;
    this.printer = new LabelPrinter(new Legibility(tables), wording);
  }

  /**
   * One file for each kind of label that the job has.
   *
   * @param findings takes what can't be printed; if it has errors already, nothing is made
   */
  List<PackageFile> make(Job job, Map<LabelKind, LabelOptions.Choice> choice, Findings findings) {
    List<PackageFile> files = new ArrayList<>();
    if (findings.hasErrors()) {
      return files;
    }
    Attachment extract = extract(job);
    List<Printed> printed =
        choice.entrySet().parallelStream()
            .map(each -> print(job, each.getKey(), each.getValue(), extract))
            .toList();
    for (Printed one : printed) {
      findings.addAll(one.findings());
      one.file().ifPresent(files::add);
    }
    console.progressDone();
    return files;
  }

  private record Printed(Optional<PackageFile> file, List<Finding> findings) {}

  private Printed print(Job job, LabelKind kind, LabelOptions.Choice on, Attachment extract) {
    console.progress(wording.say(Phrase.of("build.document", "file", kind.file())));
    List<Label> labels =
        new LabelsComposer(job, wording).labels(kind, on.sheet().label().cells().orElse(1));
    LabelOrder order = new LabelOrder(on.sheet(), on.start(), labels);
    Findings findings = new Findings();
    Optional<PackageFile> file =
        print(job, order, extract, findings).map(pdf -> PackageFile.of(kind.file(), pdf));
    return new Printed(file, findings.inReportOrder());
  }

  /** The file of an order. It leaves the household with those who stick the labels on. */
  Optional<byte[]> print(Job job, LabelOrder order, Findings findings) {
    return print(job, order, extract(job), findings);
  }

  private Attachment extract(Job job) {
    return new Extracts(tables, job, wording).of(Recipient.TRADE, Part.HOUSE, "labels");
  }

  private Optional<byte[]> print(Job job, LabelOrder order, Attachment extract, Findings findings) {
    String title = "label-kind." + order.sheet().purpose().word();
    return printer.print(order, readers.facts(job, wording, title), List.of(extract), findings);
  }
}
