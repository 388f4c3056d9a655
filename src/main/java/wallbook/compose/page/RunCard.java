package wallbook.compose.page;

import java.util.List;
import java.util.Optional;
import wallbook.compose.FactView;

/**
 * One cable with both its ends.
 *
 * @param troubles what is known to be wrong with it or not as promised
 * @param why why it is dark, if that is recorded
 * @param standIn what stands in for it, if it is dead
 * @param ends the end at home first
 * @param busy whether it is in use, so that a new use would share or replace it
 * @param carries what it could carry, the most useful first, then what it can't
 * @param nothing why it could carry nothing at all; empty for one that could carry something
 * @param cautions cautions to read before touching it
 */
public record RunCard(
    String anchor,
    String label,
    String cable,
    Sign state,
    Optional<Link> system,
    Optional<String> serves,
    List<String> troubles,
    Optional<String> why,
    Optional<Ref> standIn,
    List<EndView> ends,
    List<FactView> facts,
    List<Link> conduits,
    List<TestView> tests,
    boolean busy,
    List<CarryView> carries,
    List<String> nothing,
    List<Link> cautions,
    Optional<String> note) {
  public RunCard {
    troubles = List.copyOf(troubles);
    ends = List.copyOf(ends);
    facts = List.copyOf(facts);
    conduits = List.copyOf(conduits);
    tests = List.copyOf(tests);
    carries = List.copyOf(carries);
    nothing = List.copyOf(nothing);
    cautions = List.copyOf(cautions);
  }

  /**
   * One end of a cable.
   *
   * @param position where exactly, as somebody would measure it
   * @param left how the end was left, with what it is terminated in
   */
  public record EndView(Link where, String position, String left, Optional<String> slack) {}

  /**
   * One test of a cable.
   *
   * @param facts limit, worst margin, losses read, instrument
   */
  public record TestView(String kind, String date, Sign result, List<FactView> facts) {
    public TestView {
      facts = List.copyOf(facts);
    }
  }
}
