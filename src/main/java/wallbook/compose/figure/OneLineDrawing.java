package wallbook.compose.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wallbook.compose.drawing.Frame;
import wallbook.compose.drawing.OneLine;
import wallbook.compose.drawing.OneLine.Band;
import wallbook.compose.drawing.OneLine.Group;
import wallbook.compose.drawing.OneLine.Link;
import wallbook.compose.drawing.OneLine.LinkKind;
import wallbook.compose.drawing.OneLine.Node;
import wallbook.compose.drawing.SymbolKind;
import wallbook.compose.figure.OneLineLinks.Tie;
import wallbook.record.Floor;
import wallbook.record.Head;
import wallbook.record.HeadKind;
import wallbook.record.Job;
import wallbook.record.Party;
import wallbook.record.PartyRole;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/**
 * Draws the whole house in one line: each floor with its heads, what comes home there counted by
 * floor, the trunks and conduits between, and the provider's side of the demarcation. Conduits that
 * stay within one space are left to their own sheets.
 */
public final class OneLineDrawing {
  private static final double TALLEST_MM = 196;

  /** More lines than these can't be told apart; those between heads go first. */
  private static final int MOST_LINKS = 18;

  private static final String STREET = "street";

  private final Job job;
  private final Wording wording;
  private final MediaCount media;

  public OneLineDrawing(Job job, Wording wording) {
    this.job = job;
    this.wording = wording;
    this.media = new MediaCount(job, wording);
  }

  /**
   * The diagram and how many conduits it had no room for.
   *
   * @param leftOut conduits that only their own sheets show
   */
  public record Drawn(OneLine diagram, int leftOut) {}

  /** The diagram; nothing for a house without a head. */
  public Optional<Drawn> draw() {
    if (job.heads().isEmpty()) {
      return Optional.empty();
    }
    List<Tie> ties = new OneLineLinks(job, wording).all();
    List<Link> services = services();
    int room = Math.max(0, MOST_LINKS - services.size());
    List<Tie> drawn = ties.subList(0, Math.min(ties.size(), room));
    Map<String, Station> stations = new LinkedHashMap<>();
    Station.heads(job).forEach(station -> stations.put(station.id(), station));
    for (Tie tie : drawn) {
      stations.putIfAbsent(tie.from().id(), tie.from());
      stations.putIfAbsent(tie.to().id(), tie.to());
    }
    List<Link> links = new ArrayList<>(services);
    drawn.forEach(tie -> links.add(tie.link()));
    List<Band> bands = bands(stations);
    if (!services.isEmpty()) {
      bands.add(street());
    }
    return Optional.of(new Drawn(new OneLine(frame(), bands, links), ties.size() - drawn.size()));
  }

  private Frame frame() {
    String heads = job.heads().stream().map(Head::name).collect(Collectors.joining(", "));
    return Frame.pageWide(
        wording.say("drawing.oneline.title"),
        wording.say(Phrase.of("drawing.oneline.alt", "heads", heads)),
        TALLEST_MM);
  }

  private List<Band> bands(Map<String, Station> stations) {
    List<Band> bands = new ArrayList<>();
    List<Floor> fromTop =
        job.floors().stream().sorted(Comparator.comparingInt(Floor::level).reversed()).toList();
    for (Floor floor : fromTop) {
      List<Node> nodes =
          stations.values().stream()
              .filter(station -> station.floor().equals(floor.id()))
              .map(this::node)
              .toList();
      if (!nodes.isEmpty()) {
        bands.add(new Band(floor.name(), nodes));
      }
    }
    return bands;
  }

  private Node node(Station station) {
    if (station.head().isEmpty()) {
      return new Node(station.id(), SymbolKind.CONDUIT_END, station.name(), List.of());
    }
    Head head = station.head().get();
    Map<String, Set<Run>> byFloor = new LinkedHashMap<>();
    job.floors().stream()
        .sorted(Comparator.comparingInt(Floor::level).reversed())
        .forEach(floor -> byFloor.put(floor.id(), new LinkedHashSet<>()));
    for (Run run : job.runsAt(head)) {
      RunEnd other = run.from().head().equals(Optional.of(head.id())) ? run.to() : run.from();
      if (other.place().isPresent()) {
        byFloor.get(job.spaceOf(other).floor()).add(run);
      }
    }
    List<Group> groups = new ArrayList<>();
    byFloor.forEach(
        (floor, runs) -> {
          if (!runs.isEmpty()) {
            groups.add(group(job.floor(floor).name(), List.copyOf(runs)));
          }
        });
    return new Node(station.id(), Symbols.of(head.kind()), head.name(), groups);
  }

  private Group group(String floor, List<Run> runs) {
    return new Group(
        wording.print(runs.size()),
        wording.say(Phrase.of("drawing.oneline.group", "floor", floor, "cables", media.of(runs))));
  }

  private Band street() {
    String providers =
        job.facts().parties().stream()
            .filter(party -> party.role() == PartyRole.PROVIDER)
            .map(Party::name)
            .collect(Collectors.joining(", "));
    return new Band(
        wording.say("drawing.oneline.street"),
        List.of(
            new Node(
                STREET,
                SymbolKind.DEMARCATION,
                providers.isEmpty() ? wording.say("drawing.oneline.provider") : providers,
                List.of())));
  }

  private List<Link> services() {
    return job.heads().stream()
        .filter(head -> head.kind() == HeadKind.DEMARCATION)
        .map(
            head ->
                new Link(
                    STREET,
                    Station.of(job, head).id(),
                    LinkKind.SERVICE,
                    wording.say(Phrase.of("drawing.oneline.service", "head", head.name()))))
        .toList();
  }
}
