package wallbook.compose.asbuilt;

import java.util.ArrayList;
import java.util.List;
import wallbook.compose.Describe;
import wallbook.compose.LabelRanges;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** What a technician reads of a run and its ends in a cell of a table. */
final class RunText {
  static final String NONE = "—";

  private final Wording wording;
  private final Describe describe;

  RunText(Job job, Wording wording) {
    this.wording = wording;
    this.describe = new Describe(job, wording);
  }

  /** Length and how it was found. */
  String length(Run run) {
    return run.length()
        .map(
            length ->
                run.lengthBy()
                    .map(
                        by ->
                            wording.say(
                                Phrase.of(
                                    "asbuilt.length-by",
                                    "length",
                                    length,
                                    "by",
                                    Phrase.of("asbuilt.by." + by.word()))))
                    .orElseGet(() -> wording.print(length)))
        .orElse(NONE);
  }

  /** The most telling test, in few words; dates in digits, to keep columns narrow. */
  String tested(Run run) {
    return describe
        .tellingTest(run)
        .map(
            test ->
                wording.say(
                    Phrase.of(
                        "asbuilt.tested." + test.result().word(),
                        "kind",
                        describe.word(test.kind()),
                        "date",
                        test.date().toString())))
        .orElseGet(() -> wording.say("tested.not"));
  }

  /** Length alone. */
  String plainLength(Run run) {
    return run.length().map(wording::print).orElse(NONE);
  }

  /** How an end was left, wired and with what slack. */
  String end(RunEnd end) {
    List<String> parts = new ArrayList<>();
    parts.add(end.connector().map(describe::word).orElseGet(() -> describe.word(end.finish())));
    end.wiring().map(describe::word).ifPresent(parts::add);
    end.slack()
        .ifPresent(slack -> parts.add(wording.say(Phrase.of("asbuilt.slack", "slack", slack))));
    return String.join(", ", parts);
  }

  /** Labels of runs in few words. */
  String labels(List<Run> runs) {
    return LabelRanges.of(runs.stream().map(Run::label).toList(), wording);
  }
}
