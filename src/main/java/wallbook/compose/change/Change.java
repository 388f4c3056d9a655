package wallbook.compose.change;

import java.util.List;

/**
 * One change.
 *
 * @param list key of the list that the thing is in; {@code job} for what is said of the whole job
 * @param id its id
 * @param name how it is printed: the label, name or title; the id if it has none
 * @param fields what is said otherwise, in the order of the record; none for things added or gone
 */
public record Change(
    ChangeSort sort, String list, String id, String name, List<FieldChange> fields) {
  public Change {
    fields = List.copyOf(fields);
  }

  /**
   * One value.
   *
   * @param key its dotted key, such as {@code to.finish}
   * @param before as printed; empty if nothing was said
   * @param after as printed; empty if nothing is said any more
   */
  public record FieldChange(String key, String before, String after) {}
}
