package wallbook.assess.conduit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Diameter;
import wallbook.record.Job;
import wallbook.record.PathPiece;
import wallbook.reference.Source;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Which connectors pass a conduit, alone or round what lies in it, straight and through its bends.
 */
final class HeadQuestions implements Questions {
  private final List<HeadSize> heads;
  private final Bundle bundle;
  private final CableDefaults defaults;
  private final Source geometry;

  HeadQuestions(Tables tables) {
    this.heads = HeadSize.all(tables);
    this.bundle = new Bundle(tables);
    this.defaults = new CableDefaults(tables);
    this.geometry = bundle.source();
  }

  /** A head and what was found of it. */
  private record Tried(HeadSize head, Assessment assessment) {}

  @Override
  public List<Assessment> about(ConduitCase conduit, Job job) {
    List<Tried> tried =
        heads.stream().map(head -> new Tried(head, passes(conduit, job, head))).toList();
    List<Assessment> found = new ArrayList<>();
    found.add(largest(conduit, tried));
    tried.forEach(one -> found.add(one.assessment()));
    return found;
  }

  private Assessment largest(ConduitCase conduit, List<Tried> tried) {
    Assessment.Builder asked =
        Assessment.of(
            conduit.id(), "conduit.largest-head", Phrase.of("conduit.largest-head.asked"));
    if (!conduit.missingForFill().isEmpty()) {
      return asked.notStated(conduit.missingForFill(), geometry);
    }
    Optional<Tried> largest =
        tried.stream()
            .filter(one -> one.assessment().holds())
            .max(Comparator.comparing(one -> one.head().diagonal()));
    if (largest.isEmpty()) {
      Phrase reason =
          conduit.clearance().isClosed()
              ? conduit.clearance().reason()
              : Phrase.of("conduit.largest-head.none");
      return asked.limitedBy(reason).verdict(Verdict.BEYOND, geometry);
    }
    Assessment of = largest.get().assessment();
    of.limitedBy().ifPresent(asked::assuming);
    return asked
        .restingOn(of)
        .value(largest.get().head().diagonal())
        .limitedBy(Phrase.of("conduit.largest-head.is", "head", named(largest.get().head())))
        .verdict(of.verdict(), of.source());
  }

  private static Phrase named(HeadSize head) {
    return Phrase.of("conduit.head." + head.name());
  }

  private Assessment passes(ConduitCase conduit, Job job, HeadSize head) {
    Assessment.Builder asked =
        Assessment.of(
            conduit.id(),
            "conduit.head." + head.name(),
            Phrase.of("conduit.head.asked", "head", named(head)));
    Source source = head.source().and(geometry);
    List<Phrase> missing = conduit.missingForFill();
    if (!missing.isEmpty()) {
      return asked.notStated(missing, source);
    }
    Bore bore = conduit.bore().orElseThrow();
    Source whole = defaults.source(source.and(bore.source()), job, conduit.cables());
    Diameter diagonal = head.diagonal();
    asked.value(diagonal);
    if (!conduit.clearance().isClosed()) {
      asked.limit(bore.diameter(), bore.diameter().minus(diagonal));
    }
    asked.assuming(Phrase.of("conduit.assume.bare-head"));
    defaults.assumption(job, conduit.cables()).ifPresent(asked::assuming);
    List<Hindrance> hindrances = hindrances(conduit, head, bore.diameter());
    Optional<Hindrance> barrier = hindrances.stream().filter(Hindrance::stops).findFirst();
    if (barrier.isPresent()) {
      Hindrance stops = barrier.get();
      stops.needed().ifPresent(asked::value);
      stops.margin().ifPresent(margin -> asked.limit(stops.room().orElseThrow(), margin));
      return conduit.clearance().judge(asked, Verdict.BEYOND, diagonal, stops.words(), whole);
    }
    hindrances.stream().skip(1).forEach(h -> asked.assuming(h.words()));
    asked.hangingOn(hindrances.stream().map(Hindrance::words).toList());
    return hindrances.isEmpty()
        ? conduit
            .clearance()
            .judge(asked, Verdict.WITHIN, diagonal, Phrase.of("conduit.head.bore"), whole)
        : conduit
            .clearance()
            .judge(asked, Verdict.CONDITIONAL, diagonal, hindrances.get(0).words(), whole);
  }

  /**
   * What stops a head, or makes its passage depend on something.
   *
   * @param needed what would have to pass, where that is not the head's diagonal
   * @param room what there is for it
   */
  private record Hindrance(
      boolean stops, Phrase words, Optional<Diameter> needed, Optional<Diameter> room) {
    Hindrance(boolean stops, Phrase words) {
      this(stops, words, Optional.empty(), Optional.empty());
    }

    static Hindrance barrier(Phrase words, Diameter needed, Diameter room) {
      return new Hindrance(true, words, Optional.of(needed), Optional.of(room));
    }

    Optional<Diameter> margin() {
      return room.flatMap(there -> needed.map(there::minus));
    }
  }

  private List<Hindrance> hindrances(ConduitCase conduit, HeadSize head, Diameter bore) {
    List<Hindrance> found = new ArrayList<>();
    Optional<Diameter> free = HeadPassage.freeCircleBeside(head, bore);
    if (free.isEmpty()) {
      return List.of(new Hindrance(true, Phrase.of("conduit.head.too-wide")));
    }
    beside(conduit, free.get()).ifPresent(found::add);
    if (conduit.sections().isEmpty()) {
      found.add(new Hindrance(false, Phrase.of("conduit.head.bends-unknown")));
      return found;
    }
    List<PathPiece> bends =
        conduit.sections().stream()
            .flatMap(section -> section.pieces().stream())
            .filter(piece -> piece.bend().isPresent())
            .toList();
    bends.stream()
        .flatMap(bend -> inBend(bend, head, bore).stream())
        .distinct()
        .forEach(found::add);
    if (!bends.isEmpty() && !conduit.contents().isEmpty()) {
      found.add(new Hindrance(false, Phrase.of("conduit.head.beside-in-bend")));
    }
    return found;
  }

  private Optional<Hindrance> beside(ConduitCase conduit, Diameter free) {
    List<Diameter> inPlace = conduit.diameters();
    Diameter whole = bundle.enclosing(inPlace);
    if (inPlace.isEmpty() || whole.compareTo(free) <= 0) {
      return Optional.empty();
    }
    Diameter thickest = inPlace.stream().max(Diameter::compareTo).orElseThrow();
    return Optional.of(
        thickest.compareTo(free) > 0
            ? Hindrance.barrier(
                Phrase.of("conduit.head.no-room", "cable", thickest, "free", free), thickest, free)
            : new Hindrance(
                false, Phrase.of("conduit.head.must-shift", "bundle", whole, "free", free)));
  }

  private static Optional<Hindrance> inBend(PathPiece bend, HeadSize head, Diameter bore) {
    if (bend.radius().isEmpty()) {
      return Optional.of(new Hindrance(false, Phrase.of("conduit.head.radius-unknown")));
    } else if (head.stiffLength().isEmpty()) {
      return Optional.of(new Hindrance(false, Phrase.of("conduit.head.stiff-unknown")));
    }
    HeadPassage.BendFit fit =
        HeadPassage.inBend(head, head.stiffLength().get(), bend.radius().get(), bore);
    return fit.margin().inMetres() >= 0
        ? Optional.empty()
        : Optional.of(
            Hindrance.barrier(
                Phrase.of("conduit.head.sticks", "bend", bend.bend().orElseThrow()),
                fit.thickness(),
                fit.greatest()));
  }
}
