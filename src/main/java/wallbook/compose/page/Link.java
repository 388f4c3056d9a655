package wallbook.compose.page;

/**
 * A text that leads to a part of the page.
 *
 * @param anchor name of the part, such as {@code run/KIT-01}
 */
public record Link(String anchor, String text) {}
