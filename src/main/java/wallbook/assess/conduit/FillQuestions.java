package wallbook.assess.conduit;

import java.util.ArrayList;
import java.util.List;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Area;
import wallbook.quantity.Diameter;
import wallbook.quantity.Factor;
import wallbook.quantity.Length;
import wallbook.quantity.Ratio;
import wallbook.record.Conduit;
import wallbook.record.Job;
import wallbook.reference.Source;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** How full a conduit is, by the code's table and by practice, and whether its cables may jam. */
final class FillQuestions implements Questions {
  private final FillRule table1;
  private final FillRule nipple;
  private final FillRule flat;
  private final Length longestNipple;
  private final FillLaw law;
  private final CableDefaults defaults;
  private final JamRatio jamByCode;
  private final JamRatio jamByHandbook;

  FillQuestions(Tables tables) {
    this.table1 = FillRule.table1(tables);
    this.nipple = FillRule.nipple(tables);
    this.flat = FillRule.flat(tables);
    this.longestNipple = FillRule.longestNipple(tables);
    this.law = new FillLaw(tables);
    this.defaults = new CableDefaults(tables);
    this.jamByCode = JamRatio.nec(tables);
    this.jamByHandbook = JamRatio.bands(tables);
  }

  @Override
  public List<Assessment> about(ConduitCase conduit, Job job) {
    FillRule byCode = isNipple(conduit.conduit()) ? nipple : table1;
    FillLaw.Reading reading = law.of(conduit);
    List<Assessment> found = new ArrayList<>();
    found.add(
        fill(
            conduit,
            job,
            new Asked("conduit.fill.table-1", byCode, reading.words()),
            byCode.source().and(reading.source())));
    found.add(
        fill(
            conduit,
            job,
            new Asked("conduit.fill.flat-40", flat, Phrase.of("conduit.fill.practice")),
            flat.source()));
    found.add(free(conduit, job));
    if (conduit.missingForFill().isEmpty() && mayJam(conduit)) {
      found.add(jam(conduit, job, "conduit.jam.nec", jamByCode));
      found.add(jam(conduit, job, "conduit.jam.bands", jamByHandbook));
    }
    return found;
  }

  private boolean isNipple(Conduit conduit) {
    return conduit.length().filter(length -> length.compareTo(longestNipple) <= 0).isPresent();
  }

  /** A question of fill: by which rule, and what is said of the rule. */
  private record Asked(String topic, FillRule rule, Phrase whoseRule) {}

  private Assessment fill(ConduitCase conduit, Job job, Asked question, Source source) {
    FillRule rule = question.rule();
    Assessment.Builder asked =
        Assessment.of(
            conduit.id(), question.topic(), Phrase.of("conduit.fill.asked." + rule.name()));
    List<Phrase> missing = conduit.missingForFill();
    if (!missing.isEmpty()) {
      return asked.notStated(missing, source);
    }
    List<Diameter> cables = conduit.diameters();
    Diameter bore = conduit.bore().orElseThrow().diameter();
    Ratio fill = Fill.of(cables, bore);
    asked.value(fill);
    if (cables.isEmpty()) {
      return asked
          .limitedBy(question.whoseRule())
          .verdict(Verdict.INFORMATION, whole(source, conduit, job));
    }
    Ratio limit = rule.limit(cables.size());
    asked.limit(limit, limit.minus(fill)).limitedBy(question.whoseRule());
    asked.assuming(Phrase.of("conduit.assume.circles"));
    defaults.assumption(job, conduit.cables()).ifPresent(asked::assuming);
    Verdict verdict = Fill.keeps(cables, bore, rule) ? Verdict.WITHIN : Verdict.BEYOND;
    return asked.verdict(verdict, whole(source, conduit, job));
  }

  private Assessment free(ConduitCase conduit, Job job) {
    Assessment.Builder asked =
        Assessment.of(conduit.id(), "conduit.free-bore", Phrase.of("conduit.free-bore.asked"));
    List<Phrase> missing = conduit.missingForFill();
    if (!missing.isEmpty()) {
      return asked.notStated(missing, flat.source());
    }
    Diameter bore = conduit.bore().orElseThrow().diameter();
    Area free = Fill.free(conduit.diameters(), bore, flat);
    Area all = Fill.free(List.of(), bore, flat);
    Phrase limit =
        Phrase.of(
            "conduit.free-bore.of", "allowed", all, "largest", largest(conduit.diameters(), bore));
    conduit.clearance().value(asked, free, Area.squareMetres(0));
    defaults.assumption(job, conduit.cables()).ifPresent(asked::assuming);
    Verdict ifClear = free.inSquareMetres() > 0 ? Verdict.WITHIN : Verdict.BEYOND;
    return conduit
        .clearance()
        .judge(asked, ifClear, Diameter.metres(0), limit, whole(flat.source(), conduit, job));
  }

  private Diameter largest(List<Diameter> inPlace, Diameter bore) {
    return Fill.largestFurther(inPlace, bore, flat).orElse(Diameter.metres(0));
  }

  private static boolean mayJam(ConduitCase conduit) {
    return conduit.contents().size() == 3 && WeightCorrection.alike(conduit.diameters());
  }

  private Assessment jam(ConduitCase conduit, Job job, String topic, JamRatio rule) {
    Factor ratio = rule.ratio(conduit.bore().orElseThrow().diameter(), conduit.diameters().get(0));
    String likelihood = rule.likelihood(ratio);
    boolean unlikely = !JamRatio.isConcern(likelihood);
    return Assessment.of(conduit.id(), topic, Phrase.of(topic + ".asked"))
        .value(ratio)
        .limitedBy(Phrase.of("conduit.jam." + likelihood))
        .assuming(Phrase.of("conduit.assume.three-together"))
        .verdict(
            unlikely ? Verdict.WITHIN : Verdict.CONDITIONAL, whole(rule.source(), conduit, job));
  }

  private Source whole(Source rule, ConduitCase conduit, Job job) {
    return defaults.source(rule.and(boreSource(conduit)), job, conduit.cables());
  }

  private static Source boreSource(ConduitCase conduit) {
    return conduit.bore().orElseThrow().source();
  }
}
