package wallbook.read;

import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.Node;
import wallbook.finding.SourcePosition;

/** Turns the parser's marks, which count from 0, into positions in one file. */
record Places(String file) {

  SourcePosition of(Node node) {
    return of(node.getStartMark());
  }

  SourcePosition of(Mark mark) {
    return new SourcePosition(file, mark.getLine() + 1, mark.getColumn() + 1);
  }

  SourcePosition start() {
    return new SourcePosition(file, 1, 1);
  }
}
