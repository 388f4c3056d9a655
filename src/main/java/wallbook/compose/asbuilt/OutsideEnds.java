package wallbook.compose.asbuilt;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.compose.Composition;
import wallbook.compose.Describe;
import wallbook.compose.asbuilt.AsBuiltView.OutsideEnd;
import wallbook.compose.figure.Photographs;
import wallbook.compose.result.Results;
import wallbook.record.Coil;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.StubOut;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Exterior ends: how tapes find them, how deep they lie, what is coiled there. */
final class OutsideEnds {
  private final Job job;
  private final Assessments assessments;
  private final Wording wording;
  private final Describe describe;
  private final Results results;
  private final Photographs photographs;

  OutsideEnds(Composition composition, Results results) {
    this.job = composition.job();
    this.assessments = composition.assessments();
    this.wording = composition.wording();
    this.describe = composition.describe();
    this.results = results;
    this.photographs = new Photographs(job, wording);
  }

  List<OutsideEnd> all() {
    return job.stubOuts().stream().map(this::end).toList();
  }

  private OutsideEnd end(StubOut stubOut) {
    Place place = job.place(stubOut.place());
    List<Assessment> found = new ArrayList<>();
    assessments.find(place.id(), "location.ties").ifPresent(found::add);
    assessments.find(place.id(), "location.angle").ifPresent(found::add);
    assessments.find(place.id(), "location.error").ifPresent(found::add);
    assessments.find(stubOut.id(), "outdoor.cover").ifPresent(found::add);
    Optional<String> tape =
        assessments
            .find(place.id(), "location.tape")
            .map(Assessment::asked)
            .map(wording::say)
            .or(() -> Optional.of(describe.where(place)).filter(where -> !where.isBlank()));
    String coiled = stubOut.coiled().stream().map(this::coil).collect(Collectors.joining("; "));
    return new OutsideEnd(
        place.name(),
        job.space(place.space()).name(),
        tape,
        coiled.isEmpty() ? RunText.NONE : coiled,
        stubOut.obstacles().isEmpty() ? RunText.NONE : String.join("; ", stubOut.obstacles()),
        stubOut
            .lineStillToLay()
            .map(
                line ->
                    wording.say(
                        Phrase.of(
                            "asbuilt.outside.to-lay",
                            "line",
                            line,
                            "by",
                            stubOut
                                .lineBy()
                                .map(describe::word)
                                .orElseGet(() -> wording.say("not-recorded"))))),
        stubOut.note(),
        found.stream().map(results::view).toList(),
        photographs.near(place));
  }

  private String coil(Coil coil) {
    return wording.say(
        Phrase.of("manual.coil", "label", job.run(coil.run()).label(), "length", coil.length()));
  }
}
