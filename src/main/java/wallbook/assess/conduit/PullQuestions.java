package wallbook.assess.conduit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Diameter;
import wallbook.quantity.Factor;
import wallbook.quantity.Force;
import wallbook.quantity.LinearForce;
import wallbook.record.ConduitEnd;
import wallbook.record.Job;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * The force it takes to draw cables through a conduit, dry and lubricated, from the better end:
 * what lies in it as one pull, and for an empty conduit one cable of each type. Nothing is computed
 * for a cable drawn in over others, since the friction on them isn't known.
 */
final class PullQuestions implements Questions {
  private static final List<String> CONDITIONS = List.of("dry", "lubricated");

  private static final Diameter NONE = Diameter.metres(0);

  private final Table friction;
  private final PullLimits limits;
  private final WeightCorrection corrections;
  private final CableDefaults defaults;
  private final Row share;
  private final PullBoxes boxes;

  PullQuestions(Tables tables) {
    this.friction = tables.table("pulling-friction");
    this.limits = new PullLimits(tables);
    this.corrections = new WeightCorrection(tables);
    this.defaults = new CableDefaults(tables);
    this.share = tables.table("pulling-practice").row("group-share");
    this.boxes = new PullBoxes(tables);
  }

  @Override
  public List<Assessment> about(ConduitCase conduit, Job job) {
    List<Assessment> found = new ArrayList<>();
    for (PullGroup group : groups(conduit, job)) {
      CONDITIONS.forEach(condition -> found.add(pull(conduit, job, group, condition)));
      found.add(estimate(conduit, job, group));
      sidewall(conduit, job, group).ifPresent(found::add);
    }
    return found;
  }

  private static List<PullGroup> groups(ConduitCase conduit, Job job) {
    if (!conduit.contents().isEmpty()) {
      return List.of(
          new PullGroup("contents", Phrase.of("conduit.pull.contents"), conduit.cables()));
    }
    return job.cables().stream()
        .map(
            cable ->
                new PullGroup(
                    cable.id(),
                    Phrase.of("conduit.pull.one", "cable", cable.name()),
                    List.of(cable)))
        .toList();
  }

  private Assessment pull(ConduitCase conduit, Job job, PullGroup group, String condition) {
    Assessment.Builder asked =
        Assessment.of(
            conduit.id(),
            "conduit.pull." + group.name() + "." + condition,
            Phrase.of("conduit.pull.asked." + condition, "cables", group.words()));
    Row coefficient = friction.row(condition);
    List<Phrase> missing = missing(conduit, group);
    if (!missing.isEmpty()) {
      return asked.notStated(missing, coefficient.source());
    }
    PullGroup.Limit limit = group.limit(limits, share.number("value"));
    BothEnds ends = bothEnds(conduit, group, coefficient);
    Force tension = ends.better();
    boolean inPlace = group.name().equals("contents");
    asked.value(tension);
    if (inPlace || !conduit.clearance().isClosed()) {
      asked.limit(limit.tension(), limit.tension().minus(tension));
    }
    assume(asked, conduit, job, group, coefficient);
    Source source = defaults.source(coefficient.source().and(limit.source()), job, group.cables());
    Verdict ifClear = tension.compareTo(limit.tension()) <= 0 ? Verdict.WITHIN : Verdict.BEYOND;
    Phrase words = words(conduit, job, ends, limit);
    return inPlace
        ? asked
            .assuming(Phrase.of("conduit.assume.one-pull"))
            .limitedBy(words)
            .verdict(ifClear, group.cables().size() == 1 ? source : source.and(groupSource()))
        : conduit
            .clearance()
            .judge(
                asked, ifClear, group.diameters().stream().findFirst().orElse(NONE), words, source);
  }

  private Source groupSource() {
    return corrections.source().and(share.source());
  }

  private List<Phrase> missing(ConduitCase conduit, PullGroup group) {
    List<Phrase> missing = new ArrayList<>(conduit.missingBends());
    missing.addAll(group.missing(limits, conduit.bore()));
    return missing;
  }

  private BothEnds bothEnds(ConduitCase conduit, PullGroup group, Row coefficient) {
    return BothEnds.of(conduit.sections(), bore(conduit), tension(conduit, group, coefficient));
  }

