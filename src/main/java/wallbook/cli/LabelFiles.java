package wallbook.cli;

import java.util.List;
import java.util.Optional;
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
import wallbook.wording.Wording;

/** Makes files of labels. They leave the household with those who stick the labels on. */
final class LabelFiles {
  private final Job job;
  private final Readers readers;
  private final Wording wording;
  private final Extracts extracts;
  private final LabelPrinter printer;

  /**
   * @param extracts those of the job
   */
  LabelFiles(Tables tables, Job job, Readers readers, Wording wording, Extracts extracts) {
    this.job = job;
    this.readers = readers;
    this.wording = wording;
    this.extracts = extracts;
    this.printer = new LabelPrinter(new Legibility(tables), wording);
  }

  /**
   * All labels of a kind; empty if there are none or they can't be printed.
   *
   * @param findings takes what can't be printed
   */
  Optional<byte[]> print(LabelKind kind, LabelOptions.Choice on, Findings findings) {
    List<Label> labels =
        new LabelsComposer(job, wording).labels(kind, on.sheet().label().cells().orElse(1));
    return print(new LabelOrder(on.sheet(), on.start(), labels), findings);
  }

  /** The file of an order; empty likewise. */
  Optional<byte[]> print(LabelOrder order, Findings findings) {
    String title = "label-kind." + order.sheet().purpose().word();
    Attachment extract = extracts.of(Recipient.TRADE, Part.HOUSE, "labels");
    return printer.print(order, readers.facts(job, wording, title), List.of(extract), findings);
  }
}
