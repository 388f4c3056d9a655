package wallbook.compose.drawing;

import java.util.Optional;

/**
 * A room, a house or an outdoor area with its name; the name may be empty.
 *
 * @param target where a touch leads
 */
public record NamedOutline(String name, Outline outline, Optional<Target> target) {

  /** An outline that leads nowhere. */
  public NamedOutline(String name, Outline outline) {
    this(name, outline, Optional.empty());
  }
}
