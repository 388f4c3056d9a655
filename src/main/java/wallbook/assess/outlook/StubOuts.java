package wallbook.assess.outlook;

import java.util.Optional;
import java.util.stream.Stream;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.record.StubOut;

/** Finds the stub-out at which a run waits to be laid on. */
final class StubOuts {
  private StubOuts() {}

  /** The stub-out where a run is coiled or ends and a line is still to be laid. */
  static Optional<StubOut> of(Job job, Run run) {
    return job.stubOuts().stream()
        .filter(s -> s.lineStillToLay().isPresent())
        .filter(s -> isCoiledAt(s, run) || endsAt(s, run))
        .findFirst();
  }

  private static boolean isCoiledAt(StubOut stubOut, Run run) {
    return stubOut.coiled().stream().anyMatch(coil -> coil.run().equals(run.id()));
  }

  private static boolean endsAt(StubOut stubOut, Run run) {
    return Stream.of(run.from(), run.to())
        .map(RunEnd::place)
        .anyMatch(Optional.of(stubOut.place())::equals);
  }
}
