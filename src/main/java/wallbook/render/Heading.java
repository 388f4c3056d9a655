package wallbook.render;

/**
 * A heading of a document, for the table of contents and the bookmarks.
 *
 * @param level 1 to 6
 * @param id name of its anchor
 * @param text what it says
 */
public record Heading(int level, String id, String text) {}
