package wallbook.compose.guide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.assess.outlook.Outlook;
import wallbook.assess.outlook.Prospect;
import wallbook.compose.RunState;
import wallbook.quantity.Quantity;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.wording.Phrase;

/**
 * Cables of one type and state that could carry the same services for the same reasons: told of
 * together, with the range of their figures.
 *
 * @param runs at least one, in the order of the record
 * @param services for each service the prospects of all runs, in the order of the runs
 */
record LikeCables(List<Run> runs, List<List<Prospect>> services) {
  LikeCables {
    runs = List.copyOf(runs);
    services = services.stream().map(List::copyOf).toList();
  }

  /** What makes two cables alike. */
  private record Kind(String cable, RunState state, int openEnds, List<Answer> answers) {}

  /** What one service comes to, figures left out. */
  private record Answer(
      String service,
      Verdict verdict,
      Optional<String> whyNot,
      Optional<String> measure,
      Optional<Object> load) {}

  /** The given runs, like ones together, in the order of the record. */
  static List<LikeCables> of(Job job, Outlook outlook, List<Run> runs) {
    Map<Kind, List<Run>> byKind = new LinkedHashMap<>();
    for (Run run : runs) {
      byKind.computeIfAbsent(kind(job, outlook, run), k -> new ArrayList<>()).add(run);
    }
    return byKind.values().stream().map(like -> of(outlook, like)).toList();
  }

  private static LikeCables of(Outlook outlook, List<Run> runs) {
    List<List<Prospect>> services = new ArrayList<>();
    for (Prospect first : outlook.of(runs.get(0).id())) {
      services.add(
          runs.stream().map(run -> outlook.find(run.id(), first.service()).orElseThrow()).toList());
    }
    return new LikeCables(runs, services);
  }

  private static Kind kind(Job job, Outlook outlook, Run run) {
    int open = (run.from().isTerminated() ? 0 : 1) + (run.to().isTerminated() ? 0 : 1);
    return new Kind(
        job.cableOf(run).id(),
        RunState.of(run),
        open,
        outlook.of(run.id()).stream().map(LikeCables::answer).toList());
  }

  private static Answer answer(Prospect prospect) {
    Assessment decisive = prospect.decisive();
    return new Answer(
        prospect.service(),
        decisive.verdict(),
        prospect.blocker().map(Phrase::key),
        decisive.value().map(value -> value.getClass().getSimpleName()),
        decisive.limitedBy().map(words -> words.arguments().get("load")));
  }

  /** The prospect that stands for those of like cables: the one with the least margin. */
  static Prospect leastMargin(List<Prospect> prospects) {
    return prospects.stream()
        .filter(p -> p.decisive().margin().isPresent())
        .min(Comparator.comparing(LikeCables::margin, Amounts::compare))
        .orElse(prospects.get(0));
  }

  private static Quantity margin(Prospect prospect) {
    return prospect.decisive().margin().orElseThrow();
  }
}
