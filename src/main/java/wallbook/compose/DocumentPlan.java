package wallbook.compose;

import java.util.function.Function;
import wallbook.compose.disclosure.Part;

/**
 * One document of the package: where it lies, what it is set from and what goes into it.
 *
 * @param file path in the package, such as {@code homeowner-manual.pdf}
 * @param template path below the templates folder
 * @param titleKey words of its title
 * @param disclosure whose hands it is made for
 * @param part what of the house it is about, if it leaves the household
 * @param view makes its view model
 */
public record DocumentPlan(
    String file,
    String template,
    String titleKey,
    Disclosure disclosure,
    Part part,
    Function<Composition, Object> view) {

  /** A document for the household. */
  public DocumentPlan(
      String file, String template, String titleKey, Function<Composition, Object> view) {
    this(file, template, titleKey, Disclosure.HOUSEHOLD, Part.HOUSE, view);
  }
}
