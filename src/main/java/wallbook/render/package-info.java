/**
 * Turns a template and a view model into Markdown, HTML and a tagged PDF; a {@link
 * wallbook.render.DocumentRenderer} is the way in. View models, words and drawings come in as they
 * are and finished files come out; the package knows nothing of the record, of engineering or of
 * where files are stored.
 *
 * <p><b>View models</b> are records (of records, lists, ordered maps, optionals, texts, whole
 * numbers, booleans, enumerations, phrases, quantities and dates). A template reads the public
 * parameterless methods of a record and can call nothing else.
 *
 * <p><b>Drawings.</b> A {@link wallbook.render.FigureRenderer} gives each drawing twice: as a
 * {@link wallbook.render.Painting}, which is what is printed, and as SVG text for the page of HTML.
 * The SVG
 *
 * <ul>
 *   <li>has one {@code svg} root in the SVG namespace with a {@code viewBox}; {@code width} and
 *       {@code height}, if there, are in mm;
 *   <li>has presentation attributes ({@code fill="#333333"}) rather than a {@code style} element or
 *       CSS classes: those in the document would reach into the drawing;
 *   <li>has no scripts, no {@code foreignObject}, no links to anything outside the drawing; an
 *       {@code image} only with a {@code data:} address.
 * </ul>
 */
package wallbook.render;
