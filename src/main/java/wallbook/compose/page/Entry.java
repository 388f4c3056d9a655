package wallbook.compose.page;

/**
 * Something that a search finds.
 *
 * @param label what is printed on it, else an empty text; a search for exactly this goes there
 * @param kind what sort of thing it is, in words
 * @param title what is shown first
 * @param detail what is shown beneath
 * @param words further words that find it
 */
public record Entry(
    String anchor, String label, String kind, String title, String detail, String words) {}
