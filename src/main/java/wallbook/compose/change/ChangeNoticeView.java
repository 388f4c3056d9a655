package wallbook.compose.change;

import java.util.List;

/**
 * The change notice: what is otherwise in the house than the papers at hand say.
 *
 * @param replaces which issue it takes the place of, and which it leads to
 * @param groups changes by what happened; none if nothing did
 */
public record ChangeNoticeView(String replaces, List<Group> groups) {

  /**
   * Changes of one sort.
   *
   * @param heading what happened
   * @param meaning what that means for the household
   */
  public record Group(String heading, String meaning, List<Line> lines) {}

  /**
   * One thing.
   *
   * @param kind what it is
   * @param name how it is printed
   * @param details what changed about it, each as one sentence; none for things added or gone
   */
  public record Line(String kind, String name, List<String> details) {}
}
