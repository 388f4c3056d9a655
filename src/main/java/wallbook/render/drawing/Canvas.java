package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.compose.drawing.SymbolKind;
import wallbook.compose.drawing.Target;

/** Collects the items of a scene while it is laid out. */
final class Canvas {
  /** What a symbol is enlarged by, all around, for a finger. */
  private static final double FINGER_MM = 1;

  private final List<Item> items = new ArrayList<>();
  private final List<Scene.Label> labels = new ArrayList<>();
  private final List<Box> symbols = new ArrayList<>();
  private final List<Seg> leaders = new ArrayList<>();
  private final List<Scene.Touch> touches = new ArrayList<>();

  void line(Ink ink, Pt... points) {
    items.add(new Item.Path(List.of(points), false, ink));
  }

  void line(Ink ink, List<Pt> points) {
    items.add(new Item.Path(points, false, ink));
  }

  void polygon(Ink ink, List<Pt> points) {
    items.add(new Item.Path(points, true, ink));
  }

  void box(Ink ink, Box box) {
    polygon(ink, box.corners());
  }

  void circle(Ink ink, Pt centre, double radius) {
    items.add(new Item.Oval(centre, radius, radius, 0, ink));
  }

  void oval(Ink ink, Pt centre, double radiusX, double radiusY, double turnDeg) {
    items.add(new Item.Oval(centre, radiusX, radiusY, turnDeg, ink));
  }

  /** Text that needs no rectangle of its own, such as a letter inside a symbol. */
  void plainWords(Item.Words words) {
    items.add(words);
  }

  /** One line of text and its rectangle. */
  Box words(Item.Words words) {
    items.add(words);
    Box box = words.bounds();
    labels.add(new Scene.Label(box, List.of(words.text())));
    return box;
  }

  Box words(Pt at, String text, Item.Type type, Item.Align align) {
    return words(new Item.Words(at, PlainText.clean(text), type, align, 0));
  }

  /** A block of text whose box was placed before. */
  void block(TextBlock block, Box box, Item.Align align) {
    items.addAll(block.at(box, align));
    labels.add(new Scene.Label(box, block.lines()));
  }

  void leader(Seg seg) {
    line(Ink.THIN, seg.a(), seg.b());
    leaders.add(seg);
  }

  void symbol(SymbolKind kind, Pt centre) {
    items.addAll(Symbols.of(kind, centre));
    symbols.add(Symbols.box(centre));
  }

  /** A touch of the symbol or its label leads to the target, if there is one. */
  void touch(Optional<Target> target, Box symbol, Box label) {
    target.ifPresent(
        t ->
            touches.add(
                new Scene.Touch(t, List.of(symbol.grown(FINGER_MM).corners(), label.corners()))));
  }

  /** A touch of the area leads to the target, if there is one. */
  void touch(Optional<Target> target, List<Pt> area) {
    target.ifPresent(t -> touches.add(new Scene.Touch(t, List.of(area))));
  }

  void addAll(Canvas other) {
    items.addAll(other.items);
    labels.addAll(other.labels);
    symbols.addAll(other.symbols);
    leaders.addAll(other.leaders);
    touches.addAll(other.touches);
  }

  /** Moves everything drawn so far. */
  void shift(double dx, double dy) {
    Pt by = new Pt(dx, dy);
    items.replaceAll(item -> moved(item, by));
    labels.replaceAll(label -> new Scene.Label(moved(label.box(), by), label.lines()));
    symbols.replaceAll(box -> moved(box, by));
    leaders.replaceAll(seg -> new Seg(seg.a().plus(by), seg.b().plus(by)));
    touches.replaceAll(
        touch ->
            new Scene.Touch(
                touch.target(),
                touch.areas().stream().map(a -> a.stream().map(by::plus).toList()).toList()));
  }

  /** The rectangles of all text so far. */
  List<Box> textBoxes() {
    return labels.stream().map(Scene.Label::box).toList();
  }

  /** Whether no text, symbol or leader touches a box. */
  boolean isClear(Box box) {
    return labels.stream().noneMatch(label -> label.box().overlaps(box))
        && symbols.stream().noneMatch(box::overlaps)
        && leaders.stream().noneMatch(box::isCrossedBy);
  }

  /** The rectangle around everything drawn so far. */
  Box extent() {
    return items.stream().map(Item::bounds).reduce(Box::union).orElse(new Box(0, 0, 0, 0));
  }

  Scene scene(double widthMm, double heightMm) {
    return new Scene(widthMm, heightMm, items, labels, symbols, leaders, touches);
  }

  private static Box moved(Box box, Pt by) {
    return new Box(
        box.left() + by.x(), box.top() + by.y(), box.right() + by.x(), box.bottom() + by.y());
  }

  private static Item moved(Item item, Pt by) {
    if (item instanceof Item.Path path) {
      return new Item.Path(
          path.points().stream().map(by::plus).toList(), path.closed(), path.ink());
    }
    if (item instanceof Item.Oval oval) {
      return new Item.Oval(
          oval.centre().plus(by), oval.radiusX(), oval.radiusY(), oval.turnDeg(), oval.ink());
    }
    Item.Words words = (Item.Words) item;
    return new Item.Words(
        words.at().plus(by), words.text(), words.type(), words.align(), words.turnDeg());
  }
}
