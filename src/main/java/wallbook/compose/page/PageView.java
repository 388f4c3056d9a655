package wallbook.compose.page;

import java.util.List;
import java.util.Optional;
import wallbook.compose.CautionView;
import wallbook.compose.drawing.Drawing;

/**
 * The offline page.
 *
 * @param example a label as somebody may type it, and as it stands, if there is a cable
 * @param copy whose copy it is: the owner's, one that keeps something back, or neither
 * @param floors storeys from below
 * @param rooms spaces by floor from below
 * @param runs cables by label
 * @param services what some cable could carry
 * @param contacts whom to call, the owner left out
 * @param photosLeftOut photographs that the page has no room for
 * @param notes statements that results refer to by number
 * @param entries what is searched
 */
public record PageView(
    String title,
    Optional<String> address,
    Optional<Example> example,
    Copy copy,
    List<FloorView> floors,
    Optional<Drawing> grounds,
    List<RoomCard> rooms,
    List<RunCard> runs,
    List<HeadCard> heads,
    List<ConduitCard> conduits,
    List<SystemCard> systems,
    List<ServiceCard> services,
    List<PartyView> contacts,
    Optional<String> jurisdiction,
    List<String> codes,
    List<AnchoredCaution> cautions,
    Optional<Drawing> symbols,
    Optional<String> photosLeftOut,
    List<NoteView> notes,
    List<Entry> entries) {
  public PageView {
    floors = List.copyOf(floors);
    rooms = List.copyOf(rooms);
    runs = List.copyOf(runs);
    heads = List.copyOf(heads);
    conduits = List.copyOf(conduits);
    systems = List.copyOf(systems);
    services = List.copyOf(services);
    contacts = List.copyOf(contacts);
    codes = List.copyOf(codes);
    cautions = List.copyOf(cautions);
    notes = List.copyOf(notes);
    entries = List.copyOf(entries);
  }

  /** A label as somebody may type it, and as it stands. */
  public record Example(String typed, String label) {}

  /** What the page says of itself at its head. */
  public enum Copy {
    /** Tells everything, the security system too. */
    OWNERS,
    /** Keeps the security system back. */
    REDUCED,
    /** The house has nothing that would be kept back. */
    PLAIN
  }

  /**
   * A storey.
   *
   * @param plan its rooms, if there are several with an outline
   */
  public record FloorView(String name, Optional<Drawing> plan, List<Link> rooms) {
    public FloorView {
      rooms = List.copyOf(rooms);
    }
  }

  /** A system of the house, what works and what was left for later. */
  public record SystemCard(
      String anchor,
      String name,
      String kind,
      Optional<String> works,
      Optional<String> later,
      Optional<String> demonstrated,
      Optional<String> note,
      List<CableState> cables) {
    public SystemCard {
      cables = List.copyOf(cables);
    }
  }

  /**
   * A service and the cables that could carry it.
   *
   * @param wishes what owners wish for that it helps towards
   */
  public record ServiceCard(
      String anchor, String name, List<String> wishes, List<Carrier> waiting, List<Carrier> busy) {
    public ServiceCard {
      wishes = List.copyOf(wishes);
      waiting = List.copyOf(waiting);
      busy = List.copyOf(busy);
    }
  }

  /** A cable that could carry a service, with the margin it would have. */
  public record Carrier(Link run, Sign verdict, Optional<String> margin) {}

  /** A cable with its state. */
  public record CableState(Link run, Sign state) {}

  /**
   * Somebody to call.
   *
   * @param dial what a telephone dials: the digits of the number, with its plus sign if it has one
   */
  public record PartyView(
      String role,
      String name,
      Optional<String> phone,
      Optional<String> dial,
      Optional<String> email) {}

  /** A caution that parts of the page refer to. */
  public record AnchoredCaution(String anchor, CautionView caution) {}
}
