package wallbook.render.press;

/**
 * How the lines of a block stand.
 *
 * @param indent of the first line
 * @param orphans least lines of a paragraph before a page ends
 * @param widows least lines of a paragraph on the page where it ends
 * @param collapses whether the cells of a table share their borders
 */
record BlockStyle(
    Keywords.Align align,
    Length indent,
    Keywords.ListMark listMark,
    int orphans,
    int widows,
    boolean collapses) {}
