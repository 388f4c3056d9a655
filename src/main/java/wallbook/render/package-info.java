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
 * <p><b>Drawings.</b> A {@link wallbook.render.FigureRenderer} gives the SVG text of a drawing.
 * What the PDF draws rightly:
 *
 * <ul>
 *   <li>one {@code svg} root in the SVG namespace with a {@code viewBox}; with {@code width} and
 *       {@code height} in mm it is printed at that size, true to scale, and must fit between the
 *       margins; without them it is as wide as the text, and its {@code viewBox} has whole numbers;
 *   <li>text in {@code font-family="Noto Sans"}, weight 400 or 700 (or {@code normal}, {@code
 *       bold}), style {@code normal} or {@code italic}; every other family is drawn in Noto Sans
 *       too. Text is drawn as outlines, so it needs no font in the PDF and can't be searched: what
 *       must be found by searching belongs in the text beside the drawing;
 *   <li>presentation attributes ({@code fill="#333333"}) rather than a {@code style} element or CSS
 *       classes: those in the document would reach into the drawing;
 *   <li>only opaque colours of sRGB, no filters, masks, blend modes or gradients; hatching by lines
 *       or {@code pattern};
 *   <li>no scripts, no {@code foreignObject}, no links to anything outside the drawing; an {@code
 *       image} only with a {@code data:} address.
 * </ul>
 */
package wallbook.render;
