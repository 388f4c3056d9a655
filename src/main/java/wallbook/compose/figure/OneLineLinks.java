package wallbook.compose.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import wallbook.compose.Describe;
import wallbook.compose.LabelRanges;
import wallbook.compose.drawing.OneLine.Link;
import wallbook.compose.drawing.OneLine.LinkKind;
import wallbook.record.Conduit;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** What ties the heads of a house to each other and to the areas that conduits reach. */
final class OneLineLinks {
  private final Job job;
  private final Wording wording;
  private final Describe describe;
  private final MediaCount media;

  OneLineLinks(Job job, Wording wording) {
    this.job = job;
    this.wording = wording;
    this.describe = new Describe(job, wording);
    this.media = new MediaCount(job, wording);
  }

  /** A link with the stations at its ends. */
  record Tie(Link link, Station from, Station to) {
    private int loose() {
      return (from.head().isEmpty() ? 1 : 0) + (to.head().isEmpty() ? 1 : 0);
    }
  }

  /** Trunks, then conduits from head to head, from a head, and between areas. */
  List<Tie> all() {
    List<Tie> ties = new ArrayList<>(trunks());
    job.conduits().stream()
        .map(this::conduit)
        .filter(tie -> !tie.from().id().equals(tie.to().id()))
        .sorted(Comparator.comparingInt(Tie::loose))
        .forEach(ties::add);
    return ties;
  }

  private List<Tie> trunks() {
    Map<TreeSet<String>, List<Run>> byHeads = new LinkedHashMap<>();
    for (Run run : job.runs()) {
      if (run.from().head().isPresent()
          && run.to().head().isPresent()
          && !run.from().head().equals(run.to().head())) {
        TreeSet<String> heads =
            new TreeSet<>(List.of(run.from().head().get(), run.to().head().get()));
        byHeads.computeIfAbsent(heads, h -> new ArrayList<>()).add(run);
      }
    }
    return byHeads.values().stream().map(this::trunk).toList();
  }

  private Tie trunk(List<Run> runs) {
    Station from = Station.of(job, job.head(runs.get(0).from().head().orElseThrow()));
    Station to = Station.of(job, job.head(runs.get(0).to().head().orElseThrow()));
    String label =
        say(
            "drawing.oneline.trunk",
            "from",
            from.name(),
            "to",
            to.name(),
            "cables",
            media.of(runs),
            "labels",
            LabelRanges.of(runs.stream().map(Run::label).toList(), wording));
    return new Tie(new Link(from.id(), to.id(), LinkKind.TRUNK, label), from, to);
  }

  private Tie conduit(Conduit conduit) {
    Station from = Station.of(job, conduit.from());
    Station to = Station.of(job, conduit.to());
    String label =
        say(
            "drawing.oneline.conduit",
            "label",
            conduit.label(),
            "name",
            conduit.name(),
            "size",
            conduit.tradeSize(),
            "state",
            describe.word(conduit.condition()));
    return new Tie(new Link(from.id(), to.id(), LinkKind.CONDUIT, label), from, to);
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
