package wallbook.render.press;

import java.util.Arrays;

/**
 * Shares the width of a table among its columns (CSS 2.1, 17.5.2). Lengths are in points.
 *
 * <p>A fixed table follows the widths it is given; what is left goes to the other columns in equal
 * parts. Otherwise each column gets at least the width of its widest word, then as much of the
 * width of its longest text as there is room for, each the same share; room beyond that goes to the
 * columns by the length of their texts. If not even the words fit, the widest columns are cut to
 * one width, so that short words stay whole.
 */
final class ColumnWidths {
  private ColumnWidths() {}

  /**
   * @param given width that each column is given, by itself or as a share of the table's
   */
  static float[] fixed(Length[] given, float table) {
    float[] widths = new float[given.length];
    float used = 0;
    int free = 0;
    for (int i = 0; i < given.length; i++) {
      widths[i] = given[i].auto() ? 0 : given[i].of(table);
      used += widths[i];
      free += given[i].auto() ? 1 : 0;
    }
    float spare = table - used;
    if (free > 0 && spare > 0) {
      for (int i = 0; i < given.length; i++) {
        widths[i] += given[i].auto() ? spare / free : 0;
      }
    } else if (used > 0) {
      scale(widths, table / used);
    }
    return widths;
  }

  /**
   * @param least width of the widest word of each column
   * @param most width of the longest text of each column
   * @param given width that each column is given; the words of a column fit in any case
   */
  static float[] auto(float[] least, float[] most, Length[] given, float table) {
    int count = least.length;
    float[] from = least.clone();
    float[] to = new float[count];
    boolean[] set = new boolean[count];
    boolean anyFree = false;
    for (int i = 0; i < count; i++) {
      to[i] = Math.max(least[i], most[i]);
      set[i] = !given[i].auto();
      if (set[i]) {
        to[i] = Math.max(least[i], given[i].of(table));
        from[i] = to[i];
      }
      anyFree |= !set[i];
    }
    float narrowest = sum(from);
    if (narrowest > table) {
      float words = sum(least);
      if (words >= table) {
        return cut(least, table);
      }
      return between(least, from, table);
    }
    float widest = sum(to);
    if (widest > table) {
      return between(from, to, table);
    }
    return widened(to, set, anyFree, table - widest);
  }

  /** The widths, the widest of them cut to one that lets all fit. */
  private static float[] cut(float[] widths, float table) {
    float[] sorted = widths.clone();
    Arrays.sort(sorted);
    float left = table;
    float level = 0;
    for (int i = 0; i < sorted.length; i++) {
      level = left / (sorted.length - i);
      if (sorted[i] > level) {
        break;
      }
      left -= sorted[i];
    }
    float[] cut = widths.clone();
    for (int i = 0; i < cut.length; i++) {
      cut[i] = Math.min(cut[i], level);
    }
    return cut;
  }

  /** Widths the same share of the way from some to others, so that they fill the table. */
  private static float[] between(float[] from, float[] to, float table) {
    float share = (table - sum(from)) / (sum(to) - sum(from));
    float[] widths = new float[from.length];
    for (int i = 0; i < widths.length; i++) {
      widths[i] = from[i] + share * (to[i] - from[i]);
    }
    return widths;
  }

  private static float[] widened(float[] widths, boolean[] set, boolean anyFree, float spare) {
    float free = 0;
    int count = 0;
    for (int i = 0; i < widths.length; i++) {
      if (!set[i] || !anyFree) {
        free += widths[i];
        count++;
      }
    }
    for (int i = 0; i < widths.length; i++) {
      if (!set[i] || !anyFree) {
        widths[i] += free > 0 ? spare * widths[i] / free : spare / count;
      }
    }
    return widths;
  }

  private static void scale(float[] widths, float factor) {
    for (int i = 0; i < widths.length; i++) {
      widths[i] *= factor;
    }
  }

  private static float sum(float[] widths) {
    float sum = 0;
    for (float width : widths) {
      sum += width;
    }
    return sum;
  }
}
