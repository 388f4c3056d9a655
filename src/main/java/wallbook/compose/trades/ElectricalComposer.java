package wallbook.compose.trades;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wallbook.compose.Composition;
import wallbook.compose.disclosure.Part;
import wallbook.compose.trades.ElectricalView.Equipment;
import wallbook.compose.trades.ElectricalView.Supply;
import wallbook.record.Conduit;
import wallbook.record.Feed;
import wallbook.record.Head;
import wallbook.record.HeadKind;
import wallbook.record.PanelKind;
import wallbook.record.PartyRole;
import wallbook.record.Place;
import wallbook.record.PlaceUse;
import wallbook.record.Run;
import wallbook.record.StubOut;

/**
 * Composes the electrician's sheet: where low-voltage equipment stands, its supplies, bonding and
 * separation. It gives no advice on mains wiring.
 */
public final class ElectricalComposer {
  private static final Set<PlaceUse> PLUGGED_IN =
      EnumSet.of(PlaceUse.TELEVISION, PlaceUse.PROJECTOR, PlaceUse.SUBWOOFER);

  private static final Set<PlaceUse> ANTENNAS =
      EnumSet.of(PlaceUse.SATELLITE_ANTENNA, PlaceUse.OFF_AIR_ANTENNA, PlaceUse.CELLULAR_ANTENNA);

  private static final List<String> SUPPLY_QUESTIONS =
      List.of("dc.class-2", "dc.wet-contact", "dc.end-voltage", "dc.drop.10-percent");

  private final TradeSheet sheet;

  public ElectricalComposer(Composition composition) {
    this.sheet = new TradeSheet(composition);
  }

  /** The sheet. */
  public ElectricalView compose() {
    return new ElectricalView(
        sheet.head(Part.ELECTRICAL.toCall()),
        sheet.job.heads().stream()
            .filter(head -> !sheet.discretion.isPrivate(head))
            .map(this::head)
            .toList(),
        places(PLUGGED_IN),
        sheet.job.runs().stream()
            .filter(run -> run.feed().isPresent() && !sheet.discretion.isPrivate(run))
            .map(this::supply)
            .toList(),
        bonding(),
        sheet.job.conduits().stream().map(this::conduit).toList(),
        tasks(),
        sheet.assumed(),
        sheet.sources.list(sheet.wording));
  }

  private Equipment head(Head head) {
    return new Equipment(
        head.name(), where(head), sheet.discretion.tellable(head.note()).orElse(TradeSheet.NONE));
  }

  private String where(Head head) {
    return sheet.describe.where(head);
  }

  private List<Equipment> places(Set<PlaceUse> uses) {
    return sheet.job.places().stream()
        .filter(place -> uses.contains(place.use()))
        .map(this::place)
        .toList();
  }

  private Equipment place(Place place) {
    return new Equipment(
        place.name(),
        sheet.job.space(place.space()).name() + ", " + sheet.describe.where(place),
        sheet.discretion.tellable(place.note()).orElse(TradeSheet.NONE));
  }

  private Supply supply(Run run) {
    return new Supply(
        run.label(),
        sheet.discretion.tellable(run.serves()).orElse(TradeSheet.NONE),
        sheet.describe.shortEnd(run.from()),
        sheet.describe.shortEnd(run.to()),
        load(run.feed().orElseThrow()),
        sheet.lines(run.id(), SUPPLY_QUESTIONS));
  }

  private String load(Feed feed) {
    String load =
        feed.current()
            .map(sheet.wording::print)
            .or(() -> feed.power().map(sheet.wording::print))
            .orElseGet(sheet::notRecorded);
    return sheet.say("electrical.load", "voltage", feed.voltage(), "load", load);
  }

  /** Outdoor and roof antennas, and service entrances where coax comes in. */
  private List<Equipment> bonding() {
    List<Equipment> all = new ArrayList<>();
    for (Head head : sheet.job.heads()) {
      boolean coax = head.panels().stream().anyMatch(p -> p.kind() == PanelKind.COAX_PANEL);
      if (head.kind() == HeadKind.DEMARCATION && coax) {
        all.add(head(head));
      }
    }
    all.addAll(places(ANTENNAS));
    return all;
  }

  private String conduit(Conduit conduit) {
    return sheet.discretion.isTellable(conduit.name())
        ? sheet.say("electrical.conduit", "label", conduit.label(), "name", conduit.name())
        : conduit.label();
  }

  private List<String> tasks() {
    List<String> tasks = new ArrayList<>();
    for (StubOut stubOut : sheet.job.stubOuts()) {
      if (stubOut.lineBy().filter(by -> by == PartyRole.ELECTRICIAN).isPresent()) {
        stubOut.lineStillToLay().ifPresent(tasks::add);
      }
    }
    String electrician =
        sheet.describe.word(PartyRole.ELECTRICIAN).toLowerCase(sheet.wording.locale());
    sheet.job.stubOuts().stream()
        .flatMap(stubOut -> sheet.discretion.tellable(stubOut.note()).stream())
        .filter(note -> note.toLowerCase(sheet.wording.locale()).contains(electrician))
        .forEach(tasks::add);
    sheet.job.conduits().stream()
        .flatMap(conduit -> sheet.discretion.tellable(conduit.note()).stream())
        .filter(note -> note.toLowerCase(sheet.wording.locale()).contains(electrician))
        .forEach(tasks::add);
    return tasks;
  }
}
