package wallbook.compose.signoff;

import java.util.List;
import java.util.Optional;
import wallbook.compose.result.SourceView;

/**
 * The sign-off sheet, ready to print.
 *
 * @param open exceptions that are still open
 * @param failed tests that failed and were not passed since
 * @param untested runs in service without any test; absent if there is none
 * @param untestedDark other whole runs without any test; absent if there is none
 * @param beyond computed answers outside their limit, of what is in service
 * @param warnings what the checks of the record warn of
 * @param shown systems and when they were shown
 * @param settled exceptions that are settled
 * @param checklist what is to be ticked together
 * @param owner name of the owner; empty if not recorded
 * @param integrator name and licence of the integrator; empty if not recorded
 */
public record SignOffView(
    List<OpenItem> open,
    List<FailedTest> failed,
    Optional<String> untested,
    Optional<String> untestedDark,
    List<Beyond> beyond,
    List<Warning> warnings,
    List<Shown> shown,
    List<Settled> settled,
    List<Tick> checklist,
    String revision,
    String owner,
    String integrator,
    List<String> assumed,
    List<SourceView> sources) {

  /** Whether nothing is open. */
  public boolean isClean() {
    return open.isEmpty()
        && failed.isEmpty()
        && untested.isEmpty()
        && beyond.isEmpty()
        && warnings.isEmpty();
  }

  /** Something open. */
  public record OpenItem(String what, String kind, Optional<String> standsIn, String note) {}

  /** A test that failed. */
  public record FailedTest(
      String label, String ends, String kind, String date, String reason, String state) {}

  /** A computed answer outside its limit. */
  public record Beyond(String what, String answer) {}

  /** A warning of the checks, with where it stands in the record. */
  public record Warning(String place, String message, String remedy) {}

  /** A system. */
  public record Shown(String name, String works, String shown) {}

  /** An exception that is settled. */
  public record Settled(String what, String standsIn, String agreed) {}

  /**
   * A line to tick.
   *
   * @param text what is to be so
   * @param recorded how far the record says it is; absent for what only people can say
   * @param missing what is missing, in few words; absent if nothing
   */
  public record Tick(String text, Optional<String> recorded, Optional<String> missing) {}
}
