package wallbook.assess.speaker;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.assess.wire.Wires;
import wallbook.quantity.Length;
import wallbook.quantity.LinearResistance;
import wallbook.quantity.Resistance;
import wallbook.record.Coil;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.PlaceKind;
import wallbook.record.Run;
import wallbook.record.StubOut;
import wallbook.reference.Source;
import wallbook.wording.Phrase;

/**
 * How much further a line that ends in a coil can be taken, in each gauge that it may be extended
 * in, so that loss keeps within its limits.
 */
final class ExtensionAssessor {
  private final Wires wires;
  private final SpeakerPractice practice;

  ExtensionAssessor(Wires wires, SpeakerPractice practice) {
    this.wires = wires;
    this.practice = practice;
  }

  /** Ids of the runs that end at a stub-out or in a coil, to be extended later. */
  static Set<String> extendable(Job job) {
    Set<String> ids = new LinkedHashSet<>();
    for (StubOut stubOut : job.stubOuts()) {
      stubOut.coiled().stream().map(Coil::run).forEach(ids::add);
      job.runsAt(job.place(stubOut.place())).stream().map(Run::id).forEach(ids::add);
    }
    for (Place place : job.places()) {
      if (place.kind() == PlaceKind.STUB_OUT || place.kind() == PlaceKind.IN_WALL_COIL) {
        job.runsAt(place).stream().map(Run::id).forEach(ids::add);
      }
    }
    return ids;
  }

  /** Further lengths of a way whose figures the record has; none of one that lacks them. */
  List<Assessment> assess(SpeakerPath path) {
    List<Assessment> all = new ArrayList<>();
    if (!path.allMissing().isEmpty()) {
      return all;
    }
    for (LossLimit limit : practice.limits()) {
      if (limit.forExtension()) {
        all.addAll(further(path, limit));
      }
    }
    return all;
  }

  private List<Assessment> further(SpeakerPath path, LossLimit limit) {
    SpeakerLine line = path.line();
    Resistance left = limit.largestLoop(line.load()).minus(line.loop());
    Source source = limit.source().and(path.wire().source());
    if (left.inOhms() <= 0) {
      return List.of(
          begin(path, limit, "", Phrase.of("speaker.asked.extend.none"))
              .value(Length.metres(0))
              .limitedBy(said("used-up", line, path))
              .verdict(Verdict.BEYOND, source));
    }
    List<Assessment> all = new ArrayList<>();
    for (int awg : practice.extensionGauges()) {
      LinearResistance pole = wires.stranded(awg, path.wire()).times(1.0 / path.perPole());
      Phrase asked =
          Phrase.of(
              "speaker.asked.extend." + limit.question(),
              "awg",
              awg,
              "load",
              path.loadSaid(),
              "limit",
              limit.permitted());
      all.add(
          begin(path, limit, ".awg-" + awg, asked)
              .value(SpeakerLine.longest(left, pole))
              .limitedBy(said("wire", line, path))
              .verdict(Verdict.INFORMATION, source.and(wires.strandedSource())));
    }
    return all;
  }

  private static Assessment.Builder begin(
      SpeakerPath path, LossLimit limit, String gauge, Phrase asked) {
    Assessment.Builder builder =
        Assessment.of(
            path.subject(), "speaker.extend." + limit.name() + gauge + path.variant(), asked);
    path.wire().assumptions().forEach(builder::assuming);
    path.assumptions().forEach(builder::assuming);
    return builder.assuming(Phrase.of("speaker.assume.extension"));
  }

  private static Phrase said(String what, SpeakerLine line, SpeakerPath path) {
    return Phrase.of("speaker.limit." + what, "loop", line.loop(), "load", path.loadSaid());
  }
}
