package wallbook.compose.signoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.assess.Verdict;
import wallbook.compose.Composition;
import wallbook.compose.Describe;
import wallbook.compose.ExceptionText;
import wallbook.compose.LabelRanges;
import wallbook.compose.RunState;
import wallbook.compose.result.Results;
import wallbook.compose.result.SourceList;
import wallbook.compose.signoff.SignOffView.Beyond;
import wallbook.compose.signoff.SignOffView.FailedTest;
import wallbook.compose.signoff.SignOffView.OpenItem;
import wallbook.compose.signoff.SignOffView.Settled;
import wallbook.compose.signoff.SignOffView.Shown;
import wallbook.compose.signoff.SignOffView.Warning;
import wallbook.finding.Finding;
import wallbook.finding.Severity;
import wallbook.record.ExceptionItem;
import wallbook.record.HouseSystem;
import wallbook.record.Job;
import wallbook.record.Party;
import wallbook.record.PartyRole;
import wallbook.record.Run;
import wallbook.record.RunTest;
import wallbook.record.StubOut;
import wallbook.record.TestResult;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Composes the sign-off sheet for owner and integrator. */
public final class SignOffComposer {
  private static final String NONE = "—";

  /** Answers that say something is not right today, by the beginning of their topics. */
  private static final List<String> FAULTS =
      List.of(
          "pairs.test.result",
          "pairs.wiring",
          "pairs.length",
          "fibre.test.",
          "coax.length",
          "dc.drop.10-percent",
          "dc.class-2",
          "dc.wet-contact",
          "speaker.load",
          "outdoor.mark.",
          "outdoor.cover",
          "location.ties");

  private final Composition composition;
  private final Job job;
  private final Assessments assessments;
  private final Wording wording;
  private final Describe describe;
  private final ExceptionText exceptions;
  private final SourceList sources = new SourceList();
  private final Results results;
  private final Map<String, String> assumed = new LinkedHashMap<>();

  public SignOffComposer(Composition composition) {
    this.composition = composition;
    this.job = composition.job();
    this.assessments = composition.assessments();
    this.wording = composition.wording();
    this.describe = composition.describe();
    this.exceptions = new ExceptionText(wording);
    this.results = new Results(wording, sources);
  }

  /** The sheet. */
  public SignOffView compose() {
    List<Beyond> beyond = beyond();
    return new SignOffView(
        job.exceptions().stream().filter(SignOffComposer::isOpen).map(this::open).toList(),
        job.runs().stream().flatMap(run -> failed(run).stream()).toList(),
        untested(RunState.WORKS),
        untested(RunState.DARK),
        beyond,
        composition.findings().stream()
            .filter(finding -> finding.severity() == Severity.WARNING)
            .map(this::warning)
            .toList(),
        job.systems().stream().map(this::shown).toList(),
        job.exceptions().stream().filter(e -> !isOpen(e)).map(this::settled).toList(),
        new Checklist(composition).ticks(),
        wording.print(job.facts().revision()),
        party(PartyRole.OWNER),
        party(PartyRole.INTEGRATOR),
        List.copyOf(assumed.values()),
        sources.list(wording));
  }

  private static boolean isOpen(ExceptionItem exception) {
    return exception.open().orElse(false);
  }

  private OpenItem open(ExceptionItem exception) {
    return new OpenItem(
        exception.what(),
        describe.word(exception.kind()),
        exception.standsIn(),
        exception.note().orElse(NONE));
  }

  /**
   * Tests of a run that failed without one that passed since; none of a run that was given up, or
   * whose damage stands among the exceptions.
   */
  private List<FailedTest> failed(Run run) {
    List<FailedTest> failed = new ArrayList<>();
    boolean told =
        RunState.of(run) == RunState.DEAD
            && job.exceptions().stream().anyMatch(e -> e.run().equals(Optional.of(run.id())));
    if (told || RunState.of(run) == RunState.RETIRED) {
      return failed;
    }
    List<RunTest> tests = job.testsOf(run);
    for (int i = 0; i < tests.size(); i++) {
      RunTest test = tests.get(i);
      boolean passedSince =
          tests.subList(i + 1, tests.size()).stream()
              .anyMatch(
                  later ->
                      later.result() == TestResult.PASS && !later.date().isBefore(test.date()));
      if (test.result() == TestResult.FAIL && !passedSince) {
        failed.add(
            new FailedTest(
                run.label(),
                describe.shortEnd(run.from()) + " – " + describe.shortEnd(run.to()),
                describe.word(test.kind()),
                wording.print(test.date()),
                test.reason().orElse(NONE),
                describe.state(run)));
      }
    }
    return failed;
  }

  /** Labels of whole runs without a test: those in service, or those that wait. */
  private Optional<String> untested(RunState state) {
    List<String> labels =
        job.runs().stream()
            .filter(
                run ->
                    state == RunState.WORKS
                        ? RunState.of(run) == RunState.WORKS
                        : RunState.of(run).isDark())
            .filter(run -> job.testsOf(run).isEmpty())
            .map(Run::label)
            .toList();
    return labels.isEmpty() ? Optional.empty() : Optional.of(LabelRanges.of(labels, wording));
  }

  private List<Beyond> beyond() {
    List<Beyond> all = new ArrayList<>();
    for (Run run : job.runs()) {
      if (RunState.of(run) == RunState.WORKS) {
        beyond(run.label(), run.id(), all);
      }
    }
    for (StubOut stubOut : job.stubOuts()) {
      String name = job.place(stubOut.place()).name();
      beyond(name, stubOut.id(), all);
      beyond(name, stubOut.place(), all);
    }
    return all;
  }

  private void beyond(String what, String subject, List<Beyond> all) {
    for (String topic : FAULTS) {
      List<Assessment> asked = assessments.of(subject, topic);
      // Of several tests only the last tells how things are.
      if (topic.endsWith(".result") && asked.size() > 1) {
        asked = asked.subList(asked.size() - 1, asked.size());
      }
      for (Assessment answer : asked) {
        if (answer.verdict() == Verdict.BEYOND && !answer.topic().endsWith(".doubled")) {
          answer.assumptions().forEach(a -> assumed.putIfAbsent(a.key(), wording.say(a)));
          all.add(new Beyond(what, results.line(answer)));
        }
      }
    }
  }

  private Warning warning(Finding finding) {
    return new Warning(
        finding.position().line() + ":" + finding.position().column(),
        wording.say(finding.message()),
        wording.say(finding.remedy()));
  }

  private Shown shown(HouseSystem system) {
    return new Shown(
        system.name(),
        system.works().orElse(NONE),
        system
            .demonstrated()
            .map(wording::print)
            .orElseGet(() -> wording.say("signoff.not-shown")));
  }

  private Settled settled(ExceptionItem exception) {
    return new Settled(
        exception.what(),
        exceptions.standsIn(exception),
        exception
            .agreed()
            .map(wording::print)
            .orElseGet(() -> wording.say("signoff.no-agreement")));
  }

  private String party(PartyRole role) {
    return job.facts().parties().stream()
        .filter(party -> party.role() == role)
        .findFirst()
        .map(this::named)
        .orElse("");
  }

  private String named(Party party) {
    return party
        .licence()
        .map(
            licence ->
                wording.say(Phrase.of("signoff.party", "name", party.name(), "licence", licence)))
        .orElse(party.name());
  }
}
