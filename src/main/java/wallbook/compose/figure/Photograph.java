package wallbook.compose.figure;

import wallbook.picture.Picture;

/**
 * A photograph, ready to print.
 *
 * @param picture what it shows
 * @param alternative what a reader who can't see it is told
 */
public record Photograph(Picture picture, String alternative) {}
