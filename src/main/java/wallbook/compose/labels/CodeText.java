package wallbook.compose.labels;

import java.util.ArrayList;
import java.util.List;
import wallbook.record.JobFacts;

/**
 * The text of a code in forms, the fullest first: plain text, read without a network and without
 * this program. For instance {@code KIT-01 | Kitchen, KIT-A jack 1 > Equipment rack, P1 port 7 |
 * House by the lake r2}.
 */
final class CodeText {
  private static final String PART = " | ";
  private static final String TO = " > ";

  private final String job;

  CodeText(JobFacts facts) {
    this.job = facts.title() + " r" + facts.revision();
  }

  /** Code of one end of a cable or conduit; in the shortest but one, the other end alone. */
  List<String> of(String label, List<String> thisEnd, List<String> otherEnd) {
    List<String> forms = new ArrayList<>();
    for (int i = 0; i < Math.max(thisEnd.size(), otherEnd.size()); i++) {
      forms.add(form(thisEnd, i) + TO + form(otherEnd, i));
    }
    List<String> texts = texts(label, forms);
    texts.add(label + PART + form(otherEnd, otherEnd.size() - 1));
    return closed(label, texts);
  }

  /** Code of something that has no other end. */
  List<String> of(String label, List<String> forms) {
    return closed(label, texts(label, forms));
  }

  private List<String> texts(String label, List<String> forms) {
    List<String> texts = new ArrayList<>();
    forms.forEach(form -> texts.add(label + PART + form + PART + job));
    forms.forEach(form -> texts.add(label + PART + form));
    return texts;
  }

  private static List<String> closed(String label, List<String> texts) {
    texts.add(label);
    // Blanks that must not break are for setting type; in a code they cost room and old scanners.
    return texts.stream().map(text -> text.replace('\u00a0', ' ')).distinct().toList();
  }

  private static String form(List<String> forms, int index) {
    return forms.get(Math.min(index, forms.size() - 1));
  }
}
