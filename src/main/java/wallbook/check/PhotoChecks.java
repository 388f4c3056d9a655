package wallbook.check;

import java.util.List;
import java.util.Locale;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.record.Job;
import wallbook.record.Photo;
import wallbook.wording.Phrase;

/** Photographs: what they show, and whether documents can show them. */
final class PhotoChecks implements Check {
  private static final List<String> ENDINGS = List.of(".jpg", ".jpeg", ".png");

  @Override
  public void look(Job job, Findings findings) {
    for (Photo photo : job.photos()) {
      if (photo.place().isEmpty() && photo.space().isEmpty() && photo.head().isEmpty()) {
        findings.add(
            Finding.of(
                Severity.REMARK,
                "photo-of-nothing",
                photo.origin().position(),
                "file",
                photo.file()));
      }
      String name = photo.file().toLowerCase(Locale.ROOT);
      if (ENDINGS.stream().noneMatch(name::endsWith)) {
        findings.add(
            Finding.of(
                    Severity.WARNING,
                    "photo-of-unknown-form",
                    photo.origin().position("file"),
                    "file",
                    photo.file())
                .found(photo.file())
                .expecting(Phrase.of("expected.one-of", "choices", String.join(", ", ENDINGS))));
      }
    }
  }
}
