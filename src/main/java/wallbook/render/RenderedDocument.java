package wallbook.render;

/**
 * A finished document.
 *
 * @param fileName path of the PDF in the package
 * @param pdf the PDF file; the array is the receiver's own
 * @param html the page it was printed from, with its drawings in it and without a stylesheet
 */
public record RenderedDocument(String fileName, byte[] pdf, String html) {}
