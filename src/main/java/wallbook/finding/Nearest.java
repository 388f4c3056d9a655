package wallbook.finding;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the accepted value that was most likely meant. */
public final class Nearest {
  private Nearest() {}

  /**
   * The candidate with the fewest edits (insert, delete, replace, swap of neighbours) from the
   * text, if it is close enough to be a slip: at most a third of its letters, at least two.
   */
  public static Optional<String> to(String text, Collection<String> candidates) {
    int allowed = Math.max(2, text.length() / 3);
    return candidates.stream()
        .filter(c -> Math.abs(c.length() - text.length()) <= allowed)
        .map(
            c -> new Candidate(c, edits(text.toLowerCase(Locale.ROOT), c.toLowerCase(Locale.ROOT))))
        .filter(c -> c.edits <= allowed)
        .min(Comparator.comparingInt(Candidate::edits).thenComparing(Candidate::text))
        .map(Candidate::text);
  }

  private record Candidate(String text, int edits) {}

  private static int edits(String a, String b) {
    int[] before = new int[b.length() + 1];
    int[] previous = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      previous[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replaced = previous[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(replaced, Math.min(previous[j], row[j - 1]) + 1);
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        if (swapped) {
          row[j] = Math.min(row[j], before[j - 2] + 1);
        }
      }
      int[] spare = before;
      before = previous;
      previous = row;
      row = spare;
    }
    return previous[b.length()];
  }
}
