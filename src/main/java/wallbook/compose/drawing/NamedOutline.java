package wallbook.compose.drawing;

/** A room, a house or an outdoor area with its name; the name may be empty. */
public record NamedOutline(String name, Outline outline) {}
