package wallbook.record;

import java.util.List;
import java.util.Map;
import wallbook.finding.SourcePosition;

/**
 * Where a thing of the record stands in its file, as a whole and field by field. All origins are
 * equal to each other: where something is written is no part of what it says, so that two records
 * can be compared by what they say.
 */
public final class Origin {
  private final SourcePosition whole;
  private final String[] keys;
  private final SourcePosition[] positions;

  /**
   * @param whole where the thing begins
   * @param fields where the value of each field begins, by its key as written; the items of a list
   *     of plain values by {@code key/index}, counted from 0
   */
  public Origin(SourcePosition whole, Map<String, SourcePosition> fields) {
    this.whole = whole;
    // Two small arrays: a record of many thousand entries has one of these for each.
    this.keys = fields.keySet().toArray(String[]::new);
    this.positions = new SourcePosition[keys.length];
    for (int i = 0; i < keys.length; i++) {
      positions[i] = fields.get(keys[i]);
    }
  }

  /**
   * The same with keys and positions in lists of one order.
   *
   * @param keys as above, each once
   */
  public Origin(SourcePosition whole, List<String> keys, List<SourcePosition> positions) {
    this.whole = whole;
    this.keys = keys.toArray(String[]::new);
    this.positions = positions.toArray(SourcePosition[]::new);
  }

  /** Where the thing begins. */
  public SourcePosition position() {
    return whole;
  }

  /**
   * Where the value of a field begins, by its key as written; the thing's own place if it has none.
   */
  public SourcePosition position(String key) {
    SourcePosition found = find(key);
    return found == null ? whole : found;
  }

  /** Where an item of a list of plain values begins; the index counts from 0. */
  public SourcePosition position(String key, int index) {
    SourcePosition found = find(key + "/" + index);
    return found == null ? position(key) : found;
  }

  private SourcePosition find(String key) {
    for (int i = 0; i < keys.length; i++) {
      if (keys[i].equals(key)) {
        return positions[i];
      }
    }
    return null;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Origin;
  }

  @Override
  public int hashCode() {
    return 0;
  }

  @Override
  public String toString() {
    return whole.toString();
  }
}