  private PullingTension tension(ConduitCase conduit, PullGroup group, Row coefficient) {
    return new PullingTension(
        group.weight().weight(),
        group.correction(corrections, conduit.bore()),
        Factor.of(coefficient.number("friction")));
  }

  private static Optional<Diameter> bore(ConduitCase conduit) {
    return conduit.bore().map(Bore::diameter);
  }

  private void assume(
      Assessment.Builder asked, ConduitCase conduit, Job job, PullGroup group, Row coefficient) {
    asked.assuming(
        Phrase.of("conduit.assume.friction", "factor", Factor.of(coefficient.number("friction"))));
    if (group.cables().size() > 1) {
      asked.assuming(
          Phrase.of(
              "conduit.assume.group", "correction", group.correction(corrections, conduit.bore())));
    }
    boxes.incomplete(conduit).ifPresent(asked::assuming);
    defaults.assumption(job, group.cables()).ifPresent(asked::assuming);
  }

  private static Phrase words(ConduitCase conduit, Job job, BothEnds ends, PullGroup.Limit limit) {
    ConduitEnd feed = ends.backIsBetter() ? conduit.conduit().to() : conduit.conduit().from();
    return Phrase.of(
        "conduit.pull.better",
        "feed",
        named(feed, job),
        "worse",
        ends.worse(),
        "cable",
        limit.weakest().name());
  }

  private static String named(ConduitEnd end, Job job) {
    return end.place()
        .map(id -> job.place(id).name())
        .or(() -> end.head().map(id -> job.head(id).name()))
        .orElseGet(() -> job.space(end.space().orElseThrow()).name());
  }

  private Assessment estimate(ConduitCase conduit, Job job, PullGroup group) {
    Assessment.Builder asked =
        Assessment.of(
            conduit.id(),
            "conduit.pull." + group.name() + ".estimate",
            Phrase.of("conduit.pull.asked.estimate", "cables", group.words()));
    Row dry = friction.row("dry");
    List<Phrase> missing = missing(conduit, group);
    if (!missing.isEmpty()) {
      return asked.notStated(missing, friction.row("estimate").source());
    }
    PullingTension pull = tension(conduit, group, dry);
    Force worst =
        conduit.sections().stream()
            .map(section -> pull.estimate(section.straights(), section.totalBend()))
            .max(Force::compareTo)
            .orElseThrow();
    assume(asked, conduit, job, group, dry);
    Source source = defaults.source(friction.row("estimate").source(), job, group.cables());
    return asked
        .value(worst)
        .assuming(Phrase.of("conduit.assume.level"))
        .verdict(Verdict.INFORMATION, source);
  }

  /** Nothing for a conduit without bends. */
  private Optional<Assessment> sidewall(ConduitCase conduit, Job job, PullGroup group) {
    boolean straight = conduit.sections().stream().allMatch(PullSection::isStraight);
    if (straight || !missing(conduit, group).isEmpty()) {
      return Optional.empty();
    }
    Assessment.Builder asked =
        Assessment.of(
            conduit.id(),
            "conduit.sidewall." + group.name() + ".dry",
            Phrase.of("conduit.sidewall.asked", "cables", group.words()));
    Row dry = friction.row("dry");
    Source source = defaults.source(friction.row("sidewall").source(), job, group.cables());
    if (conduit.bore().isEmpty()) {
      return Optional.of(
          asked.notStated(
              List.of(Phrase.of("conduit.missing.bore", "size", conduit.conduit().tradeSize())),
              source));
    } else if (!Sidewall.isKnown(conduit)) {
      return Optional.of(asked.notStated(List.of(Phrase.of("conduit.missing.radius")), source));
    }
    PullingTension pull = tension(conduit, group, dry);
    BothEnds ends = bothEnds(conduit, group, dry);
    LinearForce greatest =
        Sidewall.greatest(conduit, group.cables().size(), pull, ends.backIsBetter());
    assume(asked, conduit, job, group, dry);
    return Optional.of(
        asked
            .value(greatest)
            .assuming(Phrase.of("conduit.assume.no-sidewall-limit"))
            .verdict(Verdict.INFORMATION, source));
  }
}
