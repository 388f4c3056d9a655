package wallbook.assess.outlook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallbook.record.Coil;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.StubOut;

/** Finds the stub-out at which a run waits to be laid on. */
final class StubOuts {
  private final List<StubOut> waiting;
  private final Map<String, Integer> firstWithRun = new HashMap<>();
  private final Map<String, Integer> firstAtPlace = new HashMap<>();

  StubOuts(Job job) {
    waiting = job.stubOuts().stream().filter(s -> s.lineStillToLay().isPresent()).toList();
    for (int i = 0; i < waiting.size(); i++) {
      for (Coil coil : waiting.get(i).coiled()) {
        firstWithRun.putIfAbsent(coil.run(), i);
      }
      firstAtPlace.putIfAbsent(waiting.get(i).place(), i);
    }
  }

  /** The stub-out where a run is coiled or ends and a line is still to be laid. */
  Optional<StubOut> of(Run run) {
    List<Integer> found = new ArrayList<>();
    Optional.ofNullable(firstWithRun.get(run.id())).ifPresent(found::add);
    run.from().place().map(firstAtPlace::get).ifPresent(found::add);
    run.to().place().map(firstAtPlace::get).ifPresent(found::add);
    return found.stream().min(Comparator.naturalOrder()).map(waiting::get);
  }
}
