package wallbook.assess.outlook;

import java.util.ArrayList;
import java.util.List;
import wallbook.Jobs;
import wallbook.assess.Assessments;
import wallbook.assess.Assessor;
import wallbook.record.Job;

/**
 * A den, a study above it, an attic, a garden and a rack, to which a test adds cables and conduits;
 * with what is computed of it.
 */
public final class UpgradeHouse {
  private static final Assessor ASSESSOR = new Assessor(Jobs.TABLES);
  private static final OutlookAssessor OUTLOOKS = new OutlookAssessor(Jobs.TABLES);
  private static final WishAssessor WISHES = new WishAssessor(Jobs.TABLES);

  private static final String HOUSE =
      """
      floors:
        - {id: ground, name: Ground floor, level: 0, elevation: 0 ft}
        - {id: upper, name: Upper floor, level: 1, elevation: 10 ft}
      spaces:
        - {id: util, name: Utility, floor: ground, kind: utility}
        - {id: den, name: Den, floor: ground, kind: living}
        - {id: study, name: Study, floor: upper, kind: study}
        - {id: attic, name: Attic, floor: upper, kind: attic}
        - {id: garden, name: Garden, floor: ground, kind: garden}
      corners:
        - {id: a, name: one corner, at: [0 ft, 0 ft]}
        - {id: b, name: other corner, at: [30 ft, 0 ft]}
      heads:
        - {id: rack, name: Rack, kind: rack, space: util, panels: []}
        - {id: entrance, name: Entrance box, kind: demarcation, space: util, panels: []}
      places:
        - {id: den-tv, name: Television plate, label: DEN-A, space: den, kind: wall_plate, use: television}
        - {id: den-data, name: Data plate, space: den, kind: wall_plate, use: data}
        - {id: den-ap, name: Access point, space: den, kind: ceiling_point, use: access_point}
        - {id: den-shade, name: Shade, space: den, kind: in_wall_coil, use: shade}
        - {id: study-desk, name: Desk plate, space: study, kind: wall_plate, use: data}
        - {id: garden-stub, name: Stub-out, space: garden, kind: stub_out, use: landscape_audio}
      """;

  private final List<String> runs = new ArrayList<>();
  private final List<String> conduits = new ArrayList<>();
  private final StringBuilder rest = new StringBuilder();

  /** A run from the rack, terminated there. */
  public UpgradeHouse run(
      String id, String cable, String place, String finish, String condition, String more) {
    return line(
        id, cable, "head: rack", "place: " + place + ", finish: " + finish, condition, more);
  }

  /** A dark run of 60 ft from the rack, terminated at both ends. */
  public UpgradeHouse dark(String id, String cable, String place) {
    return run(id, cable, place, "terminated", "dark", "length: 60 ft");
  }

  /** A run of 60 ft from the rack to the entrance. */
  public UpgradeHouse toEntrance(String id, String cable, String condition) {
    return line(
        id, cable, "head: rack", "head: entrance, finish: terminated", condition, "length: 60 ft");
  }

  private UpgradeHouse line(
      String id, String cable, String from, String to, String condition, String more) {
    runs.add(
        "  - {id: %s, label: %s, cable: %s, from: {%s, finish: terminated}, to: {%s}, condition: %s%s}\n"
            .formatted(id, id, cable, from, to, condition, more.isEmpty() ? "" : ", " + more));
    return this;
  }

  /** A conduit of 1 in PVC with a bend, from one end to another. */
  public UpgradeHouse conduit(String id, String from, String to, String state) {
    conduits.add(
        """
          - id: %s
            label: %s
            name: Conduit
            type: pvc_40
            trade_size: "1"
            from: {%s}
            to: {%s}
            length: 30 ft
            path: [{straight: 10 ft}, {bend: 90 deg, radius: 6 in}, {straight: 20 ft}]
            pull_string: both_ends
            condition: %s
        """
            .formatted(id, id, from, to, state));
    return this;
  }

  /** A conduit that a mandrel nearly as wide as its bore went through. */
  public UpgradeHouse proved(String id, String from, String to) {
    return conduit(id, from, to, "clear\n    proved: {date: 2026-01-10, by: mandrel, size: 1 in}");
  }

  /** Further sections of the record. */
  public UpgradeHouse with(String sections) {
    rest.append(sections);
    return this;
  }

  public Job job() {
    StringBuilder text = new StringBuilder(HOUSE);
    if (!runs.isEmpty()) {
      text.append("runs:\n");
      runs.forEach(text::append);
    }
    if (!conduits.isEmpty()) {
      text.append("conduits:\n");
      conduits.forEach(text::append);
    }
    return Jobs.job(text.append(rest).toString());
  }

  /** What the cables and conduits could carry. */
  public Outlook outlook() {
    Job job = job();
    return OUTLOOKS.assess(job, ASSESSOR.assess(job));
  }

  /** The ways for a wish anywhere in a space. */
  public WishAnswer in(String space, String wish) {
    return answer(wish, new Target.InSpace(space));
  }

  /** The ways for a wish at a place. */
  public WishAnswer at(String place, String wish) {
    return answer(wish, new Target.AtPlace(place));
  }

  public WishAnswer inTheHouse(String wish) {
    return answer(wish, new Target.House());
  }

  private WishAnswer answer(String wish, Target target) {
    Job job = job();
    Assessments assessments = ASSESSOR.assess(job);
    Outlook outlook = OUTLOOKS.assess(job, assessments);
    Wish asked = WISHES.wish(wish).orElseThrow();
    return WISHES.answers(job, assessments, outlook, asked, List.of(target)).get(0);
  }

  /** The first cable or conduit of each way, best first. */
  static List<String> firstOf(WishAnswer answer) {
    return answer.ways().stream().map(way -> way.legs().get(0).subject()).toList();
  }

  /** The ways of one means. */
  static List<Way> by(WishAnswer answer, String means) {
    return answer.ways().stream().filter(way -> way.means().equals(means)).toList();
  }

  /** Keys of a way's conditions. */
  static List<String> conditions(Way way) {
    return way.conditions().stream().map(c -> c.key()).toList();
  }
}
