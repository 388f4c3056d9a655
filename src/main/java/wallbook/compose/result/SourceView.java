package wallbook.compose.result;

/**
 * A source in the list at the end of a document.
 *
 * @param number as it stands beside the results
 * @param standing how far it may be trusted, in words
 */
public record SourceView(String number, String citation, String standing) {}
