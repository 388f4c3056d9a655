package wallbook.assess.conduit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Count;
import wallbook.quantity.Length;
import wallbook.record.PathPiece;
import wallbook.reference.Row;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** How many pull boxes a conduit lacks to keep to ANSI/TIA-569, and how large one has to be. */
final class PullBoxes {
  /** Keeps sums of recorded angles (degrees) and lengths (metres) on the good side of rounding. */
  static final double ROUNDING = 1e-6;

  private final Row limit;
  private final Table sizes;
  private final Bores bores;
  private final double tolerance;

  PullBoxes(Tables tables) {
    this.limit = tables.table("conduit-bend-limits").row("tia-569", "any");
    this.sizes = tables.table("pull-box-sizes");
    this.bores = new Bores(tables);
    this.tolerance = tables.table("pulling-practice").row("path-length-tolerance").number("value");
  }

  List<Assessment> about(ConduitCase conduit) {
    Assessment.Builder asked =
        Assessment.of(conduit.id(), "conduit.pull-boxes", Phrase.of("conduit.pull-boxes.asked"));
    if (conduit.sections().isEmpty()) {
      return List.of(asked.notStated(conduit.missingBends(), limit.source()));
    }
    int missing = conduit.sections().stream().mapToInt(this::missing).sum();
    incomplete(conduit).ifPresent(asked::assuming);
    List<Assessment> found = new ArrayList<>();
    found.add(
        asked
            .value(Count.of(missing))
            .limit(Count.of(0), Count.of(-missing))
            .limitedBy(Phrase.of("conduit.pull-boxes.rule"))
            .verdict(missing == 0 ? Verdict.WITHIN : Verdict.BEYOND, limit.source()));
    if (missing > 0) {
      size(conduit).ifPresent(found::add);
    }
    return found;
  }

  /**
   * Boxes that a section lacks: each set as far along as the limits of bends and length allow, in
   * straight parts only. A single bend beyond the limit is not mended by a box and counts as the
   * limit.
   */
  int missing(PullSection section) {
    double most = limit.number("total_deg");
    double longest = limit.number("length_m");
    int boxes = 0;
    double bentDeg = 0;
    double goneM = 0;
    for (PathPiece piece : section.pieces()) {
      double bend = Math.min(most, piece.bend().map(angle -> angle.inDegrees()).orElse(0.0));
      double metres = PullSection.lengthOf(piece).inMetres();
      if (bend > 0 && (bentDeg + bend > most + ROUNDING || goneM + metres > longest + ROUNDING)) {
        boxes++;
        bentDeg = 0;
        goneM = 0;
      }
      bentDeg += bend;
      goneM += metres;
      while (bend == 0 && goneM > longest + ROUNDING) {
        boxes++;
        bentDeg = 0;
        goneM -= longest;
      }
    }
    return boxes;
  }

  /** Says so where the recorded pieces add up to less than the recorded length. */
  Optional<Phrase> incomplete(ConduitCase conduit) {
    Length pieces =
        conduit.sections().stream().map(PullSection::length).reduce(Length.metres(0), Length::plus);
    return conduit
        .conduit()
        .length()
        .filter(length -> pieces.inMetres() < length.inMetres() * (1 - tolerance))
        .map(length -> Phrase.of("conduit.assume.incomplete", "pieces", pieces, "length", length));
  }

  private Optional<Assessment> size(ConduitCase conduit) {
    return bores
        .size(conduit.conduit().type(), conduit.conduit().tradeSize())
        .flatMap(sizes::find)
        .map(
            row ->
                Assessment.of(
                        conduit.id(),
                        "conduit.pull-box-size",
                        Phrase.of(
                            "conduit.pull-box-size.asked",
                            "width",
                            Length.inches(row.number("width_in")),
                            "depth",
                            Length.inches(row.number("depth_in")),
                            "extra",
                            Length.inches(row.number("extra_width_in"))))
                    .value(Length.inches(row.number("length_in")))
                    .verdict(Verdict.INFORMATION, row.source()));
  }
}
