package wallbook.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Stream;
import wallbook.assess.outlook.Target;
import wallbook.assess.outlook.Wish;
import wallbook.assess.outlook.WishAnswer;
import wallbook.compose.Composition;
import wallbook.compose.guide.GuideView.WayRow;
import wallbook.compose.guide.WayRows;
import wallbook.compose.result.Results;
import wallbook.compose.result.SourceList;
import wallbook.compose.result.SourceView;
import wallbook.record.Job;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Prints the ways of a wish for a person at a terminal. */
final class WishPrinter {
  private final Job job;
  private final Wording wording;
  private final PrintWriter out;
  private final Lines lines;
  private final Lines remarks;
  private final SourceList sources = new SourceList();
  private final WayRows rows;

  WishPrinter(Composition composition, PrintWriter out) {
    this.job = composition.job();
    this.wording = composition.wording();
    this.out = out;
    this.lines = new Lines(out, 3, 16);
    this.remarks = new Lines(out, 0, 3);
    this.rows = new WayRows(composition, new Results(wording, sources));
  }

  /** Lists the wishes that can be asked for. */
  void list(List<Wish> wishes) {
    out.println(wording.say("inquiry.wishes"));
    Lines names = new Lines(out, 2, 28);
    wishes.forEach(wish -> names.print(wish.name(), wording.say(wish.words())));
  }

  /** Prints the answers for a wish, then the sources they refer to. */
  void print(Wish wish, List<WishAnswer> answers) {
    for (WishAnswer answer : answers) {
      print(wish, answer);
      out.println();
    }
    List<SourceView> named = sources.list(wording);
    if (!named.isEmpty()) {
      out.println(wording.say("guide.sources.heading"));
      Lines list = new Lines(out, 2, 7);
      named.forEach(
          s ->
              list.print(
                  s.number(), say("inquiry.source", "text", s.citation(), "how", s.standing())));
    }
  }

  private void print(Wish wish, WishAnswer answer) {
    out.println(
        say("inquiry.answer", "wish", wording.say(wish.words()), "where", where(answer.target())));
    answer.facts().forEach(fact -> remarks.print("", wording.say(fact)));
    List<WayRow> ways = rows.all(answer);
    if (ways.isEmpty()) {
      remarks.print("", wording.say("guide.wish.none-anywhere"));
    }
    for (int i = 0; i < ways.size(); i++) {
      print(i + 1, ways.get(i));
    }
    rows.obstacles(answer)
        .forEach(obstacle -> remarks.print("", say("guide.wish.obstacles", "things", obstacle)));
    answer
        .alternative()
        .map(text -> Phrase.of("guide.wish.alternative", "text", text))
        .ifPresent(text -> remarks.print("", wording.say(text)));
  }

  private void print(int number, WayRow way) {
    out.println(number + ". " + way.means());
    name("cables", List.of(way.cables()));
    name("answer", List.of(way.verdict()));
    name("work", List.of(way.effort()));
    name("first", way.first());
    name("adds", way.adds());
    name("who", List.of(way.who()));
    name(
        "if",
        Stream.of(way.general(), way.sharing(), way.conditions()).flatMap(List::stream).toList());
    name("mind", way.notes());
    name("figures", way.figures());
  }

  private void name(String key, List<String> texts) {
    lines.print(wording.say("inquiry.way." + key), texts);
  }

  private String where(Target target) {
    if (target instanceof Target.AtPlace at) {
      return job.space(job.place(at.place()).space()).name() + ", " + job.place(at.place()).name();
    }
    return target
        .spaceIn(job)
        .map(id -> job.space(id).name())
        .orElseGet(() -> wording.say("guide.whole-house"));
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
