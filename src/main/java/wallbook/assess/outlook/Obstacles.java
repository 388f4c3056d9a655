package wallbook.assess.outlook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.record.Run;
import wallbook.wording.Phrase;

/** Finds what lies at a target, would be used for a wish, and can't serve it. */
final class Obstacles {
  private final Known known;

  Obstacles(Known known) {
    this.known = known;
  }

  /**
   * @param ways the ways found; what serves one of them is no obstacle
   */
  List<Obstacle> of(List<Means> all, Target target, List<Way> ways) {
    Set<String> serving = new HashSet<>();
    ways.forEach(way -> way.legs().forEach(leg -> serving.add(leg.subject())));
    Map<String, Obstacle> found = new LinkedHashMap<>();
    for (Means means : all) {
      List<Obstacle> ofMeans = means.byConduit() ? conduits(means, target) : runs(means, target);
      ofMeans.forEach(obstacle -> found.putIfAbsent(obstacle.subject(), obstacle));
    }
    found.keySet().removeAll(serving);
    return List.copyOf(found.values());
  }

  private List<Obstacle> runs(Means means, Target target) {
    List<Obstacle> found = new ArrayList<>();
    for (NearRun near : known.runs(means.reach(), target)) {
      Run run = near.run();
      reason(means, run)
          .map(reason -> new Obstacle(run.id(), reason, run.standIn()))
          .ifPresent(found::add);
    }
    return found;
  }

  /** Why a run that could be meant for the first leg can't serve it. */
  private Optional<Phrase> reason(Means means, Run run) {
    for (List<String> alternatives : means.legs().get(0).services()) {
      Optional<Prospect> last = Optional.empty();
      boolean none = true;
      for (String service : alternatives) {
        Optional<Prospect> found = known.outlook().find(run.id(), service);
        if (found.isPresent()) {
          last = found;
          none &= found.get().verdict() == Verdict.BEYOND;
        }
      }
      if (last.isPresent() && none) {
        return last.get().blocker();
      }
    }
    return Optional.empty();
  }

  private List<Obstacle> conduits(Means means, Target target) {
    List<Obstacle> found = new ArrayList<>();
    for (ConduitRoute route : new ConduitRoutes(known).of(means.reach(), target)) {
      route
          .conduits()
          .forEach(
              conduit ->
                  known
                      .assessments()
                      .find(conduit.id(), "conduit.clear")
                      .filter(a -> a.verdict() == Verdict.BEYOND)
                      .flatMap(Assessment::limitedBy)
                      .map(reason -> new Obstacle(conduit.id(), reason, Optional.empty()))
                      .ifPresent(found::add));
    }
    return found;
  }
}
