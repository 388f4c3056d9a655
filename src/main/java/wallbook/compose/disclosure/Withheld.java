package wallbook.compose.disclosure;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallbook.record.Conduit;
import wallbook.record.ConduitEnd;
import wallbook.record.Head;
import wallbook.record.HouseSystem;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.Run;

/** Ids of what a reader is not told. */
record Withheld(
    Set<String> systems,
    Set<String> runs,
    Set<String> places,
    Set<String> heads,
    Set<String> conduits) {
  static Withheld of(Job job, DisclosureRules rules, Recipient recipient) {
    Set<String> systems =
        ids(
            job.systems().stream()
                .filter(s -> !rules.tells(recipient, s.kind()))
                .map(HouseSystem::id));
    Set<String> secret =
        ids(job.places().stream().filter(p -> !rules.tells(recipient, p.use())).map(Place::id));
    Set<String> runs =
        ids(
            job.runs().stream()
                .filter(
                    r ->
                        r.system().filter(systems::contains).isPresent()
                            || r.from().place().filter(secret::contains).isPresent()
                            || r.to().place().filter(secret::contains).isPresent())
                .map(Run::id));
    Set<String> places =
        ids(
            job.places().stream()
                .filter(p -> secret.contains(p.id()) || servesOnly(job.runsAt(p), runs))
                .map(Place::id));
    Set<String> heads =
        ids(job.heads().stream().filter(h -> servesOnly(job.runsAt(h), runs)).map(Head::id));
    Set<String> conduits =
        ids(
            job.conduits().stream()
                .filter(c -> endsAt(c.from(), places, heads) || endsAt(c.to(), places, heads))
                .filter(c -> !c.contents().isEmpty() && runs.containsAll(c.contents()))
                .map(Conduit::id));
    return new Withheld(systems, runs, places, heads, conduits);
  }

  boolean isEmpty() {
    return systems.isEmpty() && runs.isEmpty() && places.isEmpty();
  }

  /** Whether only withheld runs end there; nothing is known to end there otherwise. */
  private static boolean servesOnly(List<Run> there, Set<String> runs) {
    return !there.isEmpty() && there.stream().allMatch(r -> runs.contains(r.id()));
  }

  private static boolean endsAt(ConduitEnd end, Set<String> places, Set<String> heads) {
    return end.place().filter(places::contains).isPresent()
        || end.head().filter(heads::contains).isPresent();
  }

  private static Set<String> ids(Stream<String> ids) {
    return ids.collect(Collectors.toUnmodifiableSet());
  }
}
