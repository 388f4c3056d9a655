package wallbook.compose.runsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wallbook.compose.Composition;
import wallbook.compose.Describe;
import wallbook.compose.FactView;
import wallbook.record.ExceptionItem;
import wallbook.record.Fibre;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.record.RunTest;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** What the record says of a run, in the order a technician asks. */
final class RunFacts {
  private final Job job;
  private final Wording wording;
  private final Describe describe;

  RunFacts(Composition composition) {
    this.job = composition.job();
    this.wording = composition.wording();
    this.describe = composition.describe();
  }

  List<FactView> of(Run run) {
    List<FactView> facts = new ArrayList<>();
    fact(facts, "state", state(run));
    fact(facts, "from", end(run.from()));
    fact(facts, "to", end(run.to()));
    fact(facts, "length", length(run));
    run.serves().ifPresent(text -> fact(facts, "serves", text));
    run.system().ifPresent(id -> fact(facts, "system", job.system(id).name()));
    if (!run.conduits().isEmpty()) {
      fact(facts, "conduits", conduits(run));
    }
    if (!run.environments().isEmpty()) {
      fact(
          facts,
          "through",
          run.environments().stream().map(describe::word).collect(Collectors.joining(", ")));
    }
    run.jacket()
        .or(() -> job.cableOf(run).jacket())
        .ifPresent(jacket -> fact(facts, "jacket", describe.word(jacket)));
    run.bundle().ifPresent(cables -> fact(facts, "bundle", wording.print(cables)));
    run.hottest().ifPresent(temperature -> fact(facts, "hottest", wording.print(temperature)));
    run.feed().ifPresent(feed -> fact(facts, "feed", wording.print(feed.voltage())));
    job.fibreOf(run).flatMap(Fibre::whereFound).ifPresent(w -> fact(facts, "fibre-end", w));
    run.standIn().ifPresent(id -> fact(facts, "stand-in", job.run(id).label()));
    job.exceptions().stream()
        .filter(e -> e.run().equals(Optional.of(run.id())))
        .map(ExceptionItem::what)
        .forEach(what -> fact(facts, "exception", what));
    run.note().ifPresent(note -> fact(facts, "note", note));
    return facts;
  }

  /** Tests of a run, the latest last. */
  List<FactView> tests(Run run) {
    return job.testsOf(run).stream()
        .map(test -> new FactView(wording.print(test.date()), test(test)))
        .toList();
  }

  private void fact(List<FactView> facts, String name, String value) {
    facts.add(new FactView(wording.say("runsheet." + name), value));
  }

  private String state(Run run) {
    return run.darkReason()
        .map(why -> say("runsheet.state-because", "state", describe.state(run), "why", why))
        .orElseGet(() -> describe.state(run));
  }

  private String end(RunEnd end) {
    List<String> parts = new ArrayList<>();
    parts.add(describe.end(end));
    end.place().map(job::place).map(this::where).ifPresent(parts::add);
    parts.add(describe.finish(end));
    end.wiring().ifPresent(wiring -> parts.add(describe.word(wiring)));
    end.slack().ifPresent(slack -> parts.add(say("runsheet.slack", "slack", slack)));
    return String.join("; ", parts);
  }

  private String where(Place place) {
    return describe.where(place);
  }

  private String length(Run run) {
    if (run.length().isEmpty()) {
      return wording.say("not-recorded");
    }
    String length = wording.print(run.length().get());
    return run.lengthBy()
        .map(by -> say("runsheet.length-by", "length", length, "by", describe.word(by)))
        .orElse(length);
  }

  private String conduits(Run run) {
    return run.conduits().stream()
        .map(job::conduit)
        .map(c -> say("runsheet.conduit", "label", c.label(), "name", c.name()))
        .collect(Collectors.joining("; "));
  }

  private String test(RunTest test) {
    List<String> parts = new ArrayList<>();
    parts.add(
        say(
            "runsheet.test",
            "kind",
            describe.word(test.kind()),
            "result",
            describe.word(test.result())));
    test.limit()
        .ifPresent(
            limit ->
                parts.add(
                    String.join(
                        ", ",
                        describe.word(limit.standard()),
                        describe.word(limit.category()),
                        describe.word(limit.configuration()))));
    test.length().map(wording::print).ifPresent(parts::add);
    test.loopResistance().ifPresent(r -> parts.add(say("runsheet.loop", "loop", r)));
    test.reason().ifPresent(parts::add);
    test.instrument().ifPresent(parts::add);
    return String.join("; ", parts);
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
