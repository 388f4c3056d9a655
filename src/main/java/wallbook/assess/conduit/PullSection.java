package wallbook.assess.conduit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.quantity.Angle;
import wallbook.quantity.Diameter;
import wallbook.quantity.Length;
import wallbook.record.PathPiece;
import wallbook.wording.Phrase;

/**
 * Conduit from one pull point to the next: between the ends and the pull boxes of a recorded path.
 *
 * @param number of the section from the conduit's from-end, from 1
 * @param pieces straights and bends in order from the from-end
 */
record PullSection(int number, List<PathPiece> pieces) {
  PullSection {
    pieces = List.copyOf(pieces);
  }

  /** The sections of a path; none if the path isn't recorded. */
  static List<PullSection> of(List<PathPiece> path) {
    List<PullSection> sections = new ArrayList<>();
    List<PathPiece> open = new ArrayList<>();
    for (PathPiece piece : path) {
      if (piece.pullBox().isPresent()) {
        close(open, sections);
      } else {
        open.add(piece);
      }
    }
    close(open, sections);
    return sections;
  }

  private static void close(List<PathPiece> open, List<PullSection> sections) {
    if (!open.isEmpty()) {
      sections.add(new PullSection(sections.size() + 1, open));
      open.clear();
    }
  }

  /** All bends together; offsets and kicks count as the bends they are. */
  Angle totalBend() {
    return pieces.stream()
        .flatMap(piece -> piece.bend().stream())
        .reduce(Angle.radians(0), Angle::plus);
  }

  boolean isStraight() {
    return pieces.stream().allMatch(piece -> piece.bend().isEmpty());
  }

  /** The largest single bend. */
  Angle largestBend() {
    return pieces.stream()
        .flatMap(piece -> piece.bend().stream())
        .max(Angle::compareTo)
        .orElse(Angle.radians(0));
  }

  /** Which section this is, of so many. */
  Phrase words(int sections) {
    return sections == 1
        ? Phrase.of("conduit.section.whole")
        : Phrase.of("conduit.section.numbered", "number", number, "of", sections);
  }

  /** The straights, and the bends of known radius along their centre line. */
  Length length() {
    return pieces.stream().map(PullSection::lengthOf).reduce(Length.metres(0), Length::plus);
  }

  /** The straights alone. */
  Length straights() {
    return pieces.stream()
        .flatMap(piece -> piece.straight().stream())
        .reduce(Length.metres(0), Length::plus);
  }

  static Length lengthOf(PathPiece piece) {
    Length arc =
        piece
            .bend()
            .flatMap(bend -> piece.radius().map(radius -> radius.times(bend.inRadians())))
            .orElse(Length.metres(0));
    return piece.straight().orElse(arc);
  }

  /**
   * The section as a cable meets it.
   *
   * @param bore where known; the inside of a bend lies half of it inside the centre line
   */
  List<PullPiece> pullPieces(Optional<Diameter> bore) {
    return pieces.stream().map(piece -> pullPiece(piece, bore)).toList();
  }

  private static PullPiece pullPiece(PathPiece piece, Optional<Diameter> bore) {
    if (piece.straight().isPresent()) {
      return new PullPiece.Straight(piece.straight().get(), piece.rise().orElse(Angle.radians(0)));
    }
    return new PullPiece.Bend(
        piece.bend().orElseThrow(),
        piece
            .radius()
            .flatMap(radius -> bore.map(b -> insideRadius(radius, b)))
            .filter(radius -> radius.inMetres() > 0));
  }

  /** Inside radius of a bend: its centre-line radius less half the bore. */
  static Length insideRadius(Length centreLine, Diameter bore) {
    return centreLine.minus(bore.asLength().times(0.5));
  }
}
