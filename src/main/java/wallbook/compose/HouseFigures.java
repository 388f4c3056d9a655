package wallbook.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import wallbook.record.Job;
import wallbook.wording.Wording;

/** The figures at the head of a document about a whole house, in the order they were added. */
public final class HouseFigures {
  private final Job job;
  private final Wording wording;
  private final String beginning;
  private final List<FactView> figures = new ArrayList<>();

  /**
   * @param beginning what the keys of their names begin with, such as {@code manual.fact.}
   */
  public HouseFigures(Job job, Wording wording, String beginning) {
    this.job = job;
    this.wording = wording;
    this.beginning = beginning;
  }

  /** The area of the house, if it is recorded. */
  public HouseFigures area() {
    job.facts().houseArea().ifPresent(a -> add("area", wording.quantities().floorArea(a)));
    return this;
  }

  /** How many there are of something. */
  public HouseFigures count(String name, int count) {
    return add(name, wording.print(count));
  }

  /** How many of the runs are in such a state. */
  public HouseFigures runs(String name, Predicate<RunState> state) {
    return count(
        name, (int) job.runs().stream().filter(run -> state.test(RunState.of(run))).count());
  }

  /** A figure that is words already. */
  public HouseFigures add(String name, String value) {
    figures.add(new FactView(wording.say(beginning + name), value));
    return this;
  }

  public List<FactView> all() {
    return List.copyOf(figures);
  }
}
