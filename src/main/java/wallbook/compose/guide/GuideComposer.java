package wallbook.compose.guide;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import wallbook.assess.Verdict;
import wallbook.assess.outlook.Effort;
import wallbook.compose.Caution;
import wallbook.compose.Composition;
import wallbook.compose.TermView;
import wallbook.compose.guide.GuideView.ConduitChapter;
import wallbook.compose.guide.GuideView.InServiceRow;
import wallbook.compose.guide.GuideView.Remark;
import wallbook.compose.guide.GuideView.ResultTable;
import wallbook.compose.guide.GuideView.StubOutBlock;
import wallbook.compose.guide.GuideView.WishChapter;
import wallbook.compose.result.Results;
import wallbook.compose.result.SourceList;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.reference.Standing;
import wallbook.wording.Wording;

/** Composes the upgrade guide. */
public final class GuideComposer {
  private static final List<Verdict> VERDICTS =
      List.of(
          Verdict.WITHIN,
          Verdict.CONDITIONAL,
          Verdict.INFORMATION,
          Verdict.NOT_STATED,
          Verdict.BEYOND);
  private static final List<Caution> CAUTIONS =
      List.of(
          Caution.REPORT_ONLY,
          Caution.MAINS,
          Caution.OPENING_BOXES,
          Caution.SEPARATION,
          Caution.DIGGING,
          Caution.CLASS_2,
          Caution.POE,
          Caution.ANTENNAS,
          Caution.FIBRE_LIGHT,
          Caution.FIBRE_SHARDS,
          Caution.ATTICS,
          Caution.OLD_WALLS,
          Caution.DRILLING,
          Caution.STRUCTURE,
          Caution.FIRESTOP,
          Caution.JACKETS,
          Caution.CONDUITS,
          Caution.LIFE_SAFETY,
          Caution.DEAD_CABLE);

  private final Composition composition;
  private final Job job;
  private final Wording wording;

  public GuideComposer(Composition composition) {
    this.composition = composition;
    this.job = composition.job();
    this.wording = composition.wording();
  }

  /** The guide of the whole house. */
  public GuideView compose() {
    SourceList sources = new SourceList();
    Results said = new Results(wording, sources);
    WaitingCables waiting = new WaitingCables(composition);
    List<WishChapter> wishes = new WishChapters(composition, said).all();
    List<ResultTable> results = waiting.results(said);
    Optional<ConduitChapter> conduits = new Conduits(composition, said).chapter();
    List<StubOutBlock> stubOuts = new StubOutBlocks(composition, said).all();
    List<InServiceRow> inService = new InService(composition, said).rows();
    List<Remark> remarks = new Remarks(composition, said).all();
    return new GuideView(
        job.facts().jurisdiction(),
        job.facts().codes(),
        VERDICTS.stream().map(this::verdict).toList(),
        Arrays.stream(Effort.values()).map(this::effort).toList(),
        Arrays.stream(Standing.values()).map(this::standing).toList(),
        wishes,
        waiting.rooms(),
        waiting.needs(said),
        results,
        waiting.dead(),
        conduits,
        stubOuts,
        inService,
        remarks,
        Caution.say(CAUTIONS, wording),
        terms(),
        sources.list(wording));
  }

  private TermView verdict(Verdict verdict) {
    return term(
        "outlook.answer." + hyphened(verdict), "guide.verdict." + hyphened(verdict) + ".meaning");
  }

  private TermView effort(Effort effort) {
    return term("effort." + effort.word(), "guide.effort." + effort.word() + ".meaning");
  }

  private TermView standing(Standing standing) {
    String key = "standing." + hyphened(standing);
    return term(key, "guide." + key + ".meaning");
  }

  private static String hyphened(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private TermView term(String key, String meaning) {
    return new TermView(wording.say(key), wording.say(meaning));
  }

  private List<TermView> terms() {
    Set<String> keys = new LinkedHashSet<>(List.of("dark", "margin", "switch"));
    Set<Medium> media = EnumSet.noneOf(Medium.class);
    job.runs().forEach(run -> media.add(job.cableOf(run).medium()));
    if (media.contains(Medium.BALANCED_PAIR)) {
      keys.addAll(List.of("category", "poe", "injector", "gigabit", "access-point", "sender"));
    }
    if (media.contains(Medium.FIBRE)) {
      keys.addAll(List.of("fibre-classes", "optical-module", "decibel"));
    }
    if (media.contains(Medium.COAX)) {
      keys.addAll(List.of("decibel", "megahertz"));
    }
    if (media.contains(Medium.SPEAKER)) {
      keys.addAll(List.of("ohm", "gauge"));
    }
    if (media.contains(Medium.POWER) || media.contains(Medium.CONTROL)) {
      keys.addAll(List.of("class-2", "gauge"));
    }
    if (!job.conduits().isEmpty()) {
      keys.addAll(List.of("mandrel", "proved"));
    }
    if (!job.stubOuts().isEmpty()) {
      keys.add("stub-out");
    }
    return keys.stream()
        .map(key -> term("guide.term." + key + ".term", "guide.term." + key + ".meaning"))
        .sorted(Comparator.comparing(TermView::term, String.CASE_INSENSITIVE_ORDER))
        .toList();
  }
}
