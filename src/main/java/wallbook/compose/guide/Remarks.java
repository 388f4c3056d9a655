package wallbook.compose.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wallbook.assess.Assessment;
import wallbook.compose.Composition;
import wallbook.compose.guide.GuideView.Remark;
import wallbook.compose.result.Results;
import wallbook.quantity.Count;
import wallbook.quantity.Quantity;
import wallbook.record.Job;
import wallbook.reference.Source;
import wallbook.wording.Phrase;

/** Where places have less than the usual provision, like places told of together. */
final class Remarks {
  private static final String PRACTICE = "practice.";

  private final Composition composition;
  private final Results results;

  Remarks(Composition composition, Results results) {
    this.composition = composition;
    this.results = results;
  }

  /** What makes two remarks one. */
  private record Kind(Phrase asked, Quantity there, Quantity usual, Source source) {}

  List<Remark> all() {
    Map<Kind, List<Assessment>> like = new LinkedHashMap<>();
    for (Assessment assessment : composition.assessments().all()) {
      if (assessment.topic().startsWith(PRACTICE) && isLess(assessment)) {
        Kind kind =
            new Kind(
                assessment.asked(),
                assessment.value().orElseThrow(),
                assessment.limit().orElseThrow(),
                assessment.source());
        like.computeIfAbsent(kind, k -> new ArrayList<>()).add(assessment);
      }
    }
    return like.entrySet().stream().map(e -> remark(e.getKey(), e.getValue())).toList();
  }

  private static boolean isLess(Assessment assessment) {
    return assessment.margin().filter(m -> m instanceof Count c && c.number() < 0).isPresent();
  }

  private String place(String id) {
    Job job = composition.job();
    return job.space(job.place(id).space()).name() + ", " + job.place(id).name();
  }

  private Remark remark(Kind kind, List<Assessment> like) {
    List<String> places = like.stream().map(a -> place(a.subject())).toList();
    return new Remark(
        composition
            .wording()
            .say(
                Phrase.of(
                    "guide.remark",
                    "asked",
                    kind.asked(),
                    "there",
                    kind.there(),
                    "usual",
                    kind.usual(),
                    "places",
                    String.join("; ", places))),
        results.source(like.get(0)));
  }
}
