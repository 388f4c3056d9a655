package wallbook.compose.asbuilt;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import wallbook.record.Run;

/** Gives every run one place that the index leads to: where its row is set first. */
final class Anchors {
  private final Set<String> set = new LinkedHashSet<>();

  /** The anchor for a row of a run; nothing if an earlier row has it. */
  Optional<String> claim(Run run) {
    return set.add(run.id()) ? Optional.of(of(run)) : Optional.empty();
  }

  /** Whether a row of the run was set. */
  boolean has(Run run) {
    return set.contains(run.id());
  }

  static String of(Run run) {
    return "run-" + run.id();
  }
}
