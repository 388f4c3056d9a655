package wallbook.record;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
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
  private final Map<String, Floor> floors;
  private final Map<String, Space> spaces;
  private final Map<String, Corner> corners;
  private final Map<String, Head> heads;
  private final Map<String, Place> places;
  private final Map<String, Cable> cables;
  private final Map<String, Run> runs;
  private final Map<String, Conduit> conduits;
  private final Map<String, Zone> zones;
  private final Map<String, HouseSystem> systems;
  private final Map<String, Fibre> fibreOfRun;
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
    this.floors = index(record.floors(), Floor::id);
    this.spaces = index(record.spaces(), Space::id);
    this.corners = index(record.corners(), Corner::id);
    this.heads = index(record.heads(), Head::id);
    this.places = index(record.places(), Place::id);
    this.cables = index(catalogue, Cable::id);
    this.cables.putAll(index(record.cables(), Cable::id));
    this.runs = index(record.runs(), Run::id);
    this.conduits = index(record.conduits(), Conduit::id);
    this.zones = index(record.zones(), Zone::id);
    this.systems = index(record.systems(), HouseSystem::id);
    this.fibreOfRun = index(record.fibres(), Fibre::run);
    this.testsOfRun = group(record.tests(), t -> List.of(t.run()));
    this.runsAtPlace = group(record.runs(), r -> ends(r, RunEnd::place));
    this.runsAtHead = group(record.runs(), r -> ends(r, RunEnd::head));
    this.runsInConduit = group(record.runs(), Job::distinctConduits);
    this.placesInSpace = group(record.places(), p -> List.of(p.space()));
    this.runsOfZones = new HashSet<>();
    for (Zone zone : record.zones()) {
      zone.speakers().forEach(speaker -> speaker.run().ifPresent(runsOfZones::add));
    }
  }

  /** This job with other names for the cable types that are not its record's own. */
  public Job renaming(UnaryOperator<Cable> builtIn) {
    List<Cable> renamed =
        cables.values().stream()
            .filter(cable -> !record.cables().contains(cable))
            .map(builtIn)
            .toList();
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

  public List<Corner> corners() {
    return record.corners();
  }

  public List<Head> heads() {
    return record.heads();
  }

  public List<Place> places() {
    return record.places();
  }

  /** Every cable type that may be referred to: the record's own and the catalogue's. */
  public Collection<Cable> cables() {
    return cables.values();
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
    return known(floors, id);
  }

  public Space space(String id) {
    return known(spaces, id);
  }

  public Corner corner(String id) {
    return known(corners, id);
  }

  public Head head(String id) {
    return known(heads, id);
  }

  public Place place(String id) {
    return known(places, id);
  }

  public Cable cable(String id) {
    return known(cables, id);
  }

  public Run run(String id) {
    return known(runs, id);
  }

  public Conduit conduit(String id) {
    return known(conduits, id);
  }

  public Zone zone(String id) {
    return known(zones, id);
  }

  public HouseSystem system(String id) {
    return known(systems, id);
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
    return Optional.ofNullable(fibreOfRun.get(run.id()));
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
    return Optional.ofNullable(runs.get(id));
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

  private static <T> Map<String, T> index(List<T> things, Function<T, String> id) {
    Map<String, T> byId = new LinkedHashMap<>();
    things.forEach(thing -> byId.put(id.apply(thing), thing));
    return byId;
  }

  private static <T> Map<String, List<T>> group(List<T> things, Function<T, List<String>> keys) {
    Map<String, List<T>> groups = new HashMap<>();
    for (T thing : things) {
      for (String key : keys.apply(thing)) {
        groups.computeIfAbsent(key, k -> new ArrayList<>()).add(thing);
      }
    }
    groups.replaceAll((key, list) -> List.copyOf(list));
    return groups;
  }

  private static <T> T known(Map<String, T> byId, String id) {
    T thing = byId.get(id);
    if (thing == null) {
      throw new IllegalArgumentException("nothing has the id '" + id + "'");
    }
    return thing;
  }
}
