package wallbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wallbook.read.RecordFolder;
import wallbook.record.JobRecord;
import wallbook.record.RunTest;
import wallbook.render.Attachment;
import wallbook.render.CarriedRecord;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/**
 * A record with the files beside it that it can't be read without: the full sweeps of its tests.
 * Photographs and a logo are not among them; a record reads without them, and they would make every
 * document large.
 *
 * @param bytes the record as it lies on the disk
 * @param sweeps files by the names that the record gives them
 */
record WholeRecord(byte[] bytes, Map<String, byte[]> sweeps) {

  /**
   * @param file the file that the record was read from
   */
  static WholeRecord read(Path file, JobRecord record) throws IOException {
    RecordFolder folder = new RecordFolder(file.toAbsolutePath().getParent());
    Map<String, byte[]> sweeps = new TreeMap<>();
    for (RunTest test : record.tests()) {
      Optional<Path> sweep = test.sweep().flatMap(folder::file);
      if (sweep.isPresent()) {
        sweeps.put(test.sweep().get(), Files.readAllBytes(sweep.get()));
      }
    }
    return new WholeRecord(Files.readAllBytes(file), sweeps);
  }

  /** The record and its sweeps as the owner's documents carry them. */
  List<Attachment> attachments(Wording wording) {
    List<Attachment> attachments = new ArrayList<>();
    attachments.add(
        new Attachment(
            CarriedRecord.FILE_NAME,
            "application/yaml",
            wording.say("attachment.record"),
            Attachment.Relationship.SOURCE,
            bytes));
    sweeps.forEach(
        (name, sweep) ->
            attachments.add(
                new Attachment(
                    CarriedRecord.attachmentName(name),
                    "text/csv",
                    wording.say(Phrase.of("attachment.sweep", "file", name)),
                    Attachment.Relationship.SOURCE,
                    sweep)));
    return attachments;
  }
}
