package wallbook.compose.guide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.compose.Composition;
import wallbook.compose.Describe;
import wallbook.compose.RunState;
import wallbook.compose.Speech;
import wallbook.compose.guide.GuideView.DeadRow;
import wallbook.compose.guide.GuideView.NeedRow;
import wallbook.compose.guide.GuideView.ResultTable;
import wallbook.compose.guide.GuideView.WaitingRoom;
import wallbook.compose.guide.GuideView.WaitingRow;
import wallbook.compose.result.Results;
import wallbook.record.ExceptionItem;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.record.Space;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Lists the cables that wait, by room, and those that carry nothing. */
final class WaitingCables {
  private final Composition composition;
  private final Job job;
  private final Wording wording;
  private final Describe describe;
  private final List<LikeCables> alike;
  private final Map<String, Integer> tableOfRun = new HashMap<>();

  WaitingCables(Composition composition) {
    this.composition = composition;
    this.job = composition.job();
    this.wording = composition.wording();
    this.describe = composition.describe();
    this.alike = LikeCables.of(job, composition.outlook(), waiting());
    for (int i = 0; i < alike.size(); i++) {
      int number = i + 1;
      alike.get(i).runs().forEach(run -> tableOfRun.put(run.id(), number));
    }
  }

  private List<Run> waiting() {
    return job.runs().stream().filter(run -> RunState.of(run).isDark()).toList();
  }

  /** What the waiting cables could carry, numbered in the order of the record. */
  List<ResultTable> results(Results results) {
    ResultTables tables = new ResultTables(composition, results);
    List<ResultTable> all = new ArrayList<>();
    for (int i = 0; i < alike.size(); i++) {
      all.add(tables.table(i + 1, alike.get(i)));
    }
    return all;
  }

  /** What the services of those tables need besides the cable. */
  List<NeedRow> needs(Results results) {
    return new ResultTables(composition, results).needs(alike);
  }

  /** Waiting cables by the room of their far end, in the order of the record's rooms. */
  List<WaitingRoom> rooms() {
    Map<Space, List<WaitingRow>> byRoom = new LinkedHashMap<>();
    job.spaces().forEach(space -> byRoom.put(space, new ArrayList<>()));
    waiting().forEach(run -> byRoom.get(job.spaceOf(run.to())).add(row(run)));
    return byRoom.entrySet().stream()
        .filter(room -> !room.getValue().isEmpty())
        .map(room -> new WaitingRoom(room.getKey().name(), room.getValue()))
        .toList();
  }

  private WaitingRow row(Run run) {
    return new WaitingRow(
        run.label(),
        describe.cable(run),
        shortEnd(run.from()),
        shortEnd(run.to()),
        run.length().map(wording::print).orElseGet(() -> wording.say("not-recorded")),
        describe.state(run),
        run.darkReason().orElseGet(() -> wording.say("not-recorded")),
        tableOfRun.get(run.id()));
  }

  /** An end in few words; the label map has it in full. */
  private String shortEnd(RunEnd end) {
    if (end.head().isPresent() && end.panel().isPresent() && end.port().isPresent()) {
      return wording.say(
          Phrase.of(
              "guide.end.port",
              "head",
              job.head(end.head().get()).name(),
              "panel",
              end.panel().get(),
              "port",
              end.port().get()));
    }
    return end.place().map(id -> job.place(id).name()).orElseGet(() -> describe.end(end));
  }

  /** Damaged and abandoned cables. */
  List<DeadRow> dead() {
    return job.runs().stream()
        .filter(run -> RunState.of(run).carriesNothing())
        .map(this::dead)
        .toList();
  }

  private DeadRow dead(Run run) {
    Optional<ExceptionItem> exception =
        job.exceptions().stream().filter(e -> e.run().equals(Optional.of(run.id()))).findFirst();
    List<String> why =
        Stream.concat(
                composition.outlook().whyNothing(run.id()).stream().map(wording::say),
                exception.map(ExceptionItem::what).or(run::darkReason).stream())
            .toList();
    String standsIn =
        run.standIn()
            .map(id -> job.run(id).label())
            .or(() -> exception.flatMap(ExceptionItem::standsIn))
            .orElseGet(() -> wording.say("guide.nothing-stands-in"));
    return new DeadRow(
        run.label(),
        describe.cable(run),
        shortEnd(run.from()),
        describe.end(run.to()),
        why.isEmpty() ? wording.say("not-recorded") : Speech.joined(why),
        standsIn);
  }
}
