package wallbook.compose.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallbook.compose.page.PageView.AnchoredCaution;
import wallbook.compose.page.PageView.ServiceCard;
import wallbook.compose.page.PageView.SystemCard;

/** Makes what is searched from the cards that are shown, so that nothing else can be found. */
final class Entries {
  private final PageWords words;
  private final List<Entry> entries = new ArrayList<>();

  Entries(PageWords words) {
    this.words = words;
  }

  List<Entry> all() {
    return List.copyOf(entries);
  }

  Entries runs(List<RunCard> runs) {
    for (RunCard run : runs) {
      String ends =
          run.ends().stream().map(e -> e.where().text()).collect(Collectors.joining(" ↔ "));
      String more =
          Stream.of(
                  Stream.of(run.cable(), run.state().word()),
                  run.system().stream().map(Link::text),
                  run.serves().stream(),
                  run.conduits().stream().map(Link::text))
              .flatMap(s -> s)
              .collect(Collectors.joining(" "));
      add(run.anchor(), run.label(), "cable", run.label(), ends, more);
    }
    return this;
  }

  Entries rooms(List<RoomCard> rooms) {
    for (RoomCard room : rooms) {
      add(room.anchor(), "", "room", room.name(), room.floor(), "");
      for (RoomCard.PlaceCard place : room.places()) {
        add(
            place.anchor(),
            place.label().orElse(""),
            "place",
            place.label().map(l -> l + ", ").orElse("") + place.name(),
            room.name() + ", " + place.where(),
            place.kind());
      }
    }
    return this;
  }

  Entries heads(List<HeadCard> heads) {
    for (HeadCard head : heads) {
      add(head.anchor(), "", "head", head.name(), head.where(), head.kind());
      for (HeadCard.PanelCard panel : head.panels()) {
        add(panel.anchor(), "", "panel", panel.name(), head.name(), panel.kind());
      }
    }
    return this;
  }

  Entries conduits(List<ConduitCard> conduits) {
    for (ConduitCard conduit : conduits) {
      String ends = conduit.ends().stream().map(Ref::text).collect(Collectors.joining(" ↔ "));
      add(
          conduit.anchor(),
          conduit.label(),
          "conduit",
          conduit.label() + ", " + conduit.name(),
          ends,
          conduit.state().word());
    }
    return this;
  }

  Entries systems(List<SystemCard> systems) {
    for (SystemCard system : systems) {
      add(system.anchor(), "", "system", system.name(), system.works().orElse(""), system.kind());
    }
    return this;
  }

  Entries services(List<ServiceCard> services) {
    for (ServiceCard service : services) {
      int count = service.waiting().size() + service.busy().size();
      String detail =
          service.wishes().isEmpty()
              ? words.cables(count)
              : words.say(
                  "cables-towards",
                  "cables",
                  words.cables(count),
                  "wishes",
                  String.join(", ", service.wishes()));
      add(service.anchor(), "", "service", service.name(), detail, "");
    }
    return this;
  }

  Entries cautions(List<AnchoredCaution> cautions) {
    for (AnchoredCaution caution : cautions) {
      add(
          caution.anchor(),
          "",
          "caution",
          caution.caution().heading(),
          caution.caution().text(),
          "");
    }
    return this;
  }

  private void add(
      String anchor, String label, String kind, String title, String detail, String more) {
    entries.add(new Entry(anchor, label, words.say("kind." + kind), title, detail, more));
  }
}
