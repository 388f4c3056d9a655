package wallbook.compose.figure;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.record.Run;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Counts runs by what they are made to carry: "24 network, 6 coax". */
final class MediaCount {
  private final Job job;
  private final Wording wording;

  MediaCount(Job job, Wording wording) {
    this.job = job;
    this.wording = wording;
  }

  String of(List<Run> runs) {
    Map<Medium, Integer> counts = new EnumMap<>(Medium.class);
    runs.forEach(run -> counts.merge(job.cableOf(run).medium(), 1, Integer::sum));
    return counts.entrySet().stream()
        .map(
            entry ->
                wording.say(
                    Phrase.of(
                        "drawing.oneline.count",
                        "count",
                        entry.getValue(),
                        "medium",
                        Phrase.of(key(entry.getKey())))))
        .collect(Collectors.joining(", "));
  }

  private static String key(Medium medium) {
    return "drawing.oneline.medium." + medium.word().replace('_', '-');
  }
}
