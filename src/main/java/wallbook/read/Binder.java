package wallbook.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Nearest;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;
import wallbook.quantity.Length;
import wallbook.quantity.Quantity;
import wallbook.record.Id;
import wallbook.record.Origin;
import wallbook.record.Point;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;
import wallbook.record.Shape.Presence;
import wallbook.wording.Phrase;

/**
 * Binds YAML nodes to record types by their {@link Shape}. Goes on after a mistake, so that one
 * pass finds them all; a record that misses something it must have is left out.
 */
final class Binder {
  private static final int LONGEST_FOUND = 80;
  private static final Pattern ID_FORM = Pattern.compile(Id.FORM);
  private static final Set<Tag> PLAIN_TAGS =
      Set.of(Tag.STR, Tag.INT, Tag.FLOAT, Tag.BOOL, Tag.NULL, Tag.TIMESTAMP, Tag.SEQ, Tag.MAP);

  private final Places places;
  private final Findings findings;
  private final IdRegister ids;
  private final Scalars scalars;

  Binder(Places places, Findings findings, IdRegister ids) {
    this.places = places;
    this.findings = findings;
    this.ids = ids;
    this.scalars = new Scalars(findings);
  }

  /** Looks at a record type and those in it, so that it is known by the time a node is bound. */
  static void prepare(Class<? extends Record> type) {
    for (Field field : Shape.of(type).fields()) {
      if (field.type().isRecord()) {
        prepare(field.type().asSubclass(Record.class));
      } else if (field.type().isEnum()) {
        Scalars.words(field.type());
      }
    }
  }

  /** The record that a node holds, or nothing after one finding or more. */
  <T extends Record> Optional<T> bind(Node node, Class<T> type) {
    return bind(node, type, Map.of());
  }

  /**
   * The same for a record of which some fields are bound already.
   *
   * @param ahead made by {@link #bindAlone} of the first value of each field
   */
  <T extends Record> Optional<T> bind(Node node, Class<T> type, Map<Field, Bound> ahead) {
    if (!(node instanceof MappingNode mapping)) {
      wrongShape(node, "expected.mapping");
      return Optional.empty();
    }
    checkTag(node);
    Shape shape = Shape.of(type);
    Node[] given = entries(mapping, shape);
    Positions positions = new Positions();
    List<Object> values = new ArrayList<>(given.length);
    boolean complete = checkOneOf(shape, given, node);
    for (Field field : shape.fields()) {
      Node value = given[field.index()];
      if (value != null) {
        positions.add(field.key(), places.of(value));
      }
      Bound early = ahead.get(field);
      if (early != null) {
        positions.addAll(early.positions);
      }
      Optional<?> bound = early == null ? bindField(field, value, node, positions) : early.value;
      complete &= bound.isPresent();
      values.add(bound.orElse(null));
    }
    if (!complete) {
      return Optional.empty();
    }
    Origin origin = new Origin(places.of(node), positions.keys, positions.places);
    return Optional.of(type.cast(shape.make(origin, values)));
  }

  /** Binds the value of one field of a record that is not there yet. */
  Bound bindAlone(Field field, Node value) {
    Positions positions = new Positions();
    return new Bound(bindField(field, value, value, positions), positions);
  }

  /**
   * A field bound by itself.
   *
   * @param positions where items of it stand
   */
  record Bound(Optional<?> value, Positions positions) {}

  /** Where the values of a thing stand, by their keys. */
  private static final class Positions {
    private final List<String> keys = new ArrayList<>();
    private final List<SourcePosition> places = new ArrayList<>();

    /** Of an item that was refused and the one after it, which takes its key, the latter counts. */
    void add(String key, SourcePosition place) {
      int last = keys.size() - 1;
      if (last >= 0 && keys.get(last).equals(key)) {
        places.set(last, place);
      } else {
        keys.add(key);
        places.add(place);
      }
    }

    void addAll(Positions others) {
      keys.addAll(others.keys);
      places.addAll(others.places);
    }
  }

  /** Text as shown in a finding: one line, not too long. */
  static String shortened(String text) {
    String line = text.replaceAll("\\s+", " ").strip();
    return line.length() <= LONGEST_FOUND ? line : line.substring(0, LONGEST_FOUND) + "…";
  }

  /** The value of each field that is given, by its index. */
  private Node[] entries(MappingNode mapping, Shape shape) {
    Node[] given = new Node[shape.fields().size()];
    int next = 0;
    for (NodeTuple tuple : mapping.getValue()) {
      Node keyNode = tuple.getKeyNode();
      String key = keyNode instanceof ScalarNode scalar ? scalar.getValue() : "";
      Optional<Field> field = shape.field(key, next);
      next = field.map(Field::index).orElse(next) + 1;
      if (field.isEmpty()) {
        findings.add(
            Finding.of(Severity.ERROR, "unknown-key", places.of(keyNode), "key", shortened(key))
                .found(shortened(key))
                .expecting(Phrase.of("expected.one-of", "choices", String.join(", ", shape.keys())))
                .nearest(Nearest.to(key, shape.keys())));
      } else if (given[field.get().index()] == null) {
        given[field.get().index()] = tuple.getValueNode();
      } else {
        findings.add(
            Finding.of(Severity.ERROR, "duplicate-key", places.of(keyNode), "key", key).found(key));
      }
    }
    return given;
  }

