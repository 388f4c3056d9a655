package wallbook.assess.speaker;

import java.util.OptionalDouble;
import wallbook.quantity.Decibels;
import wallbook.quantity.Quantity;
import wallbook.quantity.Ratio;
import wallbook.quantity.Resistance;
import wallbook.reference.Row;
import wallbook.reference.Source;

/** One of the limits a speaker line is judged by: a share of the load, or a loss of level. */
sealed interface LossLimit {

  /** Name in topics: {@code 5-percent}, {@code half-db}. */
  String name();

  /** Question in topics and words: {@code share} or {@code loss}. */
  String question();

  /** The limit itself. */
  Quantity permitted();

  /** What a line comes to, in the kind of the limit. */
  Quantity of(SpeakerLine line);

  /** How far a line is from the limit, positive within. */
  Quantity left(SpeakerLine line);

  /** Largest loop that keeps within the limit. */
  Resistance largestLoop(Resistance load);

  /** Whether stub-outs are measured by it. */
  boolean forExtension();

  Source source();

  /** The limit of a row of the reference table {@code speaker-loss-limits}. */
  static LossLimit of(Row row) {
    OptionalDouble share = row.numberIfAny("share_of_load_percent");
    String name = row.text("limit");
    boolean forExtension = row.yes("for_extension");
    return share.isPresent()
        ? new ShareLimit(name, Ratio.percent(share.getAsDouble()), forExtension, row.source())
        : new LevelLimit(
            name, Decibels.decibels(row.number("loss_db")), forExtension, row.source());
  }

  /** A limit on the loop as a share of the load. */
  record ShareLimit(String name, Ratio permitted, boolean forExtension, Source source)
      implements LossLimit {
    @Override
    public String question() {
      return "share";
    }

    @Override
    public Quantity of(SpeakerLine line) {
      return line.shareOfLoad();
    }

    @Override
    public Quantity left(SpeakerLine line) {
      return permitted.minus(line.shareOfLoad());
    }

    @Override
    public Resistance largestLoop(Resistance load) {
      return SpeakerLine.largestLoop(load, permitted);
    }
  }

  /** A limit on the level lost. */
  record LevelLimit(String name, Decibels permitted, boolean forExtension, Source source)
      implements LossLimit {
    @Override
    public String question() {
      return "loss";
    }

    @Override
    public Quantity of(SpeakerLine line) {
      return line.loss();
    }

    @Override
    public Quantity left(SpeakerLine line) {
      return permitted.minus(line.loss());
    }

    @Override
    public Resistance largestLoop(Resistance load) {
      return SpeakerLine.largestLoop(load, permitted);
    }
  }
}
