package wallbook.assess.conduit;

import java.util.Optional;
import wallbook.quantity.Angle;
import wallbook.quantity.Length;

/** A piece of conduit as a cable meets it on its way from the feeding to the pulling end. */
public sealed interface PullPiece {

  /**
   * A straight length.
   *
   * @param rise slope in the direction of the pull, upward positive
   */
  record Straight(Length length, Angle rise) implements PullPiece {
    /** A level straight length. */
    public static Straight level(Length length) {
      return new Straight(length, Angle.radians(0));
    }

    @Override
    public Straight reversed() {
      return new Straight(length, rise.times(-1));
    }
  }

  /**
   * A bend.
   *
   * @param insideRadius radius of the inside of the bend, where known
   */
  record Bend(Angle angle, Optional<Length> insideRadius) implements PullPiece {
    @Override
    public Bend reversed() {
      return this;
    }
  }

  /** The same piece met from its other end. */
  PullPiece reversed();
}
