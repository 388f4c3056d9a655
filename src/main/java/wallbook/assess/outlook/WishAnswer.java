package wallbook.assess.outlook;

import java.util.List;
import java.util.Optional;
import wallbook.wording.Phrase;

/**
 * What a house offers for a wish.
 *
 * @param ways best first; empty if nothing does it without opening a wall
 * @param obstacles what would be at hand but can't serve
 * @param facts what the record says that bears on the wish
 * @param alternative what may do instead without wire, which is not assessed
 */
public record WishAnswer(
    Wish wish,
    Target target,
    List<Way> ways,
    List<Obstacle> obstacles,
    List<Phrase> facts,
    Optional<Phrase> alternative) {
  public WishAnswer {
    ways = List.copyOf(ways);
    obstacles = List.copyOf(obstacles);
    facts = List.copyOf(facts);
  }
}
