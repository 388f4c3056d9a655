package wallbook.assess.outdoor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.assess.outdoor.BurialCover.Least;
import wallbook.assess.outdoor.BurialCover.Surface;
import wallbook.quantity.Length;
import wallbook.quantity.Voltage;
import wallbook.record.Coil;
import wallbook.record.Feed;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.RunEnvironment;
import wallbook.record.SpaceKind;
import wallbook.record.StubOut;
import wallbook.record.Zone;
import wallbook.wording.Phrase;

/** Assesses the cover over a stub-out, and says what the line still to be laid must have. */
final class CoverAssessor {
  /** Closer than a tape reads, so that 6 in written as 152.4 mm is 6 in. */
  private static final Length TOUCHING = Length.millimetres(0.01);

  private final BurialCover cover;

  CoverAssessor(BurialCover cover) {
    this.cover = cover;
  }

  List<Assessment> assess(Job job, StubOut stubOut) {
    List<Assessment> all = new ArrayList<>();
    Voltage highest = highest(job, stubOut);
    if (isBuried(job, stubOut)) {
      all.add(depth(job, stubOut, highest));
    }
    if (stubOut.lineStillToLay().isPresent()) {
      for (Surface surface : List.of(Surface.GARDEN, Surface.DRIVEWAY)) {
        all.add(toLay(stubOut, surface, cover.least(highest, surface)));
      }
    }
    return all;
  }

  private Assessment depth(Job job, StubOut stubOut, Voltage highest) {
    Surface surface =
        job.space(job.place(stubOut.place()).space()).kind() == SpaceKind.DRIVEWAY
            ? Surface.DRIVEWAY
            : Surface.GARDEN;
    Least least = cover.least(highest, surface);
    Assessment.Builder builder =
        begin(stubOut, "outdoor.cover", Phrase.of("outdoor.asked.cover"), least);
    if (stubOut.cover().isEmpty()) {
      return builder.notStated(List.of(Phrase.of("outdoor.missing.cover")), least.source());
    }
    Length there = stubOut.cover().get();
    Length left = there.minus(least.cover());
    return builder
        .value(there)
        .limit(least.cover(), left)
        .limitedBy(Phrase.of("outdoor.limit.cover." + surface.word(), "least", least.cover()))
        .verdict(
            left.plus(TOUCHING).inMetres() >= 0 ? Verdict.CONDITIONAL : Verdict.BEYOND,
            least.source());
  }

  private static Assessment toLay(StubOut stubOut, Surface surface, Least least) {
    return begin(
            stubOut,
            "outdoor.cover-to-lay." + surface.word(),
            Phrase.of("outdoor.asked.to-lay." + surface.word()),
            least)
        .value(least.cover())
        .verdict(Verdict.INFORMATION, least.source());
  }

  private static Assessment.Builder begin(
      StubOut stubOut, String topic, Phrase asked, Least least) {
    return Assessment.of(stubOut.id(), topic, asked)
        .onlyIf(Phrase.of(least.lowVoltage() ? "outdoor.assume.analogy" : "outdoor.assume.over"))
        .assuming(Phrase.of("outdoor.assume.top"));
  }

  /** Highest voltage of what comes out; what states none counts as 0 V. */
  private static Voltage highest(Job job, StubOut stubOut) {
    Stream<Voltage> feeds =
        runs(job, stubOut).map(Run::feed).flatMap(Optional::stream).map(Feed::voltage);
    Stream<Voltage> lines = stubOut.zone().map(job::zone).flatMap(Zone::lineVoltage).stream();
    return Stream.concat(feeds, lines).max(Voltage::compareTo).orElse(Voltage.volts(0));
  }

  private static boolean isBuried(Job job, StubOut stubOut) {
    return stubOut.cover().isPresent()
        || stubOut.conduit().isPresent()
        || runs(job, stubOut).anyMatch(r -> r.environments().contains(RunEnvironment.BURIED));
  }

  private static Stream<Run> runs(Job job, StubOut stubOut) {
    return Stream.concat(
        stubOut.coiled().stream().map(Coil::run).map(job::run),
        job.runsAt(job.place(stubOut.place())).stream());
  }
}
