/**
 * Turns the drawing records of {@code wallbook.compose.drawing} into pictures. A drawing first
 * becomes a {@link wallbook.render.drawing.Scene} of plain shapes and words in millimetres; a small
 * writer turns any scene into SVG. Nothing here knows of the job record or of what a drawing is
 * for.
 */
package wallbook.render.drawing;
