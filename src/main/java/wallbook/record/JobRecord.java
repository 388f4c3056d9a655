package wallbook.record;

import java.util.List;

/** The whole record of a job, as it stands in its file. */
public record JobRecord(
    Origin origin,
    @Says(value = "Version of the record's form; 1.", example = "1") int format,
    @Says("What the job is and who took part.") JobFacts job,
    @Says("Storeys.") List<Floor> floors,
    @Says("Rooms and outdoor areas.") List<Space> spaces,
    @Says("Fixed corners that ties are measured from.") List<Corner> corners,
    @Says("Where runs come home.") List<Head> heads,
    @Says("Where runs end in the rooms and outdoors.") List<Place> places,
    @Says("Cable types beyond the built-in catalogue, or instead of it.") List<Cable> cables,
    @Says("Cables from end to end.") List<Run> runs,
    @Says("What is known of fibre runs beyond their ends.") List<Fibre> fibres,
    @Says("Conduits and chases.") List<Conduit> conduits,
    @Says("Exterior ends.") List<StubOut> stubOuts,
    @Says("Tests.") List<RunTest> tests,
    @Says("Audio zones, surround sets, landscape zones.") List<Zone> zones,
    @Says("Systems the wiring serves.") List<HouseSystem> systems,
    @Says("What is not as promised.") List<ExceptionItem> exceptions,
    @Says("Photographs.") List<Photo> photos,
    @Says("Usual provision for this job, where it differs from the built-in table.")
        List<Provision> provisions) {
  public JobRecord {
    floors = List.copyOf(floors);
    spaces = List.copyOf(spaces);
    corners = List.copyOf(corners);
    heads = List.copyOf(heads);
    places = List.copyOf(places);
    cables = List.copyOf(cables);
    runs = List.copyOf(runs);
    fibres = List.copyOf(fibres);
    conduits = List.copyOf(conduits);
    stubOuts = List.copyOf(stubOuts);
    tests = List.copyOf(tests);
    zones = List.copyOf(zones);
    systems = List.copyOf(systems);
    exceptions = List.copyOf(exceptions);
    photos = List.copyOf(photos);
    provisions = List.copyOf(provisions);
  }
}
