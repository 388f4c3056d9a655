package wallbook.compose;

/** A word of the trade and what it means. */
public record TermView(String term, String meaning) {}
