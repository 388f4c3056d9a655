package wallbook.assess.location;

import java.util.Optional;
import wallbook.quantity.TapedLength;
import wallbook.wording.Phrase;

/** Words for somebody who has to find a buried place again with tapes. */
final class TapeInstruction {
  private TapeInstruction() {}

  /** Swing the two ties that cross best, on the side said; a third tie checks. */
  static Phrase of(TiedPoint.Found found) {
    CornerTie first = found.best().get(0);
    CornerTie second = found.best().get(1);
    Phrase side = Phrase.of(found.onLeft() ? "location.side.left" : "location.side.right");
    Optional<CornerTie> check =
        found.ties().stream().filter(tie -> !found.best().contains(tie)).findFirst();
    return check
        .map(
            third ->
                Phrase.of(
                    "location.tape.three",
                    "first",
                    TapedLength.of(first.distance()),
                    "firstCorner",
                    first.corner(),
                    "second",
                    TapedLength.of(second.distance()),
                    "secondCorner",
                    second.corner(),
                    "side",
                    side,
                    "third",
                    TapedLength.of(third.distance()),
                    "thirdCorner",
                    third.corner()))
        .orElseGet(
            () ->
                Phrase.of(
                    "location.tape.two",
                    "first",
                    TapedLength.of(first.distance()),
                    "firstCorner",
                    first.corner(),
                    "second",
                    TapedLength.of(second.distance()),
                    "secondCorner",
                    second.corner(),
                    "side",
                    side));
  }
}
