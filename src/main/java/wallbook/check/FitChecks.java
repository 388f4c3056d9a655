package wallbook.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.record.Panel;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.record.RunTest;
import wallbook.record.Word;
import wallbook.reference.Row;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Whether connectors, panels, wiring schemes and tests belong to the medium of their run. */
final class FitChecks implements Check {
  private final Table connectors;
  private final Table panels;
  private final Table tests;

  FitChecks(Tables tables) {
    this.connectors = tables.table("connectors-by-medium");
    this.panels = tables.table("panels-by-medium");
    this.tests = tables.table("tests-by-medium");
  }

  @Override
  public void look(Job job, Findings findings) {
    for (Run run : job.runs()) {
      Medium medium = job.cableOf(run).medium();
      for (RunEnd end : List.of(run.from(), run.to())) {
        checkConnector(run, end, medium, findings);
        checkPanel(job, run, end, medium, findings);
        checkWiring(run, end, medium, findings);
      }
      compareWiring(run, findings);
    }
    job.tests().forEach(test -> checkTest(job, test, findings));
  }

  private void checkConnector(Run run, RunEnd end, Medium medium, Findings findings) {
    end.connector()
        .filter(connector -> !fits(connectors, connector, medium))
        .ifPresent(
            connector ->
                findings.add(
                    RunFinding.of(
                            Severity.WARNING,
                            "connector-does-not-fit-cable",
                            end.origin().position("connector"),
                            run,
                            "connector",
                            Words.of("connector", connector),
                            "medium",
                            Words.of("medium", medium))
                        .found(connector.word())
                        .expecting(choices(connectors, "connector", medium))));
  }

  private void checkPanel(Job job, Run run, RunEnd end, Medium medium, Findings findings) {
    Optional<Panel> panel =
        end.head().flatMap(head -> end.panel().flatMap(id -> job.head(head).panel(id)));
    panel
        .filter(p -> !fits(panels, p.kind(), medium))
        .ifPresent(
            p ->
                findings.add(
                    RunFinding.of(
                            Severity.WARNING,
                            "cable-on-wrong-panel",
                            end.origin().position("panel"),
                            run,
                            "panel",
                            p.name(),
                            "medium",
                            Words.of("medium", medium))
                        .found(p.id())
                        .expecting(choices(panels, "panel", medium))));
  }

  private static void checkWiring(Run run, RunEnd end, Medium medium, Findings findings) {
    if (end.wiring().isPresent() && medium != Medium.BALANCED_PAIR) {
      findings.add(
          RunFinding.of(
                  Severity.WARNING,
                  "wiring-scheme-on-other-cable",
                  end.origin().position("wiring"),
                  run,
                  "medium",
                  Words.of("medium", medium))
              .found(end.wiring().get().word()));
    }
  }

  private static void compareWiring(Run run, Findings findings) {
    if (run.from().wiring().isPresent()
        && run.to().wiring().isPresent()
        && !run.from().wiring().equals(run.to().wiring())) {
      findings.add(
          RunFinding.of(
                  Severity.WARNING,
                  "wiring-schemes-differ",
                  run.to().origin().position("wiring"),
                  run)
              .found(run.to().wiring().get().word())
              .nearest(run.from().wiring().map(Word::word)));
    }
  }

  private void checkTest(Job job, RunTest test, Findings findings) {
    Run run = job.run(test.run());
    Medium medium = job.cableOf(run).medium();
    if (!fits(tests, test.kind(), medium)) {
      findings.add(
          RunFinding.of(
                  Severity.ERROR,
                  "test-does-not-fit-cable",
                  test.origin().position("kind"),
                  run,
                  "kind",
                  Words.of("test-kind", test.kind()),
                  "medium",
                  Words.of("medium", medium))
              .found(test.kind().word())
              .expecting(choices(tests, "test", medium)));
    }
  }

  private static boolean fits(Table table, Word word, Medium medium) {
    return table.row(word.word()).yes(medium.word());
  }

  private static Phrase choices(Table table, String column, Medium medium) {
    return Phrase.of(
        "expected.one-of",
        "choices",
        table.rows().stream()
            .filter(row -> row.yes(medium.word()))
            .map((Row row) -> row.text(column))
            .collect(Collectors.joining(", ")));
  }
}
