package wallbook.compose.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import wallbook.assess.Verdict;
import wallbook.assess.outlook.Effort;
import wallbook.assess.outlook.Leg;
import wallbook.assess.outlook.Prospect;
import wallbook.assess.outlook.Way;

/**
 * Ways that differ only in the cable they take: told of together.
 *
 * @param ways at least one, in the order of the answer
 */
record LikeWays(List<Way> ways) {
  LikeWays {
    ways = List.copyOf(ways);
  }

  /** What makes two ways one. */
  private record Kind(
      String means, Verdict verdict, Effort effort, boolean atPlace, List<String> services) {}

  /** The ways of an answer, like ones together, best first. */
  static List<LikeWays> of(List<Way> ways) {
    Map<Kind, List<Way>> byKind = new LinkedHashMap<>();
    for (Way way : ways) {
      byKind.computeIfAbsent(kind(way), k -> new ArrayList<>()).add(way);
    }
    return byKind.values().stream().map(LikeWays::new).toList();
  }

  /**
   * The best of each means, and the best at a place meant for the wish if that is another one:
   * enough to decide by.
   */
  static List<LikeWays> best(List<Way> ways) {
    List<LikeWays> best = new ArrayList<>();
    Set<String> seen = new TreeSet<>();
    Set<String> seenAtPlace = new TreeSet<>();
    for (LikeWays like : of(ways)) {
      boolean news = seen.add(like.first().means());
      boolean newsAtPlace = like.first().atPlace() && seenAtPlace.add(like.first().means());
      if (news || newsAtPlace) {
        best.add(like);
      }
    }
    return best;
  }

  Way first() {
    return ways.get(0);
  }

  /** The way with the least margin, which stands for all. */
  Way leastMargin() {
    List<Prospect> mains = ways.stream().map(Way::main).toList();
    return ways.get(mains.indexOf(LikeCables.leastMargin(mains)));
  }

  private static Kind kind(Way way) {
    return new Kind(
        way.means(),
        way.verdict(),
        way.effort(),
        way.atPlace(),
        way.legs().stream().map(LikeWays::services).map(Objects::toString).toList());
  }

  private static List<String> services(Leg leg) {
    return leg.prospects().stream().map(p -> p.service() + " " + leg.occupied()).toList();
  }
}
