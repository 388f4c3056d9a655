package wallbook.compose.manual;

import java.util.List;
import java.util.Optional;
import wallbook.compose.CautionView;
import wallbook.compose.ContactView;
import wallbook.compose.FactView;
import wallbook.compose.TermView;

/**
 * The homeowner's manual, ready to print: every text is in the reader's language and units.
 *
 * @param facts the house in a few figures
 * @param systems what the wiring serves, in the order of the record
 * @param label one label of the house explained; absent if nothing is labelled
 * @param heads where cables come home
 * @param rooms spaces that hold a place, by floor from below, in the order of the record
 * @param dark cables that wait, by room
 * @param dead cables that carry nothing
 * @param exceptions what is not as promised
 * @param stubOuts exterior ends
 * @param conduits conduits and chases
 * @param contacts whom to call
 */
public record ManualView(
    String title,
    Optional<String> address,
    Optional<String> handover,
    String revision,
    Optional<String> jurisdiction,
    List<String> codes,
    List<FactView> facts,
    List<SystemView> systems,
    Optional<LabelExample> label,
    List<HeadView> heads,
    List<RoomView> rooms,
    List<DarkView> dark,
    List<DeadView> dead,
    List<ExceptionView> exceptions,
    List<StubOutView> stubOuts,
    List<ConduitView> conduits,
    List<ContactView> contacts,
    List<CautionView> cautions,
    List<TermView> glossary) {

  /** What a system does today and what was left for later. */
  public record SystemView(
      String name,
      Optional<String> works,
      Optional<String> later,
      Optional<String> cables,
      Optional<String> demonstrated) {}

  /** A label of the house and what it says. */
  public record LabelExample(String label, String cable, String from, String to) {}

  /** Where cables come home. */
  public record HeadView(String name, String kind, String where, String cables) {}

  /** A space with its places. */
  public record RoomView(
      String name, String floor, String summary, List<PlaceView> places, Optional<String> note) {}

  /** A place with its cables; a place without any says what it is for. */
  public record PlaceView(
      String name,
      String kind,
      String where,
      Optional<String> plate,
      Optional<String> note,
      List<CableView> cables) {}

  /** A cable as seen from one of its ends. */
  public record CableView(
      String label, String cable, String otherEnd, String state, String tested) {}

  /** A dark cable and why it is dark. */
  public record DarkView(
      String label, String cable, String from, String to, String finish, String reason) {}

  /** A cable that carries nothing, why, and what stands in for it. */
  public record DeadView(
      String label, String cable, String from, String to, String why, String standsIn) {}

  /** Something that is not as promised. */
  public record ExceptionView(String what, String kind, String standsIn, String state) {}

  /** An exterior end. */
  public record StubOutView(
      String name, String where, String cover, String holds, String meantFor) {}

  /** A conduit in plain words. */
  public record ConduitView(
      String label, String name, String from, String to, String inside, String clear) {}
}
