package wallbook.assess.outlook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import wallbook.assess.Assessments;
import wallbook.record.HeadKind;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.record.Space;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Answers wishes: the ways a house offers without opening a wall, best first. Each way rests on
 * assessments of the cables and conduits it takes; nothing is claimed that they don't hold.
 *
 * <p>Order: what is sure goes before what has conditions, that before what the equipment decides,
 * that before what the record lacks a figure for; then the less work first; then at the place
 * before elsewhere in its space; then by usefulness of the means.
 */
public final class WishAssessor {
  private static final String MOVE_THE_RACK = "move-the-rack";
  private static final Comparator<Way> BEST_FIRST =
      Comparator.comparing(Way::verdict, Verdicts.FIRMEST_FIRST)
          .thenComparing(Way::effort)
          .thenComparing(way -> !way.atPlace())
          .thenComparing(Way::rank, Comparator.reverseOrder());

  private static final Assessments NOTHING_ASSESSED = new Assessments(List.of());

  private final List<Wish> wishes;
  private final List<Means> means;
  private final Map<String, String> mediumByService;

  public WishAssessor(Tables tables) {
    this.wishes = Wish.all(tables);
    this.means = Means.all(tables);
    this.mediumByService =
        Service.all(tables).stream().collect(Collectors.toMap(Service::name, Service::medium));
  }

  /** All wishes that can be asked for, in the order they are listed to a reader. */
  public List<Wish> wishes() {
    return wishes;
  }

  /** The wish of a name, if there is one. */
  public Optional<Wish> wish(String name) {
    return wishes.stream().filter(w -> w.name().equals(name)).findFirst();
  }

  /** The wishes that a service helps towards, in the order they are listed to a reader. */
  public List<Wish> towards(String service) {
    return wishes.stream()
        .filter(wish -> of(wish).stream().flatMap(Means::services).anyMatch(service::equals))
        .toList();
  }

  /**
   * The media that the answers for a wish rest on, by the first word of their topics: those of the
   * services that its cables must carry, with the marks that a cable needs where it lies.
   */
  public Set<String> media(Job job, Wish wish) {
    Set<String> media = new TreeSet<>(Set.of("outdoor"));
    for (Means one : of(wish)) {
      if (one.byConduit()) {
        media.add("conduit");
      }
      one.services().map(mediumByService::get).forEach(media::add);
    }
    // How far a line can be laid on is said of speaker cable, and of any other that a zone names.
    if (job.runs().stream()
        .anyMatch(run -> job.isOfZone(run) && job.cableOf(run).medium() != Medium.SPEAKER)) {
      media.add("speaker");
    }
    return media;
  }

  private List<Means> of(Wish wish) {
    return means.stream().filter(m -> m.wish().equals(wish.name())).toList();
  }

  /** Where in a house a wish may be had: the house as a whole, or spaces in the record's order. */
  public List<Target> targets(Job job, Wish wish) {
    return targets(new Known(job, NOTHING_ASSESSED, Outlook.EMPTY), wish);
  }

  private static List<Target> targets(Known known, Wish wish) {
    if (wish.ofHouse()) {
      return List.of(new Target.House());
    }
    return known.job().spaces().stream()
        .filter(space -> mayHave(known, wish, space))
        .<Target>map(space -> new Target.InSpace(space.id()))
        .toList();
  }

  /** Every wish at everywhere it may be had, computed on all processors. */
  public List<WishAnswer> answers(Job job, Assessments assessments, Outlook outlook) {
    Known known = new Known(job, assessments, outlook);
    return wishes.parallelStream()
        .flatMap(wish -> targets(known, wish).stream().map(target -> answer(known, wish, target)))
        .toList();
  }

  /**
   * What the house offers for a wish at some targets, whether or not the wish is usual there;
   * computed on all processors.
   */
  public List<WishAnswer> answers(
      Job job, Assessments assessments, Outlook outlook, Wish wish, List<Target> targets) {
    Known known = new Known(job, assessments, outlook);
    return targets.parallelStream().map(target -> answer(known, wish, target)).toList();
  }

  private WishAnswer answer(Known known, Wish wish, Target target) {
    RunWays overRuns = new RunWays(known);
    ConduitWays throughConduits = new ConduitWays(known);
    List<Means> ofWish = of(wish);
    List<Way> ways = new ArrayList<>();
    for (Means one : ofWish) {
      ways.addAll(
          one.byConduit() ? throughConduits.of(wish, one, target) : overRuns.of(wish, one, target));
    }
    ofWish.forEach(one -> one.unless().ifPresent(better -> dropWorse(ways, one.name(), better)));
    ways.sort(BEST_FIRST);
    return new WishAnswer(
        wish,
        target,
        ways,
        new Obstacles(known).of(ofWish, target, ways),
        wish.name().equals(MOVE_THE_RACK) ? known.rackFacts() : List.of(),
        wish.hasAlternative()
            ? Optional.of(Phrase.of("outlook.alternative." + wish.name()))
            : Optional.empty());
  }

  /** Drops ways of a means that take a cable which a better means takes too. */
  private static void dropWorse(List<Way> ways, String worse, String better) {
    Set<String> taken =
        ways.stream()
            .filter(way -> way.means().equals(better))
            .map(way -> way.legs().get(0).subject())
            .collect(Collectors.toSet());
    ways.removeIf(way -> way.means().equals(worse) && taken.contains(way.legs().get(0).subject()));
  }

  private static boolean mayHave(Known known, Wish wish, Space space) {
    if (!wish.realm().has(space.kind())
        || (wish.unlessSound() && known.hasSound(space.id()))
        || (wish.name().equals(MOVE_THE_RACK) && hasRack(known.job(), space))) {
      return false;
    }
    boolean natural = known.usesIn(space.id()).stream().anyMatch(wish.uses()::contains);
    return natural || wish.rooms().contains(space.kind());
  }

  private static boolean hasRack(Job job, Space space) {
    return job.heads().stream()
        .anyMatch(h -> h.kind() == HeadKind.RACK && h.space().equals(space.id()));
  }
}
