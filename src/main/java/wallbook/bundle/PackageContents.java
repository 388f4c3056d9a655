package wallbook.bundle;

import java.time.LocalDate;
import java.util.Objects;

/**
 * What a package is called and says of itself.
 *
 * @param job id of the job, which begins the name of the folder
 * @param revision revision of the record, which ends it
 * @param issued day of the revision; all entries of the zip carry it
 * @param toolVersion version of the program that made the files
 */
public record PackageContents(String job, String revision, LocalDate issued, String toolVersion) {

  public PackageContents {
    Objects.requireNonNull(job);
    Objects.requireNonNull(revision);
    Objects.requireNonNull(issued);
    Objects.requireNonNull(toolVersion);
  }

  /** Name of the folder, and of the zip without its ending. */
  public String name() {
    return job + "-r" + revision;
  }
}
