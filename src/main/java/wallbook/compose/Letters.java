package wallbook.compose;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Tells assumptions once for a table: those of every line in general, the others by letters that
 * the lines carry.
 */
public final class Letters {
  private final Set<String> always = new LinkedHashSet<>();
  private final List<String> lettered;

  /**
   * @param lines assumptions of each line
   */
  public Letters(List<List<String>> lines) {
    Set<String> rest = new LinkedHashSet<>();
    for (List<String> line : lines) {
      for (String assumption : line) {
        if (lines.stream().allMatch(other -> other.contains(assumption))) {
          always.add(assumption);
        } else {
          rest.add(assumption);
        }
      }
    }
    lettered = List.copyOf(rest);
  }

  /** What is assumed for every line. */
  public List<String> always() {
    return List.copyOf(always);
  }

  /** Letters with what they stand for. */
  public List<TermView> lettered() {
    List<TermView> terms = new ArrayList<>();
    for (int i = 0; i < lettered.size(); i++) {
      terms.add(new TermView(letter(i), lettered.get(i)));
    }
    return terms;
  }

  /** The letters of a line. */
  public String of(List<String> line) {
    return line.stream()
        .filter(lettered::contains)
        .map(assumption -> letter(lettered.indexOf(assumption)))
        .collect(Collectors.joining(" "));
  }

  /** a to z, then aa, ab and so on. */
  private static String letter(int index) {
    String last = Character.toString('a' + index % 26);
    return index < 26 ? last : letter(index / 26 - 1) + last;
  }
}
