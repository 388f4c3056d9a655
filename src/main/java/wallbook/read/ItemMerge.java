package wallbook.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.nodes.CollectionNode;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;
import wallbook.finding.Findings;
import wallbook.finding.SourcePosition;
import wallbook.quantity.Length;
import wallbook.record.Point;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;

/**
 * Merges the cells of one row into the thing of the record they belong to, as changes to its text.
 */
final class ItemMerge {
  private final TextEdits edits;
  private final String lineEnd;
  private final Set<Node> shared;
  private final List<SourcePosition> clashes = new ArrayList<>();

  /**
   * @param shared nodes that the record refers to more than once, by identity
   */
  ItemMerge(TextEdits edits, String lineEnd, Set<Node> shared) {
    this.edits = edits;
    this.lineEnd = lineEnd;
    this.shared = shared;
  }

  /** Cells that would have changed a value that other things of the record share. */
  List<SourcePosition> clashes() {
    return List.copyOf(clashes);
  }

  /** Writes what the row says of a thing that is there, where it says something else. */
  void merge(MappingNode node, Shape shape, String prefix, Row row) {
    for (Field field : shape.fields()) {
      String key = prefix + field.key();
      Optional<NodeTuple> entry = entry(node, field.key());
      Node value = entry.map(NodeTuple::getValueNode).orElse(null);
      boolean absent = value == null || value.getTag().equals(Tag.NULL);
      switch (Columns.Form.of(field)) {
        case PLAIN, PLAIN_LIST -> {
          if (row.has(key) && (absent || !same(field, value, row.text(key)))) {
            put(node, entry, field.key(), flow(field, key, row), row.at(key));
          }
        }
        case THING -> {
          if (row.hasWithin(key) && value instanceof MappingNode inner) {
            merge(inner, Columns.shape(field), key + ".", row);
          } else if (row.hasWithin(key)) {
            put(node, entry, field.key(), flow(field, key, row), row.at(key));
          }
        }
        case THING_LIST -> {
          if (row.hasWithin(key)
              && value instanceof SequenceNode list
              && !list.getValue().isEmpty()) {
            mergeItems(list, field, key, row);
          } else if (row.hasWithin(key)) {
            put(node, entry, field.key(), flow(field, key, row), row.at(key));
          }
        }
      }
    }
  }

  private void mergeItems(SequenceNode list, Field field, String key, Row row) {
    List<Node> items = list.getValue();
    for (int number : row.numbers(key)) {
      String within = key + "." + number;
      if (number <= items.size() && items.get(number - 1) instanceof MappingNode item) {
        merge(item, Columns.shape(field), within + ".", row);
      } else {
        append(list, flow(Columns.shape(field), within + ".", row), row.at(within));
      }
    }
  }

  /** Adds an item, written on one line, to a list that has some. */
  private void append(SequenceNode list, String item, SourcePosition cause) {
    if (shared.contains(list)) {
      clashes.add(cause);
      return;
    }
    if (list.getFlowStyle() == FlowStyle.FLOW) {
      edits.insert(endOf(list.getValue().get(list.getValue().size() - 1)), 0, ", " + item, cause);
    } else {
      int column = list.getStartMark().getColumn();
      afterLine(endOf(list), 2 * column + 1, " ".repeat(column) + "- " + item, cause);
    }
  }

  /** Adds a new thing in block style to the end of a list in block style. */
  void appendBlock(SequenceNode list, Shape shape, Row row) {
    int column = list.getStartMark().getColumn();
    afterLine(endOf(list), 2 * column + 1, block(shape, row, column), row.start());
  }

  /** Adds a new thing to a list in flow style. */
  void appendFlow(SequenceNode list, Shape shape, Row row) {
    append(list, flow(shape, "", row), row.start());
  }

  /** A new thing in block style, its dash in the given column. */
  String block(Shape shape, Row row, int column) {
    StringBuilder text = new StringBuilder();
    String indent = " ".repeat(column) + "- ";
    for (Field field : shape.fields()) {
      if (row.has(field.key()) || row.hasWithin(field.key())) {
        text.append(text.isEmpty() ? "" : lineEnd)
            .append(indent)
            .append(field.key())
            .append(": ")
            .append(flow(field, field.key(), row));
        indent = " ".repeat(column + 2);
      }
    }
    return text.toString();
  }

