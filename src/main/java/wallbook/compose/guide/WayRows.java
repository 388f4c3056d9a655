package wallbook.compose.guide;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.assess.outlook.Obstacle;
import wallbook.assess.outlook.Prospect;
import wallbook.assess.outlook.ServiceFamily;
import wallbook.assess.outlook.Way;
import wallbook.assess.outlook.WishAnswer;
import wallbook.compose.Composition;
import wallbook.compose.Describe;
import wallbook.compose.Speech;
import wallbook.compose.guide.GuideView.WayRow;
import wallbook.compose.result.Results;
import wallbook.record.Job;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Puts the ways of a wish into words. */
public final class WayRows {
  private static final String MARGIN = ".margin";
  private static final String FULL = ".full";

  private final Job job;
  private final Wording wording;
  private final Describe describe;
  private final Speech words;
  private final Results results;

  /**
   * @param results how results are said; its sources are those that the rows refer to
   */
  public WayRows(Composition composition, Results results) {
    this.job = composition.job();
    this.wording = composition.wording();
    this.describe = composition.describe();
    this.words = new Speech(wording, describe);
    this.results = results;
  }

  /** Every way of an answer, best first. */
  public List<WayRow> all(WishAnswer answer) {
    return LikeWays.of(answer.ways()).stream().map(this::row).toList();
  }

  /** The ways to decide by. */
  List<WayRow> best(WishAnswer answer) {
    return LikeWays.best(answer.ways()).stream().map(this::row).toList();
  }

  /** What would be at hand but can't serve, with the reason. */
  public List<String> obstacles(WishAnswer answer) {
    return answer.obstacles().stream().map(this::obstacle).toList();
  }

  private WayRow row(LikeWays like) {
    Way shown = like.leastMargin();
    return new WayRow(
        wording.say(shown.words()),
        words.or(like.ways().stream().map(this::cables).distinct().toList()),
        words.answer(shown.verdict()),
        describe.word(shown.effort()),
        words.say(shown.first()),
        words.say(shown.adds()),
        words.who(shown.by()),
        words.say(conditions(like).filter(WayRows::isGeneral).toList()),
        words.say(conditions(like).filter(WayRows::isSharing).toList()),
        particular(like),
        words.say(shown.notes()),
        figures(shown, MARGIN),
        figures(shown, FULL));
  }

  private static Stream<Phrase> conditions(LikeWays like) {
    return like.ways().stream().flatMap(way -> way.conditions().stream()).distinct();
  }

  /** A condition that names no thing comes with the kind of way. */
  private static boolean isGeneral(Phrase condition) {
    return condition.arguments().isEmpty();
  }

  private static boolean isSharing(Phrase condition) {
    return condition.key().startsWith("outlook.condition.shared");
  }

  /** Conditions of these cables: of the way, of what it rests on, and what the record lacks. */
  private List<String> particular(LikeWays like) {
    Stream<Phrase> ofWay = conditions(like).filter(c -> !isGeneral(c) && !isSharing(c));
    Stream<Phrase> ofBases = like.ways().stream().flatMap(way -> Conditions.of(way).stream());
    Stream<Phrase> missing =
        like.ways().stream().flatMap(w -> w.bases().stream()).flatMap(a -> a.missing().stream());
    return words.say(Stream.of(ofWay, ofBases, missing).flatMap(s -> s).distinct().toList());
  }

  /** Labels of the cables or conduits a way takes, and where they are. */
  private String cables(Way way) {
    List<String> labels = way.legs().stream().map(leg -> label(leg.subject())).toList();
    String all =
        labels.size() == 1
            ? labels.get(0)
            : words.say(
                "guide.with",
                "first",
                labels.get(0),
                "rest",
                String.join(", ", labels.subList(1, labels.size())));
    return way.legs()
        .get(0)
        .place()
        .map(id -> words.say("guide.at", "label", all, "place", job.place(id).name()))
        .orElse(all);
  }

  private String label(String subject) {
    return job.findRun(subject)
        .map(run -> run.label())
        .orElseGet(() -> job.conduit(subject).label());
  }

  private List<String> figures(Way way, String form) {
    Stream<String> counted =
        way.legs().stream()
            .flatMap(leg -> leg.prospects().stream())
            .map(prospect -> figure(prospect, form));
    Stream<String> further =
        way.figures().stream()
            .map(
                f ->
                    figure(
                        f.basis(), f.basis().value().isPresent() ? ".value" : ".plain", f.name()));
    return Stream.concat(counted, further).distinct().toList();
  }

  private String figure(Prospect prospect, String form) {
    Assessment decisive = prospect.decisive();
    String kind = form;
    if (decisive.margin().isEmpty()) {
      boolean room = prospect.family() == ServiceFamily.CABLE;
      kind = decisive.value().isEmpty() ? ".plain" : room ? ".room" : ".value";
    }
    return figure(decisive, kind, prospect.name());
  }

  private String figure(Assessment assessment, String kind, Phrase name) {
    return words.say(
        "guide.figure" + kind,
        "name",
        name,
        "value",
        print(assessment.value()),
        "limit",
        print(assessment.limit()),
        "margin",
        results.margin(assessment).orElse(Amounts.NONE),
        "reference",
        results.source(assessment));
  }

  private String print(Optional<?> amount) {
    return amount.map(wording::print).orElse(Amounts.NONE);
  }

  private String obstacle(Obstacle obstacle) {
    String reason = wording.say(obstacle.reason());
    return obstacle
        .standIn()
        .map(
            id ->
                words.say(
                    "guide.obstacle-stand-in",
                    "label",
                    label(obstacle.subject()),
                    "reason",
                    reason,
                    "standIn",
                    job.run(id).label()))
        .orElseGet(
            () ->
                words.say("guide.obstacle", "label", label(obstacle.subject()), "reason", reason));
  }
}
