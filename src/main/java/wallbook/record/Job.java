package wallbook.record;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import wallbook.picture.Picture;

/**
 * A job: its record, the cable types it may refer to, the sweeps and pictures read from files
 * beside it, and look-up by id. Immutable. References in a job that was read without errors always
 * resolve.
 */
public final class Job {
  private final JobRecord record;
  private final Map<String, List<SweepPoint>> sweeps;
  private final Map<String, Picture> pictures;
  private final Index<Floor> floors;
  private final Index<Space> spaces;
  private final Index<Corner> corners;
  private final Index<Head> heads;
  private final Index<Place> places;
  private final Index<Cable> cables;
  private final Index<Run> runs;
  private final Index<Conduit> conduits;
  private final Index<Zone> zones;
  private final Index<HouseSystem> systems;
  private final Index<Fibre> fibreOfRun;
  private final Map<String, List<RunTest>> testsOfRun;
  private final Map<String, List<Run>> runsAtPlace;
  private final Map<String, List<Run>> runsAtHead;
  private final Map<String, List<Run>> runsInConduit;
  private final Map<String, List<Place>> placesInSpace;
  private final Set<String> runsOfZones;

  /**
   * @param catalogue built-in cable types; one of the record's own with the same id goes before
   * @param sweeps points of each test's sweep by the test's id
   * @param pictures photographs and logo by the name of the file in the record; one that can't be
   *     shown is absent
   */
  public Job(
      JobRecord record,
      List<Cable> catalogue,
      Map<String, List<SweepPoint>> sweeps,
      Map<String, Picture> pictures) {
    this.record = record;
    this.pictures = Map.copyOf(pictures);
    Map<String, List<SweepPoint>> copied = new HashMap<>();
    sweeps.forEach((test, points) -> copied.put(test, List.copyOf(points)));
    this.sweeps = Map.copyOf(copied);
    this.floors = new Index<>(record.floors(), Floor::id);
    this.spaces = new Index<>(record.spaces(), Space::id);
    this.corners = new Index<>(record.corners(), Corner::id);
    this.heads = new Index<>(record.heads(), Head::id);
    this.places = new Index<>(record.places(), Place::id);
    List<Cable> types = new ArrayList<>(catalogue);
    types.addAll(record.cables());
    this.cables = new Index<>(types, Cable::id);
    this.runs = new Index<>(record.runs(), Run::id);
    this.conduits = new Index<>(record.conduits(), Conduit::id);
    this.zones = new Index<>(record.zones(), Zone::id);
    this.systems = new Index<>(record.systems(), HouseSystem::id);
    this.fibreOfRun = new Index<>(record.fibres(), Fibre::run);
    this.testsOfRun = Index.groups(record.tests(), t -> List.of(t.run()));
    this.runsAtPlace = Index.groups(record.runs(), r -> ends(r, RunEnd::place));
    this.runsAtHead = Index.groups(record.runs(), r -> ends(r, RunEnd::head));
    this.runsInConduit = Index.groups(record.runs(), Job::distinctConduits);
    this.placesInSpace = Index.groups(record.places(), p -> List.of(p.space()));
    this.runsOfZones = new HashSet<>();
    for (Zone zone : record.zones()) {
      zone.speakers().forEach(speaker -> speaker.run().ifPresent(runsOfZones::add));
    }
  }

  /** This job with other names for the cable types that are not its record's own. */
  public Job renaming(UnaryOperator<Cable> builtIn) {
    Set<String> own = record.cables().stream().map(Cable::id).collect(Collectors.toSet());
    List<Cable> renamed =
        cables.all().stream().filter(cable -> !own.contains(cable.id())).map(builtIn).toList();
    return new Job(record, renamed, sweeps, pictures);
  }

  /** The record as it stands in its file. */
  public JobRecord record() {
    return record;
  }

  public JobFacts facts() {
    return record.job();
  }

  public List<Floor> floors() {
    return record.floors();
  }

  public List<Space> spaces() {
    return record.spaces();
  }

  public List<Head> heads() {
    return record.heads();
  }

  public List<Place> places() {
    return record.places();
  }

