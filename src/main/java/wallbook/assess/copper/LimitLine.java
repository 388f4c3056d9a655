package wallbook.assess.copper;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallbook.quantity.Decibels;
import wallbook.quantity.Frequency;
import wallbook.record.PairParameter;
import wallbook.reference.Source;

/** The limit of one measured quantity over frequency, for a category and a link or channel. */
public final class LimitLine {
  private final PairParameter parameter;
  private final List<Piece> pieces;

  /** A stretch of frequency with one formula; both ends belong to it. */
  record Piece(double fromMegahertz, double toMegahertz, LineShape shape, Source source) {}

  /** Pieces that leave no gap; where two meet, the lower one holds. */
  LimitLine(PairParameter parameter, List<Piece> pieces) {
    this.parameter = parameter;
    this.pieces = pieces.stream().sorted(Comparator.comparingDouble(Piece::fromMegahertz)).toList();
  }

  public PairParameter parameter() {
    return parameter;
  }

  /** The limit at a frequency; empty outside the range that the category is specified for. */
  public Optional<Limit> at(Frequency frequency) {
    double megahertz = frequency.inMegahertz();
    for (Piece piece : pieces) {
      if (piece.fromMegahertz() <= megahertz && megahertz <= piece.toMegahertz()) {
        Decibels value = Decibels.decibels(piece.shape().decibelsAt(megahertz));
        return Optional.of(new Limit(value, piece.source()));
      }
    }
    return Optional.empty();
  }

  /** Distance of a measured value to a limit of this line, positive on the good side. */
  public Decibels margin(Limit limit, Decibels measured) {
    return parameter == PairParameter.INSERTION_LOSS
        ? limit.value().minus(measured)
        : measured.minus(limit.value());
  }

  /** Lowest frequency that has a limit. */
  public Frequency bottom() {
    return Frequency.megahertz(pieces.get(0).fromMegahertz());
  }

  /** Highest frequency that has a limit. */
  public Frequency top() {
    return Frequency.megahertz(pieces.get(pieces.size() - 1).toMegahertz());
  }

  /** Source of the line: that of its pieces together, the weakest standing of them. */
  public Source source() {
    return pieces.stream().map(Piece::source).reduce(Source::and).orElseThrow();
  }
}
