package wallbook.compose.figure;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.compose.drawing.ConduitSection;
import wallbook.compose.drawing.ConduitSection.Cable;
import wallbook.compose.drawing.Frame;
import wallbook.quantity.Diameter;
import wallbook.quantity.Quantity;
import wallbook.record.Conduit;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Draws a conduit cut across, to scale, with what lies in it, as it was assessed. */
public final class SectionDrawing {
  private static final double TALLEST_MM = 62;

  private final Job job;
  private final Assessments assessments;
  private final Wording wording;

  public SectionDrawing(Job job, Assessments assessments, Wording wording) {
    this.job = job;
    this.assessments = assessments;
    this.wording = wording;
  }

  /** The runs that lie in a conduit: those it lists and those that say they pass through it. */
  public static List<Run> contents(Job job, Conduit conduit) {
    Set<Run> runs = new LinkedHashSet<>();
    conduit.contents().forEach(id -> runs.add(job.run(id)));
    runs.addAll(job.runsThrough(conduit));
    return List.copyOf(runs);
  }

  /**
   * The section; nothing where the bore or the diameter of a cable in it is not known, since a
   * drawing to scale would then be a guess.
   */
  public Optional<ConduitSection> of(Conduit conduit) {
    List<wallbook.record.Cable> cables = contents(job, conduit).stream().map(job::cableOf).toList();
    Optional<Diameter> bore =
        assessments
            .find(conduit.id(), "conduit.bore")
            .flatMap(Assessment::value)
            .filter(Diameter.class::isInstance)
            .map(Diameter.class::cast);
    if (bore.isEmpty() || cables.stream().anyMatch(c -> c.diameter().isEmpty())) {
      return Optional.empty();
    }
    String title = say("drawing.section.title", "conduit", conduit.label());
    String alt =
        say(
            "drawing.section.alt",
            "conduit",
            conduit.label(),
            "bore",
            bore.get(),
            "cables",
            Phrase.counted("drawing.section.cables", cables.size()));
    return Optional.of(
        new ConduitSection(
            Frame.pageWide(title, alt, TALLEST_MM),
            bore.get().asLength().inMillimetres(),
            cables.stream()
                .map(c -> new Cable(c.name(), c.diameter().orElseThrow().inMillimetres()))
                .toList(),
            fill(conduit),
            say("drawing.section.bore", "bore", bore.get()),
            wording.say("drawing.section.no-room")));
  }

  private String fill(Conduit conduit) {
    Optional<Assessment> fill = assessments.find(conduit.id(), "conduit.fill.flat-40");
    Optional<Quantity> share = fill.flatMap(Assessment::value);
    if (share.isEmpty() || fill.flatMap(Assessment::limit).isEmpty()) {
      return share.map(s -> say("drawing.section.empty", "fill", s)).orElse("");
    }
    return say(
        "drawing.section.fill",
        "fill",
        share.get(),
        "limit",
        fill.flatMap(Assessment::limit).orElseThrow());
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
