package wallbook.compose;

import java.util.List;
import java.util.Locale;
import wallbook.wording.Wording;

/** The usual cautions; each document carries those of the work it describes. */
public enum Caution {
  REPORT_ONLY,
  MAINS,
  OPENING_BOXES,
  SEPARATION,
  DIGGING,
  CLASS_2,
  POE,
  ANTENNAS,
  FIBRE_LIGHT,
  FIBRE_SHARDS,
  ATTICS,
  OLD_WALLS,
  DRILLING,
  STRUCTURE,
  FIRESTOP,
  JACKETS,
  LIFE_SAFETY,
  CONDUITS,
  PRIVACY,
  DEAD_CABLE;

  /** The cautions of the given topics in a reader's words. */
  public static List<CautionView> say(List<Caution> topics, Wording wording) {
    return topics.stream()
        .map(
            c -> {
              String key = "caution." + c.name().toLowerCase(Locale.ROOT).replace('_', '-');
              return new CautionView(wording.say(key + ".heading"), wording.say(key + ".text"));
            })
        .toList();
  }
}
