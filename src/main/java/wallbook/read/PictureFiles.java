package wallbook.read;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;
import wallbook.picture.Picture;
import wallbook.picture.PictureReader;
import wallbook.picture.PictureRefused;
import wallbook.record.JobRecord;
import wallbook.record.Photo;
import wallbook.wording.Phrase;

/**
 * Reads the photographs and the logo that a record names. A picture that is missing or broken is a
 * warning: the documents can do without it.
 */
final class PictureFiles {
  private final RecordFolder folder;
  private final Findings findings;

  PictureFiles(RecordFolder folder, Findings findings) {
    this.folder = folder;
    this.findings = findings;
  }

  /** The pictures by the name that the record gives the file. */
  Map<String, Picture> read(JobRecord record) {
    Map<String, SourcePosition> named = new LinkedHashMap<>();
    record
        .job()
        .look()
        .ifPresent(
            look -> look.logo().ifPresent(f -> named.put(f, look.origin().position("logo"))));
    for (Photo photo : record.photos()) {
      named.putIfAbsent(photo.file(), photo.origin().position("file"));
    }
    // Decoding takes its time, so all processors take part; findings are put in order later.
    Collection<Outcome> outcomes =
        named.entrySet().parallelStream().map(e -> read(e.getKey(), e.getValue())).toList();
    Map<String, Picture> pictures = new LinkedHashMap<>();
    for (Outcome outcome : outcomes) {
      outcome.picture().ifPresent(picture -> pictures.put(outcome.name(), picture));
      outcome.finding().ifPresent(findings::add);
    }
    return pictures;
  }

  private record Outcome(String name, Optional<Picture> picture, Optional<Finding> finding) {}

  private Outcome read(String name, SourcePosition at) {
    Optional<Path> file = folder.file(name);
    if (file.isEmpty()) {
      return without(
          name, finding("photo-missing", name, at).expecting(Phrase.of("expected.file-beside")));
    }
    try {
      return new Outcome(name, Optional.of(PictureReader.read(file.get())), Optional.empty());
    } catch (PictureRefused e) {
      return without(
          name,
          switch (e.reason()) {
            case OTHER_FORM ->
                finding("photo-of-unknown-form", name, at)
                    .expecting(Phrase.of("expected.one-of", "choices", "JPEG, PNG"));
            case TOO_LARGE ->
                finding("photo-too-large", name, at)
                    .expecting(
                        Phrase.of(
                            "expected.picture-size",
                            "megabytes",
                            (int) (PictureReader.MOST_BYTES >> 20),
                            "megapixels",
                            (int) (PictureReader.MOST_PIXELS / 1_000_000)));
            case DAMAGED -> finding("photo-damaged", name, at);
          });
    } catch (IOException e) {
      return without(name, finding("photo-damaged", name, at));
    }
  }

  private static Outcome without(String name, Finding finding) {
    return new Outcome(name, Optional.empty(), Optional.of(finding));
  }

  private static Finding finding(String name, String file, SourcePosition at) {
    return Finding.of(Severity.WARNING, name, at, "file", file).found(file);
  }
}
