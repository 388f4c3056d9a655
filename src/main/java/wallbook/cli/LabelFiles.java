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
    LabelsComposer composer = new LabelsComposer(job, wording);
    choice.forEach(
        (kind, on) -> {
          console.progress(wording.say(Phrase.of("build.document", "file", kind.file())));
          List<Label> labels = composer.labels(kind, on.sheet().label().cells().orElse(1));
          print(job, new LabelOrder(on.sheet(), on.start(), labels), findings)
              .ifPresent(pdf -> files.add(PackageFile.of(kind.file(), pdf)));
        });
    console.progressDone();
    return files;
  }

  /** The file of an order. It leaves the household with those who stick the labels on. */
  Optional<byte[]> print(Job job, LabelOrder order, Findings findings) {
    String title = "label-kind." + order.sheet().purpose().word();
    Attachment extract =
        new Extracts(tables, job, wording).of(Recipient.TRADE, Part.HOUSE, "labels");
    return printer.print(order, readers.facts(job, wording, title), List.of(extract), findings);
  }
}
