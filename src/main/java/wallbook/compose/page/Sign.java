package wallbook.compose.page;

/**
 * A state or verdict in a word, with a stable key that chooses the sign set before it.
 *
 * @param key lower-case with hyphens
 */
public record Sign(String key, String word) {}