  /** Every cable type that may be referred to: the record's own and the catalogue's. */
  public Collection<Cable> cables() {
    return cables.all();
  }

  public List<Run> runs() {
    return record.runs();
  }

  public List<Fibre> fibres() {
    return record.fibres();
  }

  public List<Conduit> conduits() {
    return record.conduits();
  }

  public List<StubOut> stubOuts() {
    return record.stubOuts();
  }

  public List<RunTest> tests() {
    return record.tests();
  }

  public List<Zone> zones() {
    return record.zones();
  }

  public List<HouseSystem> systems() {
    return record.systems();
  }

  public List<ExceptionItem> exceptions() {
    return record.exceptions();
  }

  public List<Photo> photos() {
    return record.photos();
  }

  public Floor floor(String id) {
    return floors.get(id);
  }

  public Space space(String id) {
    return spaces.get(id);
  }

  public Corner corner(String id) {
    return corners.get(id);
  }

  public Head head(String id) {
    return heads.get(id);
  }

  public Place place(String id) {
    return places.get(id);
  }

  public Cable cable(String id) {
    return cables.get(id);
  }

  public Run run(String id) {
    return runs.get(id);
  }

  public Conduit conduit(String id) {
    return conduits.get(id);
  }

  public Zone zone(String id) {
    return zones.get(id);
  }

  public HouseSystem system(String id) {
    return systems.get(id);
  }

  /** Cable type of a run. */
  public Cable cableOf(Run run) {
    return cable(run.cable());
  }

  /** Space that an end of a run is in. */
  public Space spaceOf(RunEnd end) {
    return space(
        end.place()
            .map(id -> place(id).space())
            .orElseGet(() -> head(end.head().orElseThrow()).space()));
  }

  /** What is known of the fibres of a run beyond its ends. */
  public Optional<Fibre> fibreOf(Run run) {
    return fibreOfRun.find(run.id());
  }

  /** Tests of a run in the order of the record. */
  public List<RunTest> testsOf(Run run) {
    return testsOfRun.getOrDefault(run.id(), List.of());
  }

  /** Points of a test's sweep; empty if it has none. */
  public List<SweepPoint> sweepOf(RunTest test) {
    return sweeps.getOrDefault(test.id(), List.of());
  }

  /** Every picture that could be read, by the name of its file in the record. */
  public Map<String, Picture> pictures() {
    return pictures;
  }

  /** What a photograph shows, if its file could be read. */
  public Optional<Picture> pictureOf(Photo photo) {
    return Optional.ofNullable(pictures.get(photo.file()));
  }

  /** The integrator's logo, if the record names one and its file could be read. */
  public Optional<Picture> logo() {
    return facts().look().flatMap(Look::logo).map(pictures::get);
  }

  /** Runs that end at a place, in the order of the record. */
  public List<Run> runsAt(Place place) {
    return runsAtPlace.getOrDefault(place.id(), List.of());
  }

  /** Runs that end at a head, in the order of the record. */
  public List<Run> runsAt(Head head) {
    return runsAtHead.getOrDefault(head.id(), List.of());
  }

  /** Runs that say they pass through a conduit, in the order of the record. */
  public List<Run> runsThrough(Conduit conduit) {
    return runsInConduit.getOrDefault(conduit.id(), List.of());
  }

  /** Places in a space, in the order of the record. */
  public List<Place> placesIn(Space space) {
    return placesInSpace.getOrDefault(space.id(), List.of());
  }

  /** The run of an id, if it is one of a run. */
  public Optional<Run> findRun(String id) {
    return runs.find(id);
  }

  /** Whether a zone names the run for one of its speakers. */
  public boolean isOfZone(Run run) {
    return runsOfZones.contains(run.id());
  }

  private static List<String> distinctConduits(Run run) {
    return run.conduits().stream().distinct().toList();
  }

  private static List<String> ends(Run run, Function<RunEnd, Optional<String>> where) {
    List<String> ids = new ArrayList<>();
    where.apply(run.from()).ifPresent(ids::add);
    where.apply(run.to()).filter(id -> !ids.contains(id)).ifPresent(ids::add);
    return ids;
  }
}
