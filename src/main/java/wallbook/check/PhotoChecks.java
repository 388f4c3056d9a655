package wallbook.check;

import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.record.Job;
import wallbook.record.Photo;

/** Photographs: what they show. Whether documents can show them, reading tells. */
final class PhotoChecks implements Check {
  @Override
  public boolean findsErrors() {
    return false;
  }

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
    }
  }
}
