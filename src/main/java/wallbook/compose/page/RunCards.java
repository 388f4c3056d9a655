package wallbook.compose.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallbook.assess.outlook.Outlook;
import wallbook.compose.Caution;
import wallbook.compose.FactView;
import wallbook.compose.RunState;
import wallbook.compose.page.RunCard.EndView;
import wallbook.compose.page.RunCard.TestView;
import wallbook.record.Cable;
import wallbook.record.ExceptionItem;
import wallbook.record.Feed;
import wallbook.record.Finish;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.record.RunEnvironment;
import wallbook.record.RunTest;
import wallbook.record.TestLimit;
import wallbook.record.WorstValue;

/** Makes the cards of the cables. */
final class RunCards {
  private final Job job;
  private final Outlook outlook;
  private final PageWords words;
  private final Carries carries;

  RunCards(Job job, Outlook outlook, PageWords words, Carries carries) {
    this.job = job;
    this.outlook = outlook;
    this.words = words;
    this.carries = carries;
  }

  List<RunCard> all() {
    return job.runs().stream()
        .sorted(Comparator.comparing(Run::label, String.CASE_INSENSITIVE_ORDER))
        .map(this::card)
        .toList();
  }

  private RunCard card(Run run) {
    List<String> nothing = outlook.whyNothing(run.id()).stream().map(words::print).toList();
    return new RunCard(
        words.anchors().of(run),
        run.label(),
        words.describe().cable(run),
        words.state(run),
        run.system()
            .map(job::system)
            .map(system -> new Link(words.anchors().of(system), system.name())),
        run.serves(),
        troubles(run),
        run.darkReason(),
        standIn(run),
        Stream.of(run.from(), run.to()).map(this::end).toList(),
        facts(run),
        run.conduits().stream()
            .map(job::conduit)
            .map(c -> new Link(words.anchors().of(c), c.label()))
            .toList(),
        job.testsOf(run).stream()
            .sorted(Comparator.comparing(RunTest::date).reversed())
            .map(this::test)
            .toList(),
        RunState.of(run) == RunState.WORKS,
        nothing.isEmpty() ? carries.of(outlook.of(run.id())) : List.of(),
        nothing,
        cautions(run),
        run.note());
  }

  private List<ExceptionItem> exceptions(Run run) {
    return job.exceptions().stream().filter(e -> e.run().equals(Optional.of(run.id()))).toList();
  }

  private List<String> troubles(Run run) {
    return exceptions(run).stream().map(ExceptionItem::what).toList();
  }

  private Optional<Ref> standIn(Run run) {
    return run.standIn()
        .map(job::run)
        .map(other -> Ref.to(words.link(other)))
        .or(
            () ->
                exceptions(run).stream()
                    .flatMap(e -> e.standsIn().stream())
                    .map(Ref::plain)
                    .findFirst());
  }

  private EndView end(RunEnd end) {
    List<String> left = new ArrayList<>(List.of(words.describe().finish(end)));
    end.wiring().ifPresent(w -> left.add(words.describe().word(w)));
    return new EndView(
        words.end(end),
        words.position(end),
        String.join(", ", left),
        end.slack().map(s -> words.say("slack", "length", s)));
  }

  private List<FactView> facts(Run run) {
    List<FactView> facts = new ArrayList<>();
    words.fact(
        facts,
        "length",
        run.length()
            .map(
                length ->
                    run.lengthBy()
                        .map(
                            by ->
                                words.say(
                                    "length-by", "length", length, "by", words.describe().word(by)))
                        .orElseGet(() -> words.print(length))));
    if (!run.environments().isEmpty()) {
      words.fact(
          facts,
          "passes",
          Optional.of(
              run.environments().stream()
                  .map(words.describe()::word)
                  .collect(Collectors.joining(", "))));
    }
    words.fact(
        facts, "jacket", run.jacket().or(job.cableOf(run)::jacket).map(words.describe()::word));
    words.fact(facts, "hottest", run.hottest());
    words.fact(facts, "bundle", run.bundle());
    run.feed().ifPresent(feed -> feed(facts, feed));
    job.fibreOf(run).ifPresent(fibre -> words.fact(facts, "found", fibre.whereFound()));
    return facts;
  }

  private void feed(List<FactView> facts, Feed feed) {
    Optional<Object> load = feed.power().map(Object.class::cast).or(feed::current);
    words.fact(
        facts,
        "supplies",
        Optional.of(
            load.map(l -> words.say("feed", "voltage", feed.voltage(), "load", l))
                .orElseGet(() -> words.print(feed.voltage()))));
  }

  private TestView test(RunTest test) {
    List<FactView> facts = new ArrayList<>();
    words.fact(facts, "limit", test.limit().map(this::limit));
    words.fact(facts, "found-wrong", test.reason());
    words.fact(facts, "measured-length", test.length());
    words.fact(facts, "worst", worst(test).map(this::worst));
    if (!test.losses().isEmpty()) {
      words.fact(
          facts,
          "losses",
          Optional.of(
              test.losses().stream()
                  .map(l -> words.say("loss", "wavelength", l.wavelength(), "loss", l.loss()))
                  .collect(Collectors.joining("; "))));
    }
    words.fact(facts, "instrument", test.instrument());
    words.fact(facts, "calibrated", test.calibrated());
    words.fact(facts, "by", test.by());
    return new TestView(
        words.describe().word(test.kind()),
        words.print(test.date()),
        new Sign(test.result().word().replace('_', '-'), words.describe().word(test.result())),
        facts);
  }

  private String limit(TestLimit limit) {
    return String.join(
        ", ",
        words.describe().word(limit.standard()),
        words.describe().word(limit.category()),
        words.describe().word(limit.configuration()));
  }

  private static Optional<WorstValue> worst(RunTest test) {
    return test.worst().stream()
        .filter(w -> w.margin().isPresent())
        .min(Comparator.comparingDouble(w -> w.margin().orElseThrow().inDecibels()));
  }

  private String worst(WorstValue worst) {
    String margin =
        words.say(
            "worst",
            "parameter",
            words.describe().word(worst.parameter()),
            "margin",
            worst.margin().orElseThrow());
    return worst
        .frequency()
        .map(f -> words.say("worst-at", "worst", margin, "frequency", f))
        .orElse(margin);
  }

  private List<Link> cautions(Run run) {
    Cable cable = job.cableOf(run);
    Set<Caution> cautions = new LinkedHashSet<>();
    if (cable.medium() == Medium.FIBRE) {
      cautions.add(Caution.FIBRE_LIGHT);
      if (!run.isTerminated()) {
        cautions.add(Caution.FIBRE_SHARDS);
      }
    }
    if (run.from().finish() != Finish.TERMINATED || run.to().finish() != Finish.TERMINATED) {
      cautions.add(Caution.OPENING_BOXES);
    }
    if (run.environments().contains(RunEnvironment.BURIED)) {
      cautions.add(Caution.DIGGING);
    }
    if (run.environments().contains(RunEnvironment.ATTIC)) {
      cautions.add(Caution.ATTICS);
    }
    if (cable.medium() == Medium.POWER || run.feed().isPresent()) {
      cautions.add(Caution.CLASS_2);
    }
    if (cable.medium() == Medium.BALANCED_PAIR) {
      cautions.add(Caution.POE);
    }
    if (cable.medium() == Medium.COAX) {
      cautions.add(Caution.ANTENNAS);
    }
    if (RunState.of(run).carriesNothing()) {
      cautions.add(Caution.DEAD_CABLE);
    }
    return cautions.stream().map(words::link).toList();
  }
}
