/**
 * What a drawing shows: plain immutable records of geometry in metres and of text already put into
 * the reader's language and units. Documents are composed of them and the drawing renderer turns
 * each into a picture. Nothing here knows of SVG, of paper scales or of the job record.
 */
package wallbook.compose.drawing;
