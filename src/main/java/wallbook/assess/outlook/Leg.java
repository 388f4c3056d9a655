package wallbook.assess.outlook;

import java.util.List;
import java.util.Optional;

/**
 * One cable or conduit of a way.
 *
 * @param subject id of the run or conduit
 * @param place id of the place where its near end is, if it is at one
 * @param prospects what it is counted on to carry or take, at least one
 */
public record Leg(String subject, Optional<String> place, List<Prospect> prospects) {
  public Leg {
    prospects = List.copyOf(prospects);
    if (prospects.isEmpty()) {
      throw new IllegalArgumentException(subject + " is counted on for nothing");
    }
  }

  /** How much work it takes. */
  public Effort effort() {
    return Effort.most(prospects, Prospect::effort);
  }

  /** Whether it is in service today. */
  public boolean occupied() {
    return prospects.get(0).occupied();
  }
}
