package wallbook.assess.coax;

import java.util.ArrayList;
import java.util.List;
import wallbook.assess.Assessment;
import wallbook.record.Job;
import wallbook.reference.Tables;

/**
 * Assesses every coaxial run of a job: in service, dark, damaged and abandoned. Topics:
 *
 * <ul>
 *   <li>{@code coax.use.<use>.<band>}: loss at the upper edge of each band of each use, with
 *       connectors, recorded splitters and impedance steps; for information, since no limit is
 *       published, and not stated where the cable's attenuation isn't known
 *   <li>{@code coax.tilt.<use>.<band>}: difference of loss over the band
 *   <li>{@code coax.level.<use>.<band>}: level that a cable modem needs at the start of the run
 *   <li>{@code coax.length}: length against the residential standard's limit, for runs to outlets
 * </ul>
 *
 * Uses are {@code cable-tv}, {@code cable-tv-extended}, {@code off-air}, {@code satellite}, {@code
 * coax-network} and {@code repeater}. A damaged or abandoned run carries nothing.
 */
public final class CoaxAssessor {
  private final CoaxRuns runs;
  private final BandJudge bands;
  private final LengthJudge lengths;

  public CoaxAssessor(Tables tables) {
    runs = new CoaxRuns(tables);
    bands = new BandJudge(tables);
    lengths = new LengthJudge(tables);
  }

  /** Assessments of all coaxial runs, in the record's order of runs. */
  public List<Assessment> assess(Job job) {
    List<Assessment> assessments = new ArrayList<>();
    for (CoaxRun run : runs.of(job)) {
      assessments.addAll(bands.of(run));
      lengths.of(run).ifPresent(assessments::add);
    }
    return assessments;
  }
}
