package wallbook.compose.manual;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wallbook.compose.TermView;
import wallbook.record.HeadKind;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.record.Place;
import wallbook.record.PlaceKind;
import wallbook.record.PlaceUse;
import wallbook.record.Run;
import wallbook.record.TestKind;
import wallbook.wording.Wording;

/** Words of the trade that the manual of a house uses, explained; only those the house has. */
final class Glossary {
  private Glossary() {}

  static List<TermView> of(Job job, Wording wording) {
    List<String> terms = new ArrayList<>(List.of("dark", "terminated", "label", "run", "jack"));
    Set<Medium> media = EnumSet.noneOf(Medium.class);
    for (Run run : job.runs()) {
      media.add(job.cableOf(run).medium());
    }
    if (media.contains(Medium.BALANCED_PAIR)) {
      terms.addAll(List.of("category", "patch-panel", "poe", "certification"));
    }
    if (job.tests().stream().anyMatch(t -> t.kind() == TestKind.VERIFICATION)) {
      terms.add("verification");
    }
    if (job.tests().stream().anyMatch(t -> t.kind() == TestKind.CONTINUITY)) {
      terms.add("continuity");
    }
    if (job.places().stream().anyMatch(p -> p.use() == PlaceUse.ACCESS_POINT)) {
      terms.add("access-point");
    }
    if (job.heads().stream().anyMatch(h -> h.kind() == HeadKind.RACK)) {
      terms.add("rack");
    }
    if (media.contains(Medium.FIBRE)) {
      terms.add("fibre");
    }
    if (media.contains(Medium.COAX)) {
      terms.add("coax");
    }
    if (media.contains(Medium.SPEAKER)) {
      terms.add("gauge");
    }
    if (!job.conduits().isEmpty()) {
      terms.addAll(List.of("conduit", "pull-string", "proved"));
    }
    if (!job.stubOuts().isEmpty()) {
      terms.addAll(List.of("stub-out", "tie"));
    }
    if (job.places().stream().map(Place::kind).anyMatch(k -> k == PlaceKind.BLANK_PLATE)) {
      terms.add("blank-plate");
    }
    if (job.heads().stream().anyMatch(h -> h.kind() == HeadKind.DEMARCATION)) {
      terms.add("demarcation");
    }
    return terms.stream()
        .map(
            t ->
                new TermView(
                    wording.say("glossary." + t + ".term"),
                    wording.say("glossary." + t + ".meaning")))
        .sorted(Comparator.comparing(TermView::term, String.CASE_INSENSITIVE_ORDER))
        .toList();
  }
}
