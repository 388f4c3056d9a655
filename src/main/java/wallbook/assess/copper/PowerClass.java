package wallbook.assess.copper;

import wallbook.quantity.Power;
import wallbook.quantity.Resistance;
import wallbook.quantity.Voltage;
import wallbook.reference.Row;
import wallbook.reference.Source;

/**
 * A class of power over Ethernet.
 *
 * @param number 1 to 8
 * @param pairs pairs that carry power: 2 or 4
 * @param source power that the source guarantees
 * @param device power that the device may take at the end of the longest channel
 * @param voltage least voltage of the source
 * @param greatestLoop loop resistance of the powered pairs of the longest channel
 */
record PowerClass(
    int number,
    int pairs,
    Power source,
    Power device,
    Voltage voltage,
    Resistance greatestLoop,
    Source citation) {

  static PowerClass of(Row row) {
    return new PowerClass(
        (int) row.number("class"),
        (int) row.number("pairs"),
        Power.watts(row.number("source_w")),
        Power.watts(row.number("device_w")),
        Voltage.volts(row.number("source_v")),
        Resistance.ohms(row.number("pair_set_ohm")),
        row.source());
  }

  /**
   * Loop resistance of the powered pairs from that of one pair. Each direction runs over both
   * conductors of a pair side by side, so that two pairs have half the loop of one pair, and four,
   * which are two such loops side by side, a quarter.
   */
  Resistance loopOf(Resistance onePair) {
    return onePair.times(1.0 / pairs);
  }

  /**
   * Power that must arrive: the published figure, or the little less that the formula leaves at the
   * longest channel, the published figures being rounded.
   */
  Power required() {
    Power atLongest =
        PowerOverPairs.fromSource(source, voltage, greatestLoop)
            .map(PowerOverPairs::atDevice)
            .orElse(device);
    return atLongest.compareTo(device) < 0 ? atLongest : device;
  }
}
