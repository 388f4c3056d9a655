package wallbook.render;

import java.util.List;
import java.util.Objects;

/**
 * A document to be made.
 *
 * @param fileName path of the PDF in the package, such as {@code trades/electrical.pdf}
 * @param template path of the template below the templates folder
 * @param model view model, the template's {@code view}
 * @param facts what is printed on every document
 * @param attachments files to be carried inside the PDF
 */
public record DocumentRequest(
    String fileName,
    String template,
    Object model,
    DocumentFacts facts,
    List<Attachment> attachments) {

  public DocumentRequest {
    Objects.requireNonNull(fileName);
    Objects.requireNonNull(template);
    Objects.requireNonNull(model);
    Objects.requireNonNull(facts);
    attachments = List.copyOf(attachments);
  }
}
