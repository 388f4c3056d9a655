package wallbook.assess.outlook;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.reference.Row;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * One means of fulfilling a wish, from the table {@code outlook-means}: either services that cables
 * in place must carry, or a cable to be pulled through a conduit.
 *
 * @param words the means in words
 * @param unless name of a means that goes before where it takes the same cable
 * @param onlyAtPlace whether it takes a place meant for the wish, or the one asked about
 * @param legs what each of the cables must carry, all at one place; empty if a cable is pulled
 * @param cables ids of cables that may be pulled, the better first
 * @param connector service of a connector that must pass the conduit; without cables, the cable
 *     comes finished with it
 * @param conditions what comes with the means, in words
 * @param notes what is to be said besides, in words
 */
record Means(
    String wish,
    String name,
    Phrase words,
    int rank,
    Optional<String> unless,
    Reach reach,
    boolean onlyAtPlace,
    List<Need> legs,
    List<String> cables,
    Optional<String> connector,
    List<Phrase> conditions,
    List<Phrase> notes) {

  /** Where the other end must be. */
  enum Reach {
    /** Where cables come home. */
    HEAD,
    /** Anywhere. */
    ANY,
    /** The way joins the service entrance to where cables come home. */
    ENTRANCE
  }

  /**
   * What one cable must carry.
   *
   * @param services all of these; of each the names that do, the better first
   */
  record Need(List<List<String>> services) {
    Need {
      services = services.stream().map(List::copyOf).toList();
    }
  }

  Means {
    legs = List.copyOf(legs);
    cables = List.copyOf(cables);
    conditions = List.copyOf(conditions);
    notes = List.copyOf(notes);
  }

  /** Whether a cable must be pulled. */
  boolean byConduit() {
    return legs.isEmpty();
  }

  /** The services that its cables may carry, alternatives too. */
  Stream<String> services() {
    return legs.stream().flatMap(need -> need.services().stream()).flatMap(List::stream);
  }

  static List<Means> all(Tables tables) {
    return tables.table("outlook-means").rows().stream().map(Means::of).toList();
  }

  private static Means of(Row row) {
    return new Means(
        row.text("wish"),
        row.text("means"),
        Phrase.of("outlook.means." + row.text("wish") + "." + row.text("means")),
        (int) row.number("rank"),
        row.textIfAny("unless"),
        Reach.valueOf(row.text("reach").toUpperCase(Locale.ROOT)),
        row.text("at").equals("place"),
        parts(row.text("legs"), ";").map(Means::need).toList(),
        parts(row.text("cables"), " ").toList(),
        row.textIfAny("connector"),
        parts(row.text("conditions"), " ")
            .map(key -> Phrase.of("outlook.condition." + key))
            .toList(),
        parts(row.text("notes"), " ").map(key -> Phrase.of("outlook.note." + key)).toList());
  }

  private static Need need(String leg) {
    return new Need(parts(leg, " ").map(service -> parts(service, "\\|").toList()).toList());
  }

  private static Stream<String> parts(String text, String separator) {
    return Stream.of(text.split(separator)).map(String::strip).filter(part -> !part.isEmpty());
  }
}