  private void put(
      MappingNode node, Optional<NodeTuple> entry, String key, String text, SourcePosition cause) {
    if (shared.contains(node)
        || entry.map(NodeTuple::getValueNode).filter(shared::contains).isPresent()) {
      clashes.add(cause);
      return;
    }
    if (entry.isPresent()) {
      int colon = endOf(entry.get().getKeyNode());
      while (edits.at(colon) != ':') {
        colon++;
      }
      Node old = entry.get().getValueNode();
      boolean scalar = old instanceof ScalarNode && !old.getTag().equals(Tag.NULL);
      int from = scalar ? old.getStartMark().getIndex() : colon + 1;
      boolean fromLiteral = scalar && (edits.at(from) == '|' || edits.at(from) == '>');
      int to = old.getTag().equals(Tag.NULL) ? Math.max(colon + 1, endOf(old)) : endOf(old);
      String ending = fromLiteral && to > 0 && edits.at(to - 1) == '\n' ? lineEnd : "";
      edits.replace(from, to, (scalar ? "" : " ") + text + ending, cause);
      return;
    }
    String pair = key + ": " + text;
    if (node.getFlowStyle() == FlowStyle.FLOW) {
      List<NodeTuple> tuples = node.getValue();
      int end =
          tuples.isEmpty()
              ? node.getEndMark().getIndex() - 1
              : endOf(tuples.get(tuples.size() - 1).getValueNode());
      edits.insert(end, 0, (tuples.isEmpty() ? "" : ", ") + pair, cause);
    } else {
      int column = node.getStartMark().getColumn();
      afterLine(endOf(node), 2 * column, " ".repeat(column) + pair, cause);
    }
  }

  /** Puts lines in after the line on which something ends. */
  void afterLine(int end, int depth, String lines, SourcePosition cause) {
    if (end > 0 && edits.at(end - 1) == '\n') {
      edits.insert(end, depth, lines + lineEnd, cause);
      return;
    }
    int at = end;
    while (at < edits.length() && edits.at(at) != '\n' && edits.at(at) != '\r') {
      at++;
    }
    edits.insert(at, depth, lineEnd + lines, cause);
  }

  /** Where the text of a node ends; a block collection itself ends only where the next begins. */
  static int endOf(Node node) {
    if (node instanceof CollectionNode<?> collection
        && collection.getFlowStyle() != FlowStyle.FLOW
        && !collection.getValue().isEmpty()) {
      Object last = collection.getValue().get(collection.getValue().size() - 1);
      return endOf(last instanceof NodeTuple tuple ? tuple.getValueNode() : (Node) last);
    }
    return node.getEndMark().getIndex();
  }

  static Optional<NodeTuple> entry(MappingNode node, String key) {
    return node.getValue().stream()
        .filter(t -> t.getKeyNode() instanceof ScalarNode k && k.getValue().equals(key))
        .findFirst();
  }

  private String flow(Shape shape, String prefix, Row row) {
    return shape.fields().stream()
        .filter(f -> row.has(prefix + f.key()) || row.hasWithin(prefix + f.key()))
        .map(f -> f.key() + ": " + flow(f, prefix + f.key(), row))
        .collect(Collectors.joining(", ", "{", "}"));
  }

  private String flow(Field field, String key, Row row) {
    return switch (Columns.Form.of(field)) {
      case PLAIN -> item(field, row.text(key));
      case PLAIN_LIST ->
          ListCell.split(row.text(key)).stream()
              .map(i -> item(field, i))
              .collect(Collectors.joining(", ", "[", "]"));
      case THING -> flow(Columns.shape(field), key + ".", row);
      case THING_LIST ->
          row.numbers(key).stream()
              .map(n -> flow(Columns.shape(field), key + "." + n + ".", row))
              .collect(Collectors.joining(", ", "[", "]"));
    };
  }

  private static String item(Field field, String text) {
    return field.type() == Point.class ? text.strip() : YamlText.plainOrQuoted(text.strip());
  }

  private static boolean same(Field field, Node node, String cell) {
    if (Columns.Form.of(field) == Columns.Form.PLAIN_LIST) {
      List<String> items = ListCell.split(cell);
      if (!(node instanceof SequenceNode list) || list.getValue().size() != items.size()) {
        return false;
      }
      for (int i = 0; i < items.size(); i++) {
        if (!sameValue(field, list.getValue().get(i), items.get(i))) {
          return false;
        }
      }
      return true;
    }
    return sameValue(field, node, cell);
  }

  private static boolean sameValue(Field field, Node node, String cell) {
    if (field.type() == Point.class) {
      return node instanceof SequenceNode list
          && list.getValue().size() == 2
          && Objects.equals(
              list.getValue().stream().map(n -> value(Length.class, scalar(n))).toList(),
              PointCell.split(cell).stream().map(t -> value(Length.class, t)).toList());
    }
    return node instanceof ScalarNode
        && Objects.equals(value(field.type(), scalar(node)), value(field.type(), cell));
  }

  private static String scalar(Node node) {
    return node instanceof ScalarNode scalar ? scalar.getValue() : "";
  }

  private static Optional<?> value(Class<?> type, String text) {
    return new Scalars(new Findings()).read(text, type, new SourcePosition("-", 1, 1));
  }
}
