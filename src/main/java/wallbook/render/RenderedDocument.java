package wallbook.render;

import java.util.SortedSet;

/**
 * A finished document.
 *
 * @param fileName path of the PDF in the package
 * @param pdf the PDF file; the array is the receiver's own
 * @param unprintable code points of the text that the font lacks, printed as U+FFFD; whoever makes
 *     the package should say so
 */
public record RenderedDocument(String fileName, byte[] pdf, SortedSet<Integer> unprintable) {}
