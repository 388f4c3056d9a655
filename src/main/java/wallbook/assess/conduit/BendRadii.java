package wallbook.assess.conduit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Diameter;
import wallbook.quantity.Length;
import wallbook.record.ConduitType;
import wallbook.record.PathPiece;
import wallbook.reference.Row;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Radius of a conduit's tightest bend against the code's table and ANSI/TIA-569. */
final class BendRadii {
  private final Table practice;
  private final Table elbows;
  private final Bores bores;

  BendRadii(Tables tables) {
    this.practice = tables.table("conduit-bend-radii");
    this.elbows = tables.table("conduit-elbow-radii");
    this.bores = new Bores(tables);
  }

  /** Nothing for a conduit without bends; not stated where bends lack their radius. */
  List<Assessment> about(ConduitCase conduit) {
    List<PathPiece> bends =
        conduit.sections().stream()
            .flatMap(section -> section.pieces().stream())
            .filter(piece -> piece.bend().isPresent())
            .toList();
    if (bends.isEmpty()) {
      return List.of();
    }
    List<Assessment> found = new ArrayList<>();
    found.add(byPractice(conduit, bends));
    elbow(conduit).ifPresent(row -> found.add(byCode(conduit, bends, row)));
    return found;
  }

  private Optional<Row> elbow(ConduitCase conduit) {
    return bores
        .size(conduit.conduit().type(), conduit.conduit().tradeSize())
        .flatMap(elbows::find);
  }

  private Assessment byPractice(ConduitCase conduit, List<PathPiece> bends) {
    Assessment.Builder asked =
        Assessment.of(
            conduit.id(),
            "conduit.bend-radius.tia-569",
            Phrase.of("conduit.bend-radius.tia-569.asked"));
    if (conduit.bore().isEmpty()) {
      return asked.notStated(
          List.of(Phrase.of("conduit.missing.bore", "size", conduit.conduit().tradeSize())),
          practice.source());
    }
    Bore bore = conduit.bore().get();
    Length least = leastInsideRadius(conduit.conduit().type(), conduit, bore.diameter());
    Optional<Length> tightest =
        tightest(bends).map(radius -> PullSection.insideRadius(radius, bore.diameter()));
    boolean fails = tightest.filter(radius -> radius.compareTo(least) < 0).isPresent();
    if (tightest.isEmpty() || (!fails && someUnknown(bends))) {
      return asked.notStated(List.of(Phrase.of("conduit.missing.radius")), practice.source());
    }
    return asked
        .value(tightest.get())
        .limit(least, tightest.get().minus(least))
        .limitedBy(Phrase.of("conduit.bend-radius.inside"))
        .verdict(fails ? Verdict.BEYOND : Verdict.WITHIN, practice.source().and(bore.source()));
  }

  /** Least inside radius by ANSI/TIA-569: 6 times the bore up to 2 in, 10 times above. */
  private Length leastInsideRadius(ConduitType family, ConduitCase conduit, Diameter bore) {
    int designator =
        bores
            .designator(family, conduit.conduit().tradeSize())
            .orElseGet(() -> (int) Math.round(bore.inMillimetres()));
    double multiple = 0;
    for (Row row : practice.rows()) {
      if (row.number("above_designator") < designator) {
        multiple = row.number("times_bore");
      }
    }
    return bore.asLength().times(multiple);
  }

  /** A bend between the two radii of the code's table needs a one-shot or full-shoe bender. */
  private Assessment byCode(ConduitCase conduit, List<PathPiece> bends, Row elbow) {
    Assessment.Builder asked =
        Assessment.of(
            conduit.id(), "conduit.bend-radius.nec", Phrase.of("conduit.bend-radius.nec.asked"));
    Length oneShot = Length.inches(elbow.number("one_shot_in"));
    Length other = Length.inches(elbow.number("other_in"));
    Optional<Length> tightest = tightest(bends);
    boolean fails = tightest.filter(radius -> radius.compareTo(oneShot) < 0).isPresent();
    if (tightest.isEmpty() || (!fails && someUnknown(bends))) {
      return asked.notStated(List.of(Phrase.of("conduit.missing.radius")), elbow.source());
    }
    asked.value(tightest.get()).limit(oneShot, tightest.get().minus(oneShot));
    if (!fails && tightest.get().compareTo(other) < 0) {
      return asked
          .limitedBy(Phrase.of("conduit.bend-radius.one-shot", "other", other))
          .verdict(Verdict.CONDITIONAL, elbow.source());
    }
    return asked
        .limitedBy(Phrase.of("conduit.bend-radius.centre-line"))
        .verdict(fails ? Verdict.BEYOND : Verdict.WITHIN, elbow.source());
  }

  private static Optional<Length> tightest(List<PathPiece> bends) {
    return bends.stream().flatMap(bend -> bend.radius().stream()).min(Length::compareTo);
  }

  private static boolean someUnknown(List<PathPiece> bends) {
    return bends.stream().anyMatch(bend -> bend.radius().isEmpty());
  }
}
