package wallbook.assess.conduit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Count;
import wallbook.quantity.Diameter;
import wallbook.quantity.Ratio;
import wallbook.record.Cable;
import wallbook.record.Job;
import wallbook.reference.Source;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * How many more of each cable type a conduit takes, and how thick a further cable may be; each by
 * the code's table and by the flat share of practice, because the two disagree for one and two
 * cables.
 */
final class RoomQuestions implements Questions {
  private final List<FillRule> rules;
  private final CableDefaults defaults;
  private final JamRatio jam;

  RoomQuestions(Tables tables) {
    this.rules = List.of(FillRule.table1(tables), FillRule.flat(tables));
    this.defaults = new CableDefaults(tables);
    this.jam = JamRatio.nec(tables);
  }

  @Override
  public List<Assessment> about(ConduitCase conduit, Job job) {
    List<Assessment> found = new ArrayList<>();
    for (FillRule rule : rules) {
      found.add(largest(conduit, job, rule));
      for (Cable cable : job.cables()) {
        found.add(more(conduit, job, cable, rule));
      }
    }
    return found;
  }

  private Assessment largest(ConduitCase conduit, Job job, FillRule rule) {
    Assessment.Builder asked =
        Assessment.of(
            conduit.id(),
            "conduit.largest-cable." + rule.name(),
            Phrase.of("conduit.largest-cable.asked." + rule.name()));
    List<Phrase> missing = conduit.missingForFill();
    if (!missing.isEmpty()) {
      return asked.notStated(missing, rule.source());
    }
    Diameter bore = conduit.bore().orElseThrow().diameter();
    Optional<Diameter> largest = Fill.largestFurther(conduit.diameters(), bore, rule);
    Ratio limit = rule.limit(conduit.contents().size() + 1);
    Source source = whole(rule.source(), conduit, job, conduit.cables());
    assume(asked, conduit, job, conduit.cables());
    Diameter across = largest.orElse(Diameter.metres(0));
    conduit.clearance().value(asked, across, Diameter.metres(0));
    return conduit
        .clearance()
        .judge(
            asked,
            largest.isPresent() ? Verdict.WITHIN : Verdict.BEYOND,
            across,
            Phrase.of("conduit.room.share", "limit", limit),
            source);
  }

  private Assessment more(ConduitCase conduit, Job job, Cable cable, FillRule rule) {
    Assessment.Builder asked =
        Assessment.of(
            conduit.id(),
            "conduit.more." + cable.id() + "." + rule.name(),
            Phrase.of("conduit.more.asked." + rule.name(), "cable", cable.name()));
    List<Phrase> missing = new ArrayList<>(conduit.missingForFill());
    Optional<Diameter> known = ConduitCase.diameter(cable);
    if (known.isEmpty()) {
      missing.add(ConduitCase.missingDiameter(cable));
    }
    if (!missing.isEmpty()) {
      return asked.notStated(missing.stream().distinct().toList(), rule.source());
    }
    Diameter bore = conduit.bore().orElseThrow().diameter();
    Diameter further = known.get();
    int more = Fill.more(conduit.diameters(), further, bore, rule);
    List<Cable> all = new ArrayList<>(conduit.cables());
    all.add(cable);
    conduit.clearance().value(asked, Count.of(more), Count.of(0));
    assume(asked, conduit, job, all);
    if (conduit.contents().isEmpty() && more >= 3) {
      jamWarning(further, bore).ifPresent(asked::assuming);
    }
    return conduit
        .clearance()
        .judge(
            asked,
            more > 0 ? Verdict.WITHIN : Verdict.BEYOND,
            further,
            oneTooMany(conduit, further, bore, rule, more),
            whole(rule.source(), conduit, job, all));
  }

  private static void assumePullBy(Assessment.Builder asked, ConduitCase conduit) {
    if (!conduit.contents().isEmpty()) {
      asked.assuming(Phrase.of("conduit.assume.pull-by"));
    }
  }

  private void assume(Assessment.Builder asked, ConduitCase conduit, Job job, List<Cable> cables) {
    assumePullBy(asked, conduit);
    defaults.assumption(job, cables).ifPresent(asked::assuming);
  }

  /** What one cable more than allowed would come to. */
  private static Phrase oneTooMany(
      ConduitCase conduit, Diameter further, Diameter bore, FillRule rule, int more) {
    List<Diameter> inPlace = conduit.diameters();
    return Phrase.of(
        "conduit.room.one-too-many",
        "fill",
        Fill.of(inPlace, further, more + 1, bore),
        "limit",
        rule.limit(inPlace.size() + more + 1));
  }

  private Optional<Phrase> jamWarning(Diameter cable, Diameter bore) {
    boolean mayJam = JamRatio.isConcern(jam.likelihood(jam.ratio(bore, cable)));
    return mayJam
        ? Optional.of(Phrase.of("conduit.room.three-may-jam", "ratio", jam.ratio(bore, cable)))
        : Optional.empty();
  }

  private Source whole(Source rule, ConduitCase conduit, Job job, List<Cable> cables) {
    return defaults.source(rule.and(conduit.bore().orElseThrow().source()), job, cables);
  }
}
