package wallbook.compose;

/** A caution with its heading. */
public record CautionView(String heading, String text) {}
