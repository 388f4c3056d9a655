package wallbook.compose.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.assess.outlook.Outlook;
import wallbook.assess.outlook.Prospect;
import wallbook.assess.outlook.ServiceFamily;
import wallbook.compose.Composition;
import wallbook.compose.RunState;
import wallbook.compose.Speech;
import wallbook.compose.guide.GuideView.InServiceRow;
import wallbook.compose.result.Results;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.record.Run;

/**
 * Tells of pairs, fibre and coax in service the most that they could carry: of each family of
 * services the best that is sure, and a better one that is conditional.
 */
final class InService {
  private static final List<Medium> MEDIA =
      List.of(Medium.BALANCED_PAIR, Medium.FIBRE, Medium.COAX);
  private static final List<ServiceFamily> FAMILIES =
      List.of(
          ServiceFamily.NETWORK,
          ServiceFamily.POWER,
          ServiceFamily.PICTURE,
          ServiceFamily.RECEPTION,
          ServiceFamily.CELLULAR);

  private final Composition composition;
  private final Outlook outlook;
  private final Speech words;
  private final Amounts amounts;
  private final Results results;

  InService(Composition composition, Results results) {
    this.composition = composition;
    this.outlook = composition.outlook();
    this.words = new Speech(composition.wording(), composition.describe());
    this.amounts = new Amounts(composition.wording());
    this.results = results;
  }

  /** What makes two rows one. */
  private record Kind(String cable, List<String> answers) {}

  List<InServiceRow> rows() {
    Job job = composition.job();
    Map<Kind, List<Run>> byKind = new LinkedHashMap<>();
    for (Run run : job.runs()) {
      boolean told = MEDIA.contains(job.cableOf(run).medium()) && !best(run).isEmpty();
      if (RunState.of(run) == RunState.WORKS && told) {
        List<String> answers =
            best(run).stream().map(p -> p.service() + " " + p.verdict()).toList();
        Kind kind = new Kind(job.cableOf(run).name(), answers);
        byKind.computeIfAbsent(kind, k -> new ArrayList<>()).add(run);
      }
    }
    return byKind.entrySet().stream().map(e -> row(e.getKey().cable(), e.getValue())).toList();
  }

  private InServiceRow row(String cable, List<Run> runs) {
    return new InServiceRow(
        String.join(", ", runs.stream().map(Run::label).toList()),
        cable,
        best(runs.get(0)).stream().map(p -> could(p.service(), runs)).toList());
  }

  private List<Prospect> best(Run run) {
    List<Prospect> best = new ArrayList<>();
    for (ServiceFamily family : FAMILIES) {
      List<Prospect> ofFamily =
          outlook.of(run.id()).stream().filter(p -> p.family() == family).toList();
      Optional<Prospect> sure =
          ofFamily.stream().filter(p -> p.verdict() == Verdict.WITHIN).findFirst();
      Optional<Prospect> perhaps =
          ofFamily.stream()
              .filter(p -> p.verdict() == Verdict.CONDITIONAL)
              .filter(p -> sure.isEmpty() || p.rank() > sure.get().rank())
              .findFirst();
      perhaps.ifPresent(best::add);
      sure.ifPresent(best::add);
      if (sure.isEmpty() && perhaps.isEmpty()) {
        ofFamily.stream().filter(Prospect::equipmentDecides).findFirst().ifPresent(best::add);
      }
    }
    return best;
  }

  private String could(String service, List<Run> runs) {
    List<Prospect> like =
        runs.stream().map(run -> outlook.find(run.id(), service).orElseThrow()).toList();
    Prospect shown = LikeCables.leastMargin(like);
    String margin =
        amounts.range(like.stream().map(p -> p.decisive().margin()).toList(), results::margin);
    String value = amounts.range(like.stream().map(p -> p.decisive().value()).toList());
    Assessment decisive = shown.decisive();
    String key =
        decisive.margin().isPresent()
            ? "guide.could.margin"
            : decisive.value().isPresent() ? "guide.could.value" : "guide.could.plain";
    return words.say(
        key,
        "service",
        shown.name(),
        "verdict",
        words.answer(shown.verdict()),
        "margin",
        margin,
        "value",
        value,
        "reference",
        results.source(decisive));
  }
}
