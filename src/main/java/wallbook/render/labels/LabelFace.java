package wallbook.render.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is printed on one label, in millimetres from its upper left corner.
 *
 * @param lines in reading order
 * @param rules lines drawn between parts
 */
record LabelFace(List<TypeLine> lines, Optional<ScanCode> code, List<Rule> rules) {
  LabelFace {
    lines = List.copyOf(lines);
    rules = List.copyOf(rules);
  }

  /** A thin line. */
  record Rule(double fromXMm, double fromYMm, double toXMm, double toYMm) {
    Rule moved(double rightMm, double downMm) {
      return new Rule(fromXMm + rightMm, fromYMm + downMm, toXMm + rightMm, toYMm + downMm);
    }
  }

  static LabelFace of(List<TypeLine> lines) {
    return new LabelFace(lines, Optional.empty(), List.of());
  }

  LabelFace with(Optional<ScanCode> scanCode) {
    return new LabelFace(lines, scanCode, rules);
  }

  /** This face at another place. */
  LabelFace moved(double rightMm, double downMm) {
    return new LabelFace(
        lines.stream().map(line -> line.moved(rightMm, downMm)).toList(),
        code.map(c -> c.moved(rightMm, downMm)),
        rules.stream().map(rule -> rule.moved(rightMm, downMm)).toList());
  }

  /** This face and what stands on another, which has no code. */
  LabelFace and(LabelFace other) {
    List<TypeLine> allLines = new ArrayList<>(lines);
    allLines.addAll(other.lines);
    List<Rule> allRules = new ArrayList<>(rules);
    allRules.addAll(other.rules);
    return new LabelFace(allLines, code.or(other::code), allRules);
  }
}
