package wallbook.assess.lowvoltage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Current;
import wallbook.quantity.Voltage;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.RunEnvironment;
import wallbook.wording.Phrase;

/** Assesses whether a class 2 source may give what a feed takes, indoors and where it is wet. */
final class SourceAssessor {
  private final ClassTwo classTwo;

  SourceAssessor(ClassTwo classTwo) {
    this.classTwo = classTwo;
  }

  /**
   * @param drawn current at the source, if the record has what it takes
   */
  List<Assessment> assess(Job job, Run run, Voltage voltage, Optional<Current> drawn) {
    List<Assessment> all = new ArrayList<>();
    Optional<Current> most = classTwo.largestCurrent(voltage);
    Assessment.Builder builder =
        Assessment.of(run.id(), "dc.class-2", Phrase.of("dc.asked.class-2"));
    if (most.isEmpty()) {
      all.add(
          builder
              .value(voltage)
              .limit(classTwo.largestVoltage(), classTwo.largestVoltage().minus(voltage))
              .limitedBy(Phrase.of("dc.limit.class-2-ends", "voltage", voltage))
              .verdict(Verdict.BEYOND, classTwo.source()));
    } else if (drawn.isPresent()) {
      Current left = most.get().minus(drawn.get());
      all.add(
          builder
              .value(drawn.get())
              .limit(most.get(), left)
              .limitedBy(
                  Phrase.of(
                      "dc.limit.class-2-rating",
                      "voltage",
                      voltage,
                      "power",
                      classTwo.largestPower(voltage).orElseThrow()))
              .verdict(left.inAmperes() >= 0 ? Verdict.WITHIN : Verdict.BEYOND, classTwo.source()));
    }
    if (isWet(job, run)) {
      Voltage left = classTwo.wetContact().minus(voltage);
      all.add(
          Assessment.of(run.id(), "dc.wet-contact", Phrase.of("dc.asked.wet-contact"))
              .value(voltage)
              .limit(classTwo.wetContact(), left)
              .limitedBy(Phrase.of("dc.limit.wet-contact"))
              .verdict(
                  left.inVolts() >= 0 ? Verdict.WITHIN : Verdict.BEYOND,
                  classTwo.wetContactSource()));
    }
    return all;
  }

  /** Whether the run is outdoors anywhere or ends there. */
  private static boolean isWet(Job job, Run run) {
    return run.environments().stream()
            .anyMatch(
                e ->
                    e == RunEnvironment.BURIED
                        || e == RunEnvironment.OUTDOOR_EXPOSED
                        || e == RunEnvironment.OUTDOOR_CONDUIT)
        || Stream.of(run.from(), run.to()).anyMatch(end -> job.spaceOf(end).kind().isOutdoor());
  }
}
