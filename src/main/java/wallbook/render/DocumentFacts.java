package wallbook.render;

import java.time.LocalDate;
import java.util.Objects;

/**
 * What is printed on and recorded in every document of a package.
 *
 * @param jobTitle name of the job, for the running head
 * @param documentTitle title of the document, unless its template gives one
 * @param language language tag of the text (BCP 47), such as {@code en-US}
 * @param revision revision of the record, for the foot of each page
 * @param issued day of the revision; also the date of creation in the file, at noon UTC
 * @param paper sheet to print on
 * @param generatorVersion version of this program
 * @param invented whether the record is an invented example, which each page then says
 */
public record DocumentFacts(
    String jobTitle,
    String documentTitle,
    String language,
    String revision,
    LocalDate issued,
    PaperSize paper,
    String generatorVersion,
    boolean invented) {

  public DocumentFacts {
    Objects.requireNonNull(jobTitle);
    Objects.requireNonNull(documentTitle);
    Objects.requireNonNull(language);
    Objects.requireNonNull(revision);
    Objects.requireNonNull(issued);
    Objects.requireNonNull(paper);
    Objects.requireNonNull(generatorVersion);
  }
}
