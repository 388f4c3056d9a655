package wallbook.assess.outlook;

import java.util.List;
import java.util.function.Function;
import wallbook.record.Word;

/** How much work a later use takes, the least first. */
public enum Effort implements Word {
  /** Equipment is plugged in at both ends. */
  PLUG_IN,
  /** Equipment is plugged in at a cable that serves something already. */
  SHARE,
  /** One or both ends must first be terminated. */
  FINISH_ENDS,
  /** A line must first be laid on from where the cable comes out. */
  EXTEND_LINE,
  /** A cable must first be pulled through a conduit. */
  PULL_CABLE,
  /** A conduit must first be proved, then a cable pulled. */
  PROVE_AND_PULL;

  /** The most work that one of several things takes, of which there is at least one. */
  static <T> Effort most(List<T> things, Function<T, Effort> effort) {
    Effort most = effort.apply(things.get(0));
    for (T thing : things) {
      Effort one = effort.apply(thing);
      most = one.compareTo(most) > 0 ? one : most;
    }
    return most;
  }
}
