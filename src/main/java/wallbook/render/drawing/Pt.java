package wallbook.render.drawing;

/** A point or a direction on the sheet in millimetres: {@code x} to the right, {@code y} down. */
record Pt(double x, double y) {
  Pt plus(Pt other) {
    return new Pt(x + other.x, y + other.y);
  }

  Pt minus(Pt other) {
    return new Pt(x - other.x, y - other.y);
  }

  Pt times(double factor) {
    return new Pt(x * factor, y * factor);
  }

  double length() {
    return Math.hypot(x, y);
  }

  /** The direction of this vector; to the right for a vector without length. */
  Pt unit() {
    double length = length();
    return length == 0 ? new Pt(1, 0) : times(1 / length);
  }

  Pt toward(Pt other, double share) {
    return new Pt(x + share * (other.x - x), y + share * (other.y - y));
  }
}
