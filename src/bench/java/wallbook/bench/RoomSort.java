package wallbook.bench;

import static wallbook.bench.PlacePlan.ceiling;
import static wallbook.bench.PlacePlan.device;
import static wallbook.bench.PlacePlan.plate;
import static wallbook.bench.PlacePlan.shade;
import static wallbook.bench.RunSort.ACCESS_POINT;
import static wallbook.bench.RunSort.CONTACT;
import static wallbook.bench.RunSort.DARK_FIBRE;
import static wallbook.bench.RunSort.DATA;
import static wallbook.bench.RunSort.KEYPAD;
import static wallbook.bench.RunSort.LIT_FIBRE;
import static wallbook.bench.RunSort.MUSIC;
import static wallbook.bench.RunSort.OFF_AIR;
import static wallbook.bench.RunSort.SPARE_DATA;
import static wallbook.bench.RunSort.TELEVISION;
import static wallbook.bench.RunSort.VOICE;

import java.util.List;

/** The sorts of room that an invented storey has, with the provision of each. */
enum RoomSort {
  LIVING(
      "Living room",
      "living",
      List.of(
          plate("Television", "television", "A", 3, 1.5, TELEVISION, DATA, OFF_AIR, DARK_FIBRE),
          plate("Data plate", "data", "C", 1.5, 0.45, DATA, SPARE_DATA),
          ceiling("Access point", "access_point", 2.5, ACCESS_POINT, DARK_FIBRE),
          ceiling("House music, left", "speaker", 1.5, MUSIC),
          ceiling("House music, right", "speaker", 3.5, MUSIC),
          shade(),
          device("Keypad", "keypad", "A", 0.7, 1.4, KEYPAD),
          device("Contact at the window", "contact", PlacePlan.OUTER, 2.6, 2.3, CONTACT))),
  BEDROOM(
      "Bedroom",
      "bedroom",
      List.of(
          plate("Television", "television", "A", 3, 1.5, TELEVISION, DATA, OFF_AIR),
          plate("Data plate", "data", "C", 1.5, 0.45, DATA, SPARE_DATA),
          ceiling("House music, left", "speaker", 1.5, MUSIC),
          ceiling("House music, right", "speaker", 3.5, MUSIC),
          shade(),
          device("Contact at the window", "contact", PlacePlan.OUTER, 2.6, 2.3, CONTACT))),
  STUDY(
      "Study",
      "study",
      List.of(
          plate("Desk", "data", "A", 3, 0.45, DATA, DATA, SPARE_DATA, LIT_FIBRE),
          plate("Printer", "data", "C", 1.5, 0.45, DATA),
          ceiling("Access point", "access_point", 2.5, ACCESS_POINT),
          shade(),
          device("Contact at the window", "contact", PlacePlan.OUTER, 2.6, 2.3, CONTACT))),
  KITCHEN(
      "Kitchen",
      "kitchen",
      List.of(
          plate("Television", "television", "A", 3, 1.6, TELEVISION, OFF_AIR),
          plate("Data plate", "data", "C", 1.5, 1.1, DATA, SPARE_DATA),
          plate("Voice point", "voice_point", "C", 3.2, 1.4, VOICE),
          ceiling("House music, left", "speaker", 1.5, MUSIC),
          ceiling("House music, right", "speaker", 3.5, MUSIC),
          device("Contact at the window", "contact", PlacePlan.OUTER, 2.6, 2.3, CONTACT))),
  MEDIA(
      "Media room",
      "media_room",
      List.of(
          plate("Screen", "television", "A", 3, 1.2, DATA, DATA, TELEVISION, OFF_AIR, LIT_FIBRE),
          plate("Equipment plate", "data", "C", 1.5, 0.45, DATA, SPARE_DATA),
          ceiling("Surround, left", "speaker", 1.5, MUSIC),
          ceiling("Surround, right", "speaker", 3.5, MUSIC),
          shade()));

  private final String title;
  private final String kind;
  private final List<PlacePlan> places;

  RoomSort(String title, String kind, List<PlacePlan> places) {
    this.title = title;
    this.kind = kind;
    this.places = places;
  }

  String title() {
    return title;
  }

  /** Word of the record. */
  String kind() {
    return kind;
  }

  List<PlacePlan> places() {
    return places;
  }
}
