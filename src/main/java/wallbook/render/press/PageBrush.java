package wallbook.render.press;

import java.util.Arrays;
import wallbook.render.Face;
import wallbook.render.Fonts;
import wallbook.render.Painting;
import wallbook.render.Typeface;

/** Paints a drawing on a page. */
final class PageBrush implements Painting.Brush {
  /** Control points of a quarter of a circle by one curve, as a share of the radius. */
  private static final double QUARTER = 0.5522847498;

  private final Sheet sheet;
  private final Pen pen;
  private final float left;
  private final float top;
  private final float scale;
  private String paint = "";
  private double line = -1;
  private int lineColour = -2;
  private double[] dashes = {};

  /**
   * @param left of the drawing on the page, in points
   * @param scale points that a millimetre of the drawing takes
   */
  PageBrush(Sheet sheet, float left, float top, float scale) {
    this.sheet = sheet;
    this.pen = sheet.pen();
    this.left = left;
    this.top = top;
    this.scale = scale;
    pen.text("1 j\n");
  }

  private float x(double millimetres) {
    return left + (float) millimetres * scale;
  }

  private float y(double millimetres) {
    return sheet.up(top + (float) millimetres * scale);
  }

  @Override
  public void ink(double lineMm, int colour, int fill, double... dashesMm) {
    boolean drawn = lineMm > 0 && colour != NONE;
    paint = drawn ? (fill == NONE ? "S" : "B") : (fill == NONE ? "n" : "f");
    pen.endText();
    if (drawn) {
      stroke(lineMm, colour, dashesMm);
    }
    if (fill != NONE) {
      pen.colour(fill);
    }
  }

  private void stroke(double lineMm, int colour, double... dashesMm) {
    if (lineMm != line) {
      pen.number((float) lineMm * scale);
      pen.text("w\n");
      line = lineMm;
    }
    if (colour != lineColour) {
      pen.components(colour);
      pen.text("RG\n");
      lineColour = colour;
    }
    if (!Arrays.equals(dashesMm, dashes)) {
      pen.text("[");
      for (double dash : dashesMm) {
        pen.number((float) dash * scale);
      }
      pen.text("] 0 d\n");
      dashes = dashesMm;
    }
  }

  @Override
  public void path(boolean closed, double... points) {
    for (int i = 0; i + 1 < points.length; i += 2) {
      pen.numbers(x(points[i]), y(points[i + 1]));
      pen.text(i == 0 ? "m\n" : "l\n");
    }
    pen.text(closed ? "h " : "");
    pen.text(paint + "\n");
  }

  @Override
  public void oval(double x, double y, double radiusX, double radiusY, double turnDeg) {
    double sine = StrictMath.sin(Math.toRadians(turnDeg));
    double cosine = StrictMath.cos(Math.toRadians(turnDeg));
    double[][] corners = {
      {1, 0},
      {1, QUARTER},
      {QUARTER, 1},
      {0, 1},
      {-QUARTER, 1},
      {-1, QUARTER},
      {-1, 0},
      {-1, -QUARTER},
      {-QUARTER, -1},
      {0, -1},
      {QUARTER, -1},
      {1, -QUARTER},
      {1, 0}
    };
    for (int i = 0; i < corners.length; i++) {
      double along = corners[i][0] * radiusX;
      double across = corners[i][1] * radiusY;
      pen.numbers(x(x + along * cosine - across * sine), y(y + along * sine + across * cosine));
      pen.text(i == 0 ? "m\n" : i % 3 == 0 ? "c\n" : "");
    }
    pen.text("h " + paint + "\n");
  }

  @Override
  public void words(String text, Face face, double sizePt, double x, double y, double turnDeg) {
    float size = (float) sizePt * scale / Values.PT_PER_MM;
    Typeface typeface = Fonts.typeface(face);
    Typecase typecase = sheet.book().typecase();
    if (turnDeg == 0) {
      pen.beginGlyphs(x(x), y(y), typecase.number(face), size, 0, 0);
    } else {
      double turn = Math.toRadians(-turnDeg);
      pen.beginTurnedGlyphs(
          x(x),
          y(y),
          (float) StrictMath.sin(turn),
          (float) StrictMath.cos(turn),
          typecase.number(face),
          size,
          0);
    }
    text.codePoints().forEach(character -> pen.glyph(typecase.glyph(face, typeface, character)));
    pen.endGlyphs();
    pen.endText();
  }
}
