package wallbook.compose.guide;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.assess.outlook.Prospect;
import wallbook.assess.outlook.ServiceFamily;
import wallbook.compose.Composition;
import wallbook.compose.Describe;
import wallbook.compose.Speech;
import wallbook.compose.guide.GuideView.StubOutBlock;
import wallbook.compose.result.Results;
import wallbook.record.Coil;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.Run;
import wallbook.record.StubOut;
import wallbook.wording.Wording;

/** Exterior ends: what waits there, how far the line can go on, what cover it needs. */
final class StubOutBlocks {
  private final Composition composition;
  private final Job job;
  private final Wording wording;
  private final Describe describe;
  private final Speech words;
  private final Results results;

  StubOutBlocks(Composition composition, Results results) {
    this.composition = composition;
    this.job = composition.job();
    this.wording = composition.wording();
    this.describe = composition.describe();
    this.words = new Speech(wording, describe);
    this.results = results;
  }

  List<StubOutBlock> all() {
    return job.stubOuts().stream().map(this::block).toList();
  }

  private StubOutBlock block(StubOut stubOut) {
    Place place = job.place(stubOut.place());
    List<String> facts = new ArrayList<>();
    for (Coil coil : stubOut.coiled()) {
      facts.add(
          words.say(
              "guide.stub.coil",
              "length",
              coil.length(),
              "label",
              job.run(coil.run()).label(),
              "cable",
              describe.cable(job.run(coil.run()))));
    }
    stubOut
        .zone()
        .ifPresent(id -> facts.add(words.say("guide.stub.zone", "zone", job.zone(id).name())));
    stubOut.lineStillToLay().ifPresent(line -> facts.add(toLay(stubOut, line)));
    if (!stubOut.obstacles().isEmpty()) {
      facts.add(
          words.say("guide.stub.obstacles", "things", String.join("; ", stubOut.obstacles())));
    }
    stubOut.note().ifPresent(facts::add);
    return new StubOutBlock(
        words.say(
            "guide.stub.name", "space", job.space(place.space()).name(), "place", place.name()),
        describe.where(place),
        facts,
        figures(stubOut));
  }

  private String toLay(StubOut stubOut, String line) {
    return stubOut
        .lineBy()
        .map(by -> words.say("guide.stub.to-lay-by", "line", line, "by", describe.word(by)))
        .orElseGet(() -> words.say("guide.stub.to-lay", "line", line));
  }

  private List<String> figures(StubOut stubOut) {
    List<String> figures = new ArrayList<>();
    for (Run run : runs(stubOut)) {
      composition.outlook().of(run.id()).stream()
          .filter(p -> isSoundOrFurther(p))
          .forEach(p -> figures.add(figure(run, p)));
    }
    composition.assessments().of(stubOut.id(), "outdoor.").stream()
        .map(a -> figure(wording.say(a.asked()), a))
        .forEach(figures::add);
    return figures;
  }

  private Set<Run> runs(StubOut stubOut) {
    Set<Run> runs = new LinkedHashSet<>();
    Stream.concat(
            stubOut.coiled().stream().map(coil -> job.run(coil.run())),
            job.runsAt(job.place(stubOut.place())).stream())
        .forEach(runs::add);
    return runs;
  }

  private static boolean isSoundOrFurther(Prospect prospect) {
    return prospect.family() == ServiceFamily.SOUND || prospect.family() == ServiceFamily.EXTENSION;
  }

  private String figure(Run run, Prospect prospect) {
    return figure(
        words.say("guide.stub.over", "label", run.label(), "service", prospect.name()),
        prospect.decisive());
  }

  private String figure(String what, Assessment assessment) {
    List<String> parts = new ArrayList<>();
    boolean judged = assessment.limit().isPresent() && assessment.margin().isPresent();
    if (!assessment.missing().isEmpty()) {
      parts.add(Speech.joined(words.say(assessment.missing())));
    } else if (judged) {
      parts.add(
          words.say(
              "guide.stub.judged",
              "verdict",
              words.answer(assessment.verdict()),
              "value",
              assessment.value().orElseThrow(),
              "limit",
              assessment.limit().get(),
              "margin",
              results.margin(assessment.margin().get())));
    } else {
      assessment.value().map(wording::print).ifPresent(parts::add);
    }
    Optional<String> why = assessment.limitedBy().map(wording::say);
    why.ifPresent(parts::add);
    return words.say(
        "guide.stub.figure",
        "what",
        what,
        "answer",
        Speech.joined(parts),
        "reference",
        results.source(assessment));
  }
}
