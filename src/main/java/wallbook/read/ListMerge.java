package wallbook.read;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;
import wallbook.read.CsvText.Cell;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;

/** Merges rows into one list of a record. */
final class ListMerge {
  private final Field list;
  private final Shape shape;
  private final String match;
  private final MappingNode root;
  private final TextEdits edits;
  private final String lineEnd;
  private final ItemMerge items;
  private final Findings findings;
  private final Map<String, List<MappingNode>> known = new HashMap<>();
  private final Map<String, Integer> seen = new HashMap<>();
  private final List<Row> fresh = new ArrayList<>();
  private int changed;

  /**
   * @param match key by which rows find things
   */
  ListMerge(String text, MappingNode root, Field list, String match, Findings findings) {
    this.list = list;
    this.shape = Columns.shape(list);
    this.match = match;
    this.root = root;
    this.edits = new TextEdits(text);
    this.lineEnd = text.contains("\r\n") ? "\r\n" : "\n";
    this.items = new ItemMerge(edits, lineEnd, shared(root));
    this.findings = findings;
    for (Node item : existing().map(SequenceNode::getValue).orElse(List.of())) {
      if (item instanceof MappingNode thing) {
        scalar(thing, match)
            .ifPresent(v -> known.computeIfAbsent(v, k -> new ArrayList<>()).add(thing));
      }
    }
  }

  /** Merges a row. */
  void add(ScheduleRows.Given given) {
    Cell by = given.cells().get(match);
    String value = by.text().strip();
    int nth = seen.merge(value, 1, Integer::sum);
    List<MappingNode> things = known.getOrDefault(value, List.of());
    boolean unique = shape.field(match).flatMap(Field::identifies).isPresent();
    boolean hasIds = shape.fields().stream().anyMatch(f -> f.identifies().isPresent());
    if (hasIds && nth > 1) {
      findings.add(
          Finding.of(Severity.ERROR, "duplicate-row", by.at(), "key", match, "value", value)
              .found(value));
    } else if (!unique && hasIds && things.size() > 1) {
      findings.add(
          Finding.of(Severity.ERROR, "ambiguous-row", by.at(), "key", match, "value", value)
              .found(value));
    } else if (things.size() >= nth) {
      MappingNode thing = things.get(nth - 1);
      int before = edits.count();
      items.merge(thing, shape, "", row(given, home(thing)));
      changed += edits.count() > before ? 1 : 0;
    } else {
      fresh.add(withId(row(given, "from"), value));
    }
  }

  int added() {
    return fresh.size();
  }

  int changed() {
    return changed;
  }

  /** The new text of the record. */
  TextEdits.Made make(String file) {
    Optional<SequenceNode> sequence = existing().filter(s -> !s.getValue().isEmpty());
    if (sequence.isPresent()) {
      boolean flow = sequence.get().getFlowStyle() == FlowStyle.FLOW;
      for (Row row : fresh) {
        if (flow) {
          items.appendFlow(sequence.get(), shape, row);
        } else {
          items.appendBlock(sequence.get(), shape, row);
        }
      }
    } else if (!fresh.isEmpty()) {
      beginList();
    }
    for (SourcePosition clash : items.clashes()) {
      findings.add(Finding.of(Severity.ERROR, "shared-value", clash));
    }
    return edits.make(file);
  }

  private void beginList() {
    Optional<NodeTuple> entry = ItemMerge.entry(root, list.key());
    int end = edits.length();
    boolean open = end > 0 && edits.at(end - 1) != '\n';
    if (entry.isPresent()) {
      int key = ItemMerge.endOf(entry.get().getKeyNode());
      end = Math.max(key + 1, ItemMerge.endOf(entry.get().getValueNode()));
      edits.replace(key, end, ":", fresh.get(0).start());
    } else {
      edits.insert(
          end, 0, (open ? lineEnd : "") + lineEnd + list.key() + ":", fresh.get(0).start());
    }
    for (Row row : fresh) {
      edits.insert(end, 0, lineEnd + items.block(shape, row, 2), row.start());
    }
    if (entry.isEmpty()) {
      edits.insert(end, 0, lineEnd, fresh.get(0).start());
    }
  }

  private Optional<SequenceNode> existing() {
    return ItemMerge.entry(root, list.key())
        .map(NodeTuple::getValueNode)
        .filter(SequenceNode.class::isInstance)
        .map(SequenceNode.class::cast);
  }

  /** The end of a run that is at a head. */
  private static String home(MappingNode thing) {
    boolean to = scalar(thing, "to.head").isPresent() && scalar(thing, "from.head").isEmpty();
    return to ? "to" : "from";
  }

  private static Row row(ScheduleRows.Given given, String home) {
    String far = home.equals("from") ? "to" : "from";
    SortedMap<String, Cell> cells = new TreeMap<>();
    given
        .cells()
        .forEach(
            (key, cell) ->
                cells.put(
                    key.replaceFirst("^" + ScheduleRows.HOME + "\\.", home + ".")
                        .replaceFirst("^" + ScheduleRows.FAR + "\\.", far + "."),
                    cell));
    return new Row(cells, given.start());
  }

  /** A new thing has an id: that of its row, or one made from what it was looked for by. */
  private Row withId(Row row, String value) {
    Optional<Field> id =
        shape.fields().stream().filter(f -> f.identifies().isPresent()).findFirst();
    if (id.isEmpty() || row.has(id.get().key())) {
      return row;
    }
    SortedMap<String, Cell> cells = new TreeMap<>(row.cells());
    String made = value.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    cells.put(id.get().key(), new Cell(made.replaceAll("^-|-$", ""), row.at(match)));
    return new Row(cells, row.start());
  }

  private static Optional<String> scalar(MappingNode thing, String key) {
    String[] parts = key.split("\\.", 2);
    Optional<Node> value = ItemMerge.entry(thing, parts[0]).map(NodeTuple::getValueNode);
    if (parts.length == 2) {
      return value
          .filter(MappingNode.class::isInstance)
          .flatMap(v -> scalar((MappingNode) v, parts[1]));
    }
    return value
        .filter(ScalarNode.class::isInstance)
        .map(v -> ((ScalarNode) v).getValue().strip())
        .filter(v -> !v.isEmpty());
  }

  /** Nodes that are reached in more than one way, through aliases. */
  private static Set<Node> shared(Node root) {
    Set<Node> once = Collections.newSetFromMap(new IdentityHashMap<>());
    Set<Node> more = Collections.newSetFromMap(new IdentityHashMap<>());
    visit(root, once, more);
    return more;
  }

  private static void visit(Node node, Set<Node> once, Set<Node> more) {
    if (!once.add(node) && !more.add(node)) {
      return;
    }
    if (node instanceof MappingNode mapping) {
      mapping.getValue().forEach(t -> visit(t.getValueNode(), once, more));
    } else if (node instanceof SequenceNode sequence) {
      sequence.getValue().forEach(item -> visit(item, once, more));
    }
  }
}
