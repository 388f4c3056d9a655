package wallbook.compose.figure;

/**
 * A photograph with what is said beneath it.
 *
 * @param figure the picture
 * @param upright whether it is higher than wide
 * @param shown when it was taken, and of which wall or place
 * @param caption what the record says of it
 */
public record PhotoView(Photograph figure, boolean upright, String shown, String caption) {}
