package wallbook.compose.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import wallbook.assess.outlook.Target;
import wallbook.assess.outlook.Wish;
import wallbook.assess.outlook.WishAnswer;
import wallbook.compose.Caution;
import wallbook.compose.CautionView;
import wallbook.compose.Composition;
import wallbook.compose.guide.GuideView.MeansRow;
import wallbook.compose.guide.GuideView.WayRow;
import wallbook.compose.guide.GuideView.WishChapter;
import wallbook.compose.guide.GuideView.WishRoom;
import wallbook.compose.result.Results;
import wallbook.record.Job;
import wallbook.wording.Wording;

/** A chapter for each wish: its ways, room by room. */
final class WishChapters {
  private final Composition composition;
  private final Job job;
  private final Wording wording;
  private final WayRows rows;

  WishChapters(Composition composition, Results results) {
    this.composition = composition;
    this.job = composition.job();
    this.wording = composition.wording();
    this.rows = new WayRows(composition, results);
  }

  List<WishChapter> all() {
    Map<Wish, List<WishAnswer>> byWish = new LinkedHashMap<>();
    for (WishAnswer answer : composition.wishes()) {
      byWish.computeIfAbsent(answer.wish(), w -> new ArrayList<>()).add(answer);
    }
    return byWish.values().stream().map(this::chapter).toList();
  }

  private WishChapter chapter(List<WishAnswer> answers) {
    WishAnswer first = answers.get(0);
    List<WishRoom> rooms = new ArrayList<>();
    List<String> none = new ArrayList<>();
    for (WishAnswer answer : answers) {
      List<WayRow> ways = rows.best(answer);
      if (ways.isEmpty()) {
        none.add(name(answer.target()));
      } else {
        rooms.add(new WishRoom(name(answer.target()), ways));
      }
    }
    return new WishChapter(
        wording.say(first.wish().words()),
        means(rooms),
        rooms,
        none,
        answers.stream().flatMap(a -> rows.obstacles(a).stream()).distinct().toList(),
        first.facts().stream().map(wording::say).toList(),
        first.alternative().map(wording::say),
        Caution.say(new WishCautions(job).of(answers), wording).stream()
            .map(CautionView::heading)
            .toList());
  }

  /** What each kind of way needs, told once. */
  private static List<MeansRow> means(List<WishRoom> rooms) {
    Map<String, List<WayRow>> byMeans = new LinkedHashMap<>();
    rooms.stream()
        .flatMap(room -> room.ways().stream())
        .forEach(way -> byMeans.computeIfAbsent(way.means(), m -> new ArrayList<>()).add(way));
    return byMeans.entrySet().stream()
        .map(
            e ->
                new MeansRow(
                    e.getKey(),
                    distinct(e.getValue(), w -> Stream.of(w.adds(), w.general())),
                    String.join(", ", distinct(e.getValue(), w -> Stream.of(List.of(w.who())))),
                    distinct(e.getValue(), w -> Stream.of(w.notes()))))
        .toList();
  }

  private static List<String> distinct(
      List<WayRow> ways, Function<WayRow, Stream<List<String>>> which) {
    return ways.stream().flatMap(which).flatMap(List::stream).distinct().toList();
  }

  private String name(Target target) {
    return target
        .spaceIn(job)
        .map(id -> job.space(id).name())
        .orElseGet(() -> wording.say("guide.whole-house"));
  }
}
