package wallbook.assess.coax;

import java.util.List;
import java.util.stream.Stream;
import wallbook.quantity.Frequency;
import wallbook.quantity.Resistance;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * A band of frequencies of one use of coaxial cable.
 *
 * @param impedance that the use's equipment is made for
 * @param tilt whether the difference of loss over the band is reported
 * @param split whether the use is fed through splitters
 * @param level whether a cable modem's receive level bears on it
 * @param notes last part of the keys of what is to be said with it
 */
record CoaxBand(
    String use,
    String band,
    Resistance impedance,
    Frequency from,
    Frequency to,
    boolean tilt,
    boolean split,
    boolean level,
    List<String> notes,
    Source source) {

  /** The bands of the reference table, in its order. */
  static List<CoaxBand> all(Tables tables) {
    return tables.table("coax-bands").rows().stream().map(CoaxBand::of).toList();
  }

  /** Name of the band for topics, for instance {@code cable-tv.forward}. */
  String topic() {
    return use + "." + band;
  }

  /** A question about this band, by the key of its words. */
  Phrase asked(String key) {
    return Phrase.of(key, "use", Phrase.of("coax.use." + topic()), "from", from, "to", to);
  }

  private static CoaxBand of(Row row) {
    return new CoaxBand(
        row.text("use"),
        row.text("band"),
        Resistance.ohms(row.number("impedance_ohm")),
        Frequency.megahertz(row.number("from_mhz")),
        Frequency.megahertz(row.number("to_mhz")),
        row.yes("tilt"),
        row.yes("split"),
        row.yes("level"),
        row.textIfAny("notes").stream().flatMap(n -> Stream.of(n.split(" "))).toList(),
        row.source());
  }
}
