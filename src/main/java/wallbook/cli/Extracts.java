package wallbook.cli;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import wallbook.compose.Discretion;
import wallbook.compose.disclosure.DisclosedJob;
import wallbook.compose.disclosure.DisclosureRules;
import wallbook.compose.disclosure.Extract;
import wallbook.compose.disclosure.Part;
import wallbook.compose.disclosure.Recipient;
import wallbook.read.RecordWriter;
import wallbook.record.Job;
import wallbook.reference.Tables;
import wallbook.render.Attachment;
import wallbook.render.CarriedRecord;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/**
 * Makes the extracts of a record that files for others than the household carry. Keeps them, as
 * several files carry the same; may be used by several threads.
 */
final class Extracts {
  private final Tables tables;
  private final Job job;
  private final Wording wording;
  private final Discretion discretion;
  private final Map<Recipient, DisclosedJob> disclosed = new ConcurrentHashMap<>();

  private final Map<Wanted, Attachment> made = new ConcurrentHashMap<>();

  private record Wanted(Recipient recipient, Part part, String reader) {}

  Extracts(Tables tables, Job job, Wording wording) {
    this.tables = tables;
    this.job = job;
    this.wording = wording;
    this.discretion = new Discretion(job, wording);
  }

  /**
   * The extract for one reader, as it is carried.
   *
   * @param reader last part of the key of the words that name the reader
   */
  Attachment of(Recipient recipient, Part part, String reader) {
    return made.computeIfAbsent(new Wanted(recipient, part, reader), this::make);
  }

  private Attachment make(Wanted wanted) {
    String name = wording.say("extract.for." + wanted.reader());
    String text =
        "# "
            + wording.say(Phrase.of("extract.head", "reader", name))
            + "\n"
            + RecordWriter.text(
                Extract.of(
                    disclosed(wanted.recipient()), wanted.part(), name, discretion::isTellable));
    return new Attachment(
        CarriedRecord.FILE_NAME,
        "application/yaml",
        wording.say(Phrase.of("attachment.extract", "reader", name)),
        Attachment.Relationship.SOURCE,
        text.getBytes(StandardCharsets.UTF_8));
  }

  /** What of the job is told to a recipient. */
  DisclosedJob disclosed(Recipient recipient) {
    return disclosed.computeIfAbsent(
        recipient,
        to -> DisclosedJob.of(job, new DisclosureRules(tables), to, discretion::isTellable));
  }
}
