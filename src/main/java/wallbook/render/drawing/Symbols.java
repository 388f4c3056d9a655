package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.List;
import wallbook.compose.drawing.SymbolKind;

/**
 * The project's own symbols, built of plain geometry: the outer shape says where a thing is
 * (square: at a wall; circle: overhead; triangle: senses or radiates; diamond: belongs to a
 * pathway; hexagon: runs come home here), what is inside says which.
 */
final class Symbols {
  /** Every symbol fits a square of this side. */
  static final double SIZE_MM = 3.6;

  private static final double H = SIZE_MM / 2;

  private final Pt centre;
  private final List<Item> items = new ArrayList<>();

  private Symbols(Pt centre) {
    this.centre = centre;
  }

  static Box box(Pt centre) {
    return Box.around(centre, SIZE_MM, SIZE_MM);
  }

  static List<Item> of(SymbolKind kind, Pt centre) {
    Symbols drawn = new Symbols(centre);
    drawn.draw(kind);
    return List.copyOf(drawn.items);
  }

  private void draw(SymbolKind kind) {
    switch (kind) {
      case PLATE -> {
        square(Ink.Dash.SOLID);
        black(-0.45, -0.45, 0.45, -0.45, 0.45, 0.45, -0.45, 0.45);
      }
      case BLANK_PLATE -> square(Ink.Dash.SOLID);
      case TELEVISION -> {
        square(Ink.Dash.SOLID);
        line(-0.6, -0.35, 0.6, -0.35, 0.6, 0.35, -0.6, 0.35, -0.6, -0.35);
        line(-0.3, 0.65, 0.3, 0.65);
      }
      case TOUCH_PANEL -> {
        square(Ink.Dash.SOLID);
        line(-0.6, -0.6, 0.6, -0.6, 0.6, 0.6, -0.6, 0.6, -0.6, -0.6);
        dot(0, 0, 0.22);
      }
      case KEYPAD -> {
        square(Ink.Dash.SOLID);
        for (double x : new double[] {-0.4, 0.4}) {
          for (double y : new double[] {-0.4, 0.4}) {
            dot(x, y, 0.2);
          }
        }
      }
      case VOLUME_CONTROL -> {
        square(Ink.Dash.SOLID);
        ring(0, 0, 0.6);
        line(0, 0, 0.42, -0.42);
      }
      case WALL_SPEAKER -> {
        square(Ink.Dash.SOLID);
        for (double y : new double[] {-0.45, 0, 0.45}) {
          line(-0.6, y, 0.6, y);
        }
      }
      case SHADE -> {
        square(Ink.Dash.SOLID);
        black(-0.95, -0.95, 0.95, -0.95, 0.95, -0.35, -0.95, -0.35);
        line(0, -0.35, 0, 0.5);
      }
      case IN_WALL_COIL -> {
        square(Ink.Dash.SHORT);
        ring(0, 0, 0.65);
        ring(0, 0, 0.32);
      }
      case CEILING_SPEAKER -> {
        ring(0, 0, 0.95);
        dot(0, 0, 0.4);
      }
      case ACCESS_POINT -> {
        ring(0, 0, 0.95);
        halfDisc();
      }
      case PROJECTOR -> {
        ring(0, 0, 0.95);
        line(-0.5, -0.4, 0.5, -0.4, 0.5, 0.4, -0.5, 0.4, -0.5, -0.4);
      }
      case CAMERA -> {
        ring(0, 0, 0.95);
        black(-0.6, 0, 0.5, -0.6, 0.5, 0.6);
      }
      case CONTACT -> {
        triangle();
        line(-0.4, 0.42, 0.4, 0.42);
      }
      case SENSOR -> {
        triangle();
        dot(0, 0.35, 0.25);
      }
      case ANTENNA -> {
        triangle();
        line(0, -0.9, 0, 0.85);
      }
      case REPEATER -> {
        triangle();
        black(-0.45, 0.55, 0, -0.25, 0.45, 0.55);
      }
      case PULL_BOX -> {
        diamond();
        line(-0.5, -0.5, 0.5, 0.5);
        line(-0.5, 0.5, 0.5, -0.5);
      }
      case STUB_OUT -> {
        diamond();
        black(-1, 0, 1, 0, 0, 1);
      }
      case CONDUIT_END -> {
        diamond();
        ring(0, 0, 0.38);
      }
      case RACK -> {
        hexagon();
        for (double y : new double[] {-0.35, 0, 0.35}) {
          line(-0.5, y, 0.5, y);
        }
      }
      case PANEL -> {
        hexagon();
        dot(0, 0, 0.38);
      }
      case DEMARCATION -> {
        hexagon();
        black(0, -0.9, 0.95, -0.45, 0.95, 0.45, 0, 0.9);
      }
      case OTHER -> ring(0, 0, 0.6);
    }
  }

  private void square(Ink.Dash dash) {
    closed(
        Ink.SYMBOL.filled(Ink.Tone.WHITE).dashed(dash),
        -0.95,
        -0.95,
        0.95,
        -0.95,
        0.95,
        0.95,
        -0.95,
        0.95);
  }

  private void triangle() {
    closed(Ink.SYMBOL.filled(Ink.Tone.WHITE), 0, -0.95, 0.95, 0.85, -0.95, 0.85);
  }

  private void diamond() {
    closed(Ink.SYMBOL.filled(Ink.Tone.WHITE), 0, -1, 1, 0, 0, 1, -1, 0);
  }

  private void hexagon() {
    closed(
        Ink.SYMBOL.filled(Ink.Tone.WHITE),
        0,
        -0.95,
        0.95,
        -0.48,
        0.95,
        0.48,
        0,
        0.95,
        -0.95,
        0.48,
        -0.95,
        -0.48);
  }

  /** The lower half of the circle, filled, as a polygon fine enough to look round at this size. */
  private void halfDisc() {
    double[] xy = new double[2 * 19];
    for (int i = 0; i < 19; i++) {
      double angle = Math.PI * i / 18;
      xy[2 * i] = 0.95 * Math.cos(angle);
      xy[2 * i + 1] = 0.95 * Math.sin(angle);
    }
    black(xy);
  }

  private void ring(double x, double y, double radius) {
    items.add(oval(Ink.SYMBOL.filled(Ink.Tone.WHITE), x, y, radius));
  }

  private void dot(double x, double y, double radius) {
    items.add(oval(Ink.SOLID, x, y, radius));
  }

  private Item oval(Ink ink, double x, double y, double radius) {
    return new Item.Oval(at(x, y), radius * H, radius * H, 0, ink);
  }

  private void black(double... xy) {
    closed(Ink.SOLID, xy);
  }

  private void closed(Ink ink, double... xy) {
    items.add(new Item.Path(points(xy), true, ink));
  }

  private void line(double... xy) {
    items.add(new Item.Path(points(xy), false, Ink.SYMBOL));
  }

  private List<Pt> points(double... xy) {
    List<Pt> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(at(xy[i], xy[i + 1]));
    }
    return points;
  }

  private Pt at(double x, double y) {
    return new Pt(centre.x() + x * H, centre.y() + y * H);
  }
}
