package wallbook.assess.outlook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.record.Conduit;
import wallbook.record.Job;
import wallbook.record.OutdoorRating;
import wallbook.wording.Phrase;

/**
 * Finds the ways in which a cable can be pulled through conduits: one of the means' cables must
 * find room in each conduit of the route, and its connector, if there is one, must pass.
 */
final class ConduitWays {
  private static final String THICKEST = "conduit.largest-cable.flat-40";

  private final Known known;
  private final Job job;
  private final ConduitRoutes routes;

  ConduitWays(Known known) {
    this.known = known;
    this.job = known.job();
    this.routes = new ConduitRoutes(known);
  }

  /** The ways that a means has at a target. */
  List<Way> of(Wish wish, Means means, Target target) {
    List<Way> ways = new ArrayList<>();
    for (ConduitRoute route : routes.of(means.reach(), target)) {
      boolean inPlace = !means.onlyAtPlace() || isAtPlace(wish, target, route);
      if (inPlace && hasRoom(route)) {
        legs(means, route).ifPresent(legs -> ways.add(way(wish, means, target, route, legs)));
      }
    }
    return ways;
  }

  private boolean hasRoom(ConduitRoute route) {
    return thickest(route).stream().noneMatch(a -> a.verdict() == Verdict.BEYOND);
  }

  private Way way(Wish wish, Means means, Target target, ConduitRoute route, List<Leg> legs) {
    return new Way(
        means.name(),
        means.words(),
        means.rank(),
        legs,
        means.cables().isEmpty()
            ? thickest(route).stream().map(a -> new Figure(a.asked(), a)).toList()
            : List.of(),
        isAtPlace(wish, target, route),
        conditions(means, route),
        means.notes());
  }

  /** What the conduits are counted on for; empty if one of them can't take it. */
  private Optional<List<Leg>> legs(Means means, ConduitRoute route) {
    List<List<String>> choices = new ArrayList<>();
    if (!means.cables().isEmpty()) {
      choices.add(fitting(means, route).map(id -> ConduitProspects.CABLE + id).stream().toList());
    }
    means.connector().ifPresent(connector -> choices.add(List.of(connector)));
    if (choices.stream().anyMatch(List::isEmpty)) {
      return Optional.empty();
    }
    List<Leg> legs = new ArrayList<>();
    for (Conduit conduit : route.conduits()) {
      List<Prospect> prospects =
          choices.stream()
              .flatMap(services -> known.outlook().find(conduit.id(), services.get(0)).stream())
              .filter(prospect -> prospect.verdict() != Verdict.BEYOND)
              .toList();
      if (prospects.size() < choices.size()) {
        return Optional.empty();
      }
      legs.add(new Leg(conduit.id(), route.near().place(), prospects));
    }
    return Optional.of(legs);
  }

  /** The cable that finds room most firmly in the whole route, of equals the better one. */
  private Optional<String> fitting(Means means, ConduitRoute route) {
    return means.cables().stream()
        .filter(id -> job.cables().stream().anyMatch(cable -> cable.id().equals(id)))
        .filter(id -> !isOutdoors(route) || isForWet(id))
        .filter(id -> room(route, id) != Verdict.BEYOND)
        .min(Comparator.comparing((String id) -> room(route, id), Verdicts.FIRMEST_FIRST));
  }

  /** How firmly a cable finds room; beyond the limit where a conduit wasn't asked about it. */
  private Verdict room(ConduitRoute route, String cable) {
    return route.conduits().stream()
        .map(conduit -> known.outlook().find(conduit.id(), ConduitProspects.CABLE + cable))
        .map(prospect -> prospect.map(Prospect::verdict).orElse(Verdict.BEYOND))
        .reduce(Verdicts::weaker)
        .orElseThrow();
  }

  private boolean isOutdoors(ConduitRoute route) {
    return route.conduits().stream()
        .anyMatch(
            conduit ->
                List.of(conduit.from(), conduit.to()).stream()
                    .map(end -> Target.spaceOf(job, end))
                    .anyMatch(space -> job.space(space).kind().isOutdoor()));
  }

  private boolean isForWet(String cable) {
    return job.cable(cable).outdoor().contains(OutdoorRating.WET_LOCATION);
  }

  private List<Assessment> thickest(ConduitRoute route) {
    return route.conduits().stream()
        .flatMap(conduit -> known.assessments().find(conduit.id(), THICKEST).stream())
        .toList();
  }

  private List<Phrase> conditions(Means means, ConduitRoute route) {
    List<Phrase> conditions = new ArrayList<>(means.conditions());
    for (String space : route.crossed()) {
      conditions.add(Phrase.of("outlook.condition.across", "space", job.space(space).name()));
    }
    if (means.reach() == Means.Reach.HEAD && !routes.isHome(route)) {
      String where = job.space(Target.spaceOf(job, route.far())).name();
      conditions.add(Phrase.of("outlook.condition.gap", "space", where));
    }
    if (means.reach() != Means.Reach.ENTRANCE) {
      route.conduits().stream()
          .filter(this::isKeptForProvider)
          .map(c -> Phrase.of("outlook.condition.kept-for-provider", "label", c.label()))
          .forEach(conditions::add);
    }
    return conditions;
  }

  private boolean isKeptForProvider(Conduit conduit) {
    return Entrance.isEntrance(job, conduit.from().head(), conduit.from().place())
        || Entrance.isEntrance(job, conduit.to().head(), conduit.to().place());
  }

  private boolean isAtPlace(Wish wish, Target target, ConduitRoute route) {
    if (target instanceof Target.AtPlace at) {
      return route.near().place().equals(Optional.of(at.place()));
    }
    return target instanceof Target.House
        || route
            .near()
            .place()
            .map(id -> job.place(id).use())
            .filter(wish.uses()::contains)
            .isPresent();
  }
}
