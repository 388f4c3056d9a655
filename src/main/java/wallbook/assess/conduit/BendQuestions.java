package wallbook.assess.conduit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Angle;
import wallbook.quantity.Length;
import wallbook.record.Conduit;
import wallbook.record.Job;
import wallbook.reference.Row;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Bends and length between pull points, by the code (law where adopted) and by ANSI/TIA-569
 * (recommended practice), and the pull boxes that would be needed to keep to the latter.
 */
final class BendQuestions implements Questions {
  private final Table limits;
  private final Row practice;
  private final BendRadii radii;
  private final PullBoxes boxes;

  BendQuestions(Tables tables) {
    this.limits = tables.table("conduit-bend-limits");
    this.practice = limits.row("tia-569", "any");
    this.radii = new BendRadii(tables);
    this.boxes = new PullBoxes(tables);
  }

  @Override
  public List<Assessment> about(ConduitCase conduit, Job job) {
    List<Assessment> found = new ArrayList<>();
    family(conduit.conduit()).ifPresent(row -> found.add(total(conduit, "nec", row)));
    found.add(total(conduit, "tia-569", practice));
    found.add(single(conduit));
    found.add(length(conduit));
    found.addAll(boxes.about(conduit));
    found.addAll(radii.about(conduit));
    return found;
  }

  private Optional<Row> family(Conduit conduit) {
    return limits.find("nec", conduit.type().word().replace('_', '-'));
  }

  private Assessment total(ConduitCase conduit, String authority, Row rule) {
    String topic = "conduit.bends." + authority;
    Assessment.Builder asked = Assessment.of(conduit.id(), topic, Phrase.of(topic + ".asked"));
    return worst(
        conduit, asked, PullSection::totalBend, Angle.degrees(rule.number("total_deg")), rule);
  }

  private Assessment single(ConduitCase conduit) {
    Assessment.Builder asked =
        Assessment.of(
            conduit.id(), "conduit.single-bend.tia-569", Phrase.of("conduit.single-bend.asked"));
    return worst(
        conduit,
        asked,
        PullSection::largestBend,
        Angle.degrees(practice.number("single_deg")),
        practice);
  }

  private Assessment worst(
      ConduitCase conduit,
      Assessment.Builder asked,
      Function<PullSection, Angle> measure,
      Angle limit,
      Row rule) {
    if (conduit.sections().isEmpty()) {
      return asked.notStated(conduit.missingBends(), rule.source());
    }
    PullSection section =
        conduit.sections().stream().max(Comparator.comparing(measure)).orElseThrow();
    Angle worst = measure.apply(section);
    boolean within = worst.inDegrees() <= limit.inDegrees() + PullBoxes.ROUNDING;
    asked.value(worst).limit(limit, limit.minus(worst));
    return judged(conduit, asked, section, within, rule);
  }

  private Assessment length(ConduitCase conduit) {
    Assessment.Builder asked =
        Assessment.of(
            conduit.id(),
            "conduit.section-length.tia-569",
            Phrase.of("conduit.section-length.asked"));
    Length limit = Length.metres(practice.number("length_m"));
    Optional<Length> whole = conduit.conduit().length();
    if (conduit.sections().isEmpty()) {
      return whole.filter(length -> length.compareTo(limit) <= 0).isPresent()
          ? measured(asked, whole.get(), limit)
              .limitedBy(Phrase.of("conduit.section.whole"))
              .verdict(Verdict.WITHIN, practice.source())
          : asked.notStated(List.of(Phrase.of("conduit.missing.sections")), practice.source());
    }
    PullSection section =
        conduit.sections().stream().max(Comparator.comparing(PullSection::length)).orElseThrow();
    Length longest = section.length();
    boolean within = longest.inMetres() <= limit.inMetres() + PullBoxes.ROUNDING;
    return judged(conduit, measured(asked, longest, limit), section, within, practice);
  }

  private static Assessment.Builder measured(
      Assessment.Builder asked, Length length, Length limit) {
    return asked.value(length).limit(limit, limit.minus(length));
  }

  private Assessment judged(
      ConduitCase conduit,
      Assessment.Builder asked,
      PullSection section,
      boolean within,
      Row rule) {
    boxes.incomplete(conduit).ifPresent(asked::assuming);
    return asked
        .limitedBy(section.words(conduit.sections().size()))
        .verdict(within ? Verdict.WITHIN : Verdict.BEYOND, rule.source());
  }
}
