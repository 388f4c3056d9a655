package wallbook.compose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wallbook.geometry.RoomOutline;
import wallbook.geometry.Wall;
import wallbook.quantity.Angle;
import wallbook.record.ConduitEnd;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.record.RunTest;
import wallbook.record.Space;
import wallbook.record.TestKind;
import wallbook.record.TestResult;
import wallbook.record.Tie;
import wallbook.record.Word;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/**
 * Puts things of a job into words for one reader: where a plate is, where a cable goes, its state.
 */
public final class Describe {
  private static final List<String> WINDS = List.of("n", "ne", "e", "se", "s", "sw", "w", "nw");

  /** Kinds of test, the most telling first. */
  private static final List<TestKind> TELLING =
      List.of(
          TestKind.CERTIFICATION,
          TestKind.LIGHT_SOURCE,
          TestKind.QUALIFICATION,
          TestKind.VERIFICATION,
          TestKind.WIRE_MAP,
          TestKind.RESISTANCE,
          TestKind.CONTINUITY,
          TestKind.LENGTH,
          TestKind.TONING);

  private final Job job;
  private final Wording wording;

  public Describe(Job job, Wording wording) {
    this.job = job;
    this.wording = wording;
  }

  /** A choice of the record in the reader's words, for instance "in-wall coil". */
  public String word(Word word) {
    return wording.say(keyOf(word));
  }

  /** Key of the words for a choice: the type's name with hyphens, a dot and the word. */
  public static String keyOf(Word word) {
    String type =
        word.getClass()
            .getSimpleName()
            .replaceAll("([a-z])([A-Z])", "$1-$2")
            .toLowerCase(Locale.ROOT);
    return type + "." + word.word();
  }

  /** Which wall, as a person in the house would say it: "north wall (B)". */
  public String wall(Space space, String letter) {
    if (space.outline().size() < 3) {
      return wording.say(Phrase.of("wall.lettered", "letter", letter));
    }
    Optional<Wall> wall = new RoomOutline(space.outline()).wall(letter);
    Optional<Angle> north = job.facts().north();
    if (wall.isEmpty() || north.isEmpty()) {
      return wording.say(Phrase.of("wall.lettered", "letter", letter));
    }
    double bearing = wall.get().facing().inDegrees() - north.get().inDegrees();
    int wind = (int) Math.floorMod(Math.round(bearing / 45), 8L);
    return wording.say(Phrase.of("wall." + WINDS.get(wind), "letter", letter));
  }

  /** Where in its space a place is. */
  public String where(Place place) {
    Space space = job.space(place.space());
    List<String> parts = new ArrayList<>();
    place.wall().ifPresent(letter -> parts.add(wall(space, letter)));
    place
        .offset()
        .ifPresent(o -> parts.add(say("where.offset", "offset", wording.quantities().position(o))));
    if (place.wall().isEmpty() && !place.ties().isEmpty()) {
      place.ties().forEach(tie -> parts.add(tie(tie)));
    } else if (place.wall().isEmpty()) {
      parts.add(
          wording.say(
              switch (place.kind()) {
                case CEILING_POINT -> "where.ceiling";
                case FLOOR_BOX -> "where.floor";
                default -> "where.in-the-space";
              }));
    }
    place
        .height()
        .ifPresent(
            h ->
                parts.add(
                    say(
                        space.kind().isOutdoor() ? "where.above-grade" : "where.above-floor",
                        "height",
                        wording.quantities().position(h))));
    return String.join(", ", parts);
  }

  /** Where a head stands: its space, and the wall if that is recorded. */
  public String where(Head head) {
    Space space = job.space(head.space());
    return head.wall()
        .map(letter -> space.name() + ", " + wall(space, letter))
        .orElse(space.name());
  }

  /** A tie as a tape instruction. */
  public String tie(Tie tie) {
    return say(
        "where.tie",
        "distance",
        wording.quantities().position(tie.distance()),
        "corner",
        job.corner(tie.from()).name());
  }

  /** Where an end of a run is: a head with panel and port, or a space with its place. */
  public String end(RunEnd end) {
    if (end.head().isPresent()) {
      Head head = job.head(end.head().get());
      List<String> parts = new ArrayList<>(List.of(head.name()));
      end.panel().ifPresent(id -> parts.add(head.panel(id).map(p -> p.name()).orElse(id)));
      end.port().ifPresent(port -> parts.add(say("end.port", "port", port)));
      return String.join(", ", parts);
    }
    Place place = job.place(end.place().orElseThrow());
    String name = job.space(place.space()).name() + ", " + place.name();
    return end.jack().map(jack -> name + ", " + say("end.jack", "jack", jack)).orElse(name);
  }

  /** Where an end of a run is; of a head, its panel by its short name, to keep columns narrow. */
  public String shortEnd(RunEnd end) {
    if (end.head().isEmpty() || end.panel().isEmpty()) {
      return end(end);
    }
    String head = job.head(end.head().get()).name();
    String panel = end.panel().get();
    return end.port()
        .map(port -> say("end.panel-port", "head", head, "panel", panel, "port", port))
        .orElseGet(() -> say("end.panel", "head", head, "panel", panel));
  }

  /** The end of a run that is not at the given place; its from-end if both or neither are. */
  public RunEnd otherEnd(Run run, Place place) {
    return run.from().place().equals(Optional.of(place.id())) ? run.to() : run.from();
  }

  /** Where an end of a conduit is. */
  public String end(ConduitEnd end) {
    if (end.place().isPresent()) {
      Place place = job.place(end.place().get());
      return job.space(place.space()).name() + ", " + place.name();
    }
    return end.head()
        .map(id -> job.head(id).name())
        .orElseGet(() -> say("end.open-in", "space", job.space(end.space().orElseThrow()).name()));
  }

  /** How an end was left, in words. */
  public String finish(RunEnd end) {
    String left = word(end.finish());
    return end.connector().map(c -> left + " (" + word(c) + ")").orElse(left);
  }

  /** Name of a run's cable type. */
  public String cable(Run run) {
    return job.cableOf(run).name();
  }

  /** The state of a run in two or three words. */
  public String state(Run run) {
    return wording.say("run-state." + RunState.of(run).name().toLowerCase(Locale.ROOT));
  }

  /** The most telling and latest test of a run, if it was tested. */
  public Optional<RunTest> tellingTest(Run run) {
    return job.testsOf(run).stream()
        .min(
            Comparator.comparing((RunTest t) -> TELLING.indexOf(t.kind()))
                .thenComparing(RunTest::date, Comparator.reverseOrder()));
  }

  /** What testing a run came to, in one line. */
  public String tested(Run run) {
    Optional<RunTest> test = tellingTest(run);
    if (test.isEmpty()) {
      return wording.say("tested.not");
    }
    String kind = word(test.get().kind());
    String date = wording.shortDate(test.get().date());
    Optional<String> reason =
        test.get().reason().filter(r -> test.get().result() == TestResult.FAIL);
    Phrase said =
        reason.isPresent()
            ? Phrase.of("tested.fail-because", "kind", kind, "date", date, "reason", reason.get())
            : Phrase.of("tested." + test.get().result().word(), "kind", kind, "date", date);
    return wording.say(said);
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
