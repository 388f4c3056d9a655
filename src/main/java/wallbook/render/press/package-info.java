/**
 * Sets a page of HTML with its stylesheet as a tagged PDF: reads the styles ({@link
 * wallbook.render.press.StyleSheet}), breaks text into lines, blocks and tables into slices, slices
 * into pages, and writes each page as soon as it is full. The package knows the HTML and CSS that
 * our documents use, listed in {@code docs/print-style.md}, and refuses what it doesn't know; it
 * knows nothing of templates, of view models or of what documents say.
 */
package wallbook.render.press;
