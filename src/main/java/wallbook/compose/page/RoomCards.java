package wallbook.compose.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallbook.compose.Caution;
import wallbook.compose.FactView;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.drawing.RoomPlan;
import wallbook.compose.drawing.Target;
import wallbook.compose.figure.PlanDrawings;
import wallbook.compose.page.PageView.FloorView;
import wallbook.compose.page.RoomCard.PlaceCard;
import wallbook.record.Coil;
import wallbook.record.Conduit;
import wallbook.record.ConduitEnd;
import wallbook.record.Floor;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.Space;
import wallbook.record.SpaceKind;
import wallbook.record.StubOut;

/** Makes the cards of rooms and outdoor areas, and the storeys that they are chosen from. */
final class RoomCards {
  private final Job job;
  private final PageWords words;
  private final PlanDrawings drawings;
  private final PagePhotos photos;

  RoomCards(Job job, PageWords words, PlanDrawings drawings, PagePhotos photos) {
    this.job = job;
    this.words = words;
    this.drawings = drawings;
    this.photos = photos;
  }

  List<FloorView> floors() {
    return inOrder()
        .map(
            floor ->
                new FloorView(
                    floor.name(),
                    drawings.floor(floor).map(Drawing.class::cast),
                    job.spaces().stream()
                        .filter(s -> s.floor().equals(floor.id()))
                        .map(words::link)
                        .toList()))
        .filter(floor -> !floor.rooms().isEmpty())
        .toList();
  }

  List<RoomCard> all() {
    return inOrder()
        .flatMap(f -> job.spaces().stream().filter(s -> s.floor().equals(f.id())))
        .map(this::card)
        .toList();
  }

  private Stream<Floor> inOrder() {
    return job.floors().stream().sorted(Comparator.comparingInt(Floor::level));
  }

  private RoomCard card(Space space) {
    List<Place> places = job.placesIn(space);
    Optional<RoomPlan> plan = drawings.room(space, places).filter(p -> !p.marks().isEmpty());
    Set<String> marked =
        plan.stream()
            .flatMap(p -> p.marks().stream())
            .flatMap(mark -> mark.target().stream())
            .map(Target::reference)
            .collect(Collectors.toSet());
    return new RoomCard(
        words.anchors().of(space),
        space.name(),
        job.floor(space.floor()).name(),
        plan.map(Drawing.class::cast),
        drawings.elevations(space, places),
        photos.of(space),
        places.stream().map(place -> card(place, marked)).toList(),
        job.heads().stream()
            .filter(h -> h.space().equals(space.id()))
            .map(h -> new Link(words.anchors().of(h), h.name()))
            .toList(),
        job.conduits().stream()
            .filter(c -> isIn(c.from(), space) || isIn(c.to(), space))
            .map(this::link)
            .toList(),
        cautions(space),
        space.note());
  }

  private PlaceCard card(Place place, Set<String> marked) {
    return new PlaceCard(
        words.anchors().of(place),
        place.name(),
        place.label(),
        words.describe().word(place.kind()),
        words.describe().where(place),
        marked.contains(words.anchors().of(place)),
        job.stubOuts().stream()
            .filter(s -> s.place().equals(place.id()))
            .flatMap(s -> facts(s).stream())
            .toList(),
        words.lines(place),
        place.note());
  }

  private List<FactView> facts(StubOut stubOut) {
    List<FactView> facts = new ArrayList<>();
    words.fact(facts, "cover", stubOut.cover());
    for (Coil coil : stubOut.coiled()) {
      words.fact(
          facts,
          "coiled",
          Optional.of(
              words.say("coil", "label", job.run(coil.run()).label(), "length", coil.length())));
    }
    words.fact(facts, "meant-for", stubOut.zone().map(id -> job.zone(id).name()));
    stubOut.obstacles().forEach(o -> words.fact(facts, "obstacle", Optional.of(o)));
    words.fact(facts, "to-lay", stubOut.lineStillToLay());
    words.fact(facts, "to-lay-by", stubOut.lineBy().map(words.describe()::word));
    words.fact(facts, "note", stubOut.note());
    return facts;
  }

  private List<Link> cautions(Space space) {
    List<Link> cautions = new ArrayList<>();
    if (space.kind().isOutdoor()) {
      cautions.add(words.link(Caution.DIGGING));
    }
    if (space.kind() == SpaceKind.ATTIC) {
      cautions.add(words.link(Caution.ATTICS));
    }
    if (!space.outline().isEmpty() && !space.kind().isOutdoor()) {
      cautions.add(words.link(Caution.DRILLING));
    }
    return cautions;
  }

  private Link link(Conduit conduit) {
    return new Link(words.anchors().of(conduit), conduit.label() + ": " + conduit.name());
  }

  private boolean isIn(ConduitEnd end, Space space) {
    Optional<String> where =
        end.space()
            .or(() -> end.place().map(id -> job.place(id).space()))
            .or(() -> end.head().map(id -> job.head(id).space()));
    return where.equals(Optional.of(space.id()));
  }
}