  private boolean checkOneOf(Shape shape, Node[] given, Node node) {
    if (shape.oneOf().isEmpty()) {
      return true;
    }
    List<String> present =
        shape.oneOf().stream()
            .filter(key -> !isAbsent(given[shape.field(key).orElseThrow().index()]))
            .toList();
    if (present.size() == 1) {
      return true;
    }
    findings.add(
        Finding.of(Severity.ERROR, "not-exactly-one", places.of(node))
            .found(present.isEmpty() ? "-" : String.join(", ", present))
            .expecting(
                Phrase.of("expected.exactly-one", "choices", String.join(", ", shape.oneOf()))));
    return false;
  }

  /** Whether a key has no value, or {@code ~}, which says the same. */
  private static boolean isAbsent(Node value) {
    return value == null || value.getTag().equals(Tag.NULL);
  }

  /** The value for the constructor (plain, optional or list), or nothing after a finding. */
  private Optional<?> bindField(Field field, Node value, Node owner, Positions positions) {
    boolean absent = isAbsent(value);
    if (field.presence() == Presence.LIST) {
      return Optional.of(absent ? List.of() : items(field, value, positions));
    }
    if (absent) {
      if (field.presence() == Presence.OPTIONAL) {
        return Optional.of(Optional.empty());
      }
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  "missing-key",
                  places.of(value == null ? owner : value),
                  "key",
                  field.key(),
                  "says",
                  field.says().value())
              .expecting(Phrase.of("expected.key", "key", field.key())));
      return Optional.empty();
    }
    Optional<?> bound = value(field, value);
    if (field.presence() == Presence.OPTIONAL && bound.isPresent()) {
      return Optional.of(bound);
    }
    return bound;
  }

  private List<Object> items(Field field, Node value, Positions positions) {
    if (!(value instanceof SequenceNode sequence)) {
      wrongShape(value, "expected.list");
      return List.of();
    }
    checkTag(value);
    List<Object> items = new ArrayList<>();
    for (Node item : sequence.getValue()) {
      if (!(item instanceof MappingNode)) {
        positions.add(field.key() + "/" + items.size(), places.of(item));
      }
      value(field, item).ifPresent(items::add);
    }
    return List.copyOf(items);
  }

  private Optional<?> value(Field field, Node node) {
    if (field.type() == Point.class) {
      return point(node);
    }
    if (field.type().isRecord() && !Quantity.class.isAssignableFrom(field.type())) {
      return bind(node, field.type().asSubclass(Record.class));
    }
    if (!(node instanceof ScalarNode scalar)) {
      wrongShape(node, "expected.value");
      return Optional.empty();
    }
    checkTag(node);
    SourcePosition at = places.of(node);
    Optional<?> bound = scalars.read(scalar.getValue(), field.type(), at);
    if (field.isName()) {
      bound.ifPresent(v -> registerIds(field, v.toString(), at));
    }
    return bound;
  }

  private void registerIds(Field field, String text, SourcePosition at) {
    if (field.hasIdForm() && !ID_FORM.matcher(text).matches()) {
      findings.add(
          Finding.of(Severity.ERROR, "malformed-id", at, "id", shortened(text))
              .found(shortened(text))
              .expecting(Phrase.of("expected.id-form", "longest", Id.LONGEST)));
    }
    field.identifies().ifPresent(kind -> ids.declare(kind, text, at));
    field.refersTo().ifPresent(kind -> ids.refer(kind, text, at));
  }

  private Optional<Point> point(Node node) {
    if (!(node instanceof SequenceNode sequence) || sequence.getValue().size() != 2) {
      wrongShape(node, "expected.point");
      return Optional.empty();
    }
    Optional<Length> x = coordinate(sequence.getValue().get(0));
    Optional<Length> y = coordinate(sequence.getValue().get(1));
    return x.flatMap(px -> y.map(py -> new Point(px, py)));
  }

  private Optional<Length> coordinate(Node node) {
    if (!(node instanceof ScalarNode scalar)) {
      wrongShape(node, "expected.value");
      return Optional.empty();
    }
    return scalars.read(scalar.getValue(), Length.class, places.of(node)).map(Length.class::cast);
  }

  private void wrongShape(Node node, String expected) {
    findings.add(
        Finding.of(Severity.ERROR, "wrong-shape", places.of(node))
            .found(
                switch (node.getNodeId()) {
                  case mapping -> "{…}";
                  case sequence -> "[…]";
                  default -> shortened(((ScalarNode) node).getValue());
                })
            .expecting(Phrase.of(expected)));
  }

  private void checkTag(Node node) {
    if (!PLAIN_TAGS.contains(node.getTag())) {
      findings.add(
          Finding.of(
                  Severity.ERROR, "foreign-tag", places.of(node), "tag", node.getTag().getValue())
              .found(node.getTag().getValue()));
    }
  }
}
