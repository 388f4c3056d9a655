package wallbook.cli;

import wallbook.compose.Composition;
import wallbook.compose.disclosure.Part;
import wallbook.compose.disclosure.Recipient;
import wallbook.compose.page.PageComposer;
import wallbook.render.DocumentFacts;
import wallbook.render.PageRenderer;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;

/** Makes the offline page of a package. */
final class OfflinePage {
  /** Where the page lies in the package. */
  static final String FILE = "index.html";

  private final TemplateSource templates;
  private final Recipient recipient;

  /**
   * @param recipient who is to open the page; it tells nothing else
   */
  OfflinePage(TemplateSource templates, Recipient recipient) {
    this.templates = templates;
    this.recipient = recipient;
  }

  /**
   * The page.
   *
   * @param whole what the owner's copy carries; other copies carry an extract
   * @throws TemplateProblem if the template can't be filled
   */
  byte[] html(Composition composition, DocumentFacts facts, WholeRecord whole, Extracts extracts)
      throws TemplateProblem {
    PageComposer composer = new PageComposer(composition, extracts.disclosed(recipient), recipient);
    byte[] record =
        recipient == Recipient.OWNER
            ? whole.bytes()
            : extracts.of(recipient, Part.HOUSE, "page").bytes();
    return new PageRenderer(templates, composition.wording())
        .render(composer.compose(), facts, record);
  }
}
