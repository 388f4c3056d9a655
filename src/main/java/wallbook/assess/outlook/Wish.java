package wallbook.assess.outlook;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallbook.record.PlaceUse;
import wallbook.record.SpaceKind;
import wallbook.reference.Row;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Something an owner may wish for, from the table {@code outlook-wishes}.
 *
 * @param name stable name, as the command line takes it
 * @param ofHouse whether it is for the house as a whole instead of one space
 * @param realm spaces that may have it: indoors, outdoors or both
 * @param rooms kinds of space that may have it
 * @param uses what a place is meant for that it is natural at
 * @param unlessSound whether a space that an audio zone covers has it already
 * @param hasAlternative whether something without wire may do instead, which is not assessed
 */
public record Wish(
    String name,
    boolean ofHouse,
    Realm realm,
    Set<SpaceKind> rooms,
    Set<PlaceUse> uses,
    boolean unlessSound,
    boolean hasAlternative) {

  /** Indoors, outdoors or both. */
  public enum Realm {
    INDOOR,
    OUTDOOR,
    ANY;

    boolean has(SpaceKind kind) {
      return this == ANY || (this == OUTDOOR) == kind.isOutdoor();
    }
  }

  public Wish {
    rooms = Set.copyOf(rooms);
    uses = Set.copyOf(uses);
  }

  /** The wish in words. */
  public Phrase words() {
    return Phrase.of("outlook.wish." + name);
  }

  static List<Wish> all(Tables tables) {
    return tables.table("outlook-wishes").rows().stream().map(Wish::of).toList();
  }

  private static Wish of(Row row) {
    return new Wish(
        row.text("wish"),
        row.text("scope").equals("house"),
        Realm.valueOf(row.text("realm").toUpperCase(Locale.ROOT)),
        words(row, "rooms", SpaceKind::valueOf, SpaceKind.class),
        words(row, "uses", PlaceUse::valueOf, PlaceUse.class),
        row.text("unless").equals("sound"),
        row.yes("alternative"));
  }

  private static <E extends Enum<E>> Set<E> words(
      Row row, String column, Function<String, E> valueOf, Class<E> type) {
    return row.textIfAny(column).stream()
        .flatMap(text -> Stream.of(text.split(" ")))
        .map(word -> valueOf.apply(word.toUpperCase(Locale.ROOT)))
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(type)));
  }
}
