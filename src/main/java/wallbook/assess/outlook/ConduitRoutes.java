package wallbook.assess.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wallbook.record.Conduit;
import wallbook.record.ConduitEnd;
import wallbook.record.Job;
import wallbook.record.SpaceKind;

/**
 * Finds conduits that lead from a target to where cables come home. Two are taken as joined where
 * both end open in one attic or crawl space, which a cable can cross; a route that ends elsewhere
 * is returned too, for it may be all there is.
 */
final class ConduitRoutes {
  private static final int MOST_CONDUITS = 3;

  private final Known known;
  private final Job job;

  ConduitRoutes(Known known) {
    this.known = known;
    this.job = known.job();
  }

  /** Routes for a reach, in the order of the record's conduits. */
  List<ConduitRoute> of(Means.Reach reach, Target target) {
    return switch (reach) {
      case ENTRANCE ->
          starts(reach, target, end -> Entrance.isEntrance(job, end.head(), end.place()))
              .filter(this::isHome)
              .toList();
      case ANY ->
          starts(reach, target, end -> end.place().isPresent() && target.holds(job, end))
              .filter(route -> route.far().space().isEmpty())
              .toList();
      case HEAD -> homewards(starts(reach, target, end -> target.holds(job, end)).toList(), target);
    };
  }

  /** Whether a route ends where cables come home. */
  boolean isHome(ConduitRoute route) {
    return Entrance.isHome(job, route.far().head());
  }

  private Stream<ConduitRoute> starts(
      Means.Reach reach, Target target, Predicate<ConduitEnd> isNear) {
    return known
        .conduits(reach, target)
        .flatMap(
            conduit ->
                Stream.of(conduit.from(), conduit.to())
                    .filter(isNear)
                    .limit(1)
                    .map(near -> ConduitRoute.from(conduit, near)));
  }

  /** Each start led on home where that can be; where it can't, as it is if it leads nearer. */
  private List<ConduitRoute> homewards(List<ConduitRoute> starts, Target target) {
    List<ConduitRoute> routes = new ArrayList<>();
    for (ConduitRoute start : starts) {
      List<ConduitRoute> home = ledHome(start);
      if (!home.isEmpty()) {
        routes.addAll(home);
      } else if (leadsAway(start, target)) {
        routes.add(start);
      }
    }
    return routes;
  }

  /** Whether a conduit leads out of the target's space and into the house. */
  private boolean leadsAway(ConduitRoute route, Target target) {
    return !target.holds(job, route.far())
        && !job.space(Target.spaceOf(job, route.far())).kind().isOutdoor();
  }

  private List<ConduitRoute> ledHome(ConduitRoute route) {
    if (isHome(route)) {
      return List.of(route);
    }
    Optional<String> space = route.openIn().filter(this::isCrossable);
    if (space.isEmpty() || route.conduits().size() == MOST_CONDUITS) {
      return List.of();
    }
    List<ConduitRoute> found = new ArrayList<>();
    for (Conduit next : job.conduits()) {
      if (!route.conduits().contains(next)) {
        Stream.of(next.from(), next.to())
            .filter(end -> end.space().equals(space))
            .limit(1)
            .forEach(end -> found.addAll(ledHome(route.then(next, end))));
      }
    }
    return found;
  }

  private boolean isCrossable(String space) {
    SpaceKind kind = job.space(space).kind();
    return kind == SpaceKind.ATTIC || kind == SpaceKind.CRAWL_SPACE;
  }
}
