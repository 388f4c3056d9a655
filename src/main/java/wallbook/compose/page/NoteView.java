package wallbook.compose.page;

/**
 * A statement that belongs to results, said once and referred to by its number.
 *
 * @param term stable name of what it states: {@code limited-by}, {@code missing}, {@code
 *     conditions}, {@code adds}, {@code by} or {@code source}
 */
public record NoteView(String number, String term, String text) {}
