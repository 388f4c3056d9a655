package wallbook.check;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Nearest;
import wallbook.finding.Severity;
import wallbook.record.Connector;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.Panel;
import wallbook.record.Run;
import wallbook.record.RunCondition;
import wallbook.record.RunEnd;
import wallbook.wording.Phrase;

/** Where runs end: panels and ports of heads, jacks of places. */
final class PortChecks implements Check {
  private static final Set<Connector> ENDS_WITHOUT_PANEL =
      Set.of(Connector.HARD_WIRED, Connector.BANANA_PLUG, Connector.SCREW_TERMINAL);

  @Override
  public void look(Job job, Findings findings) {
    job.heads().forEach(head -> checkPanels(head, findings));
    Map<String, Run> taken = new HashMap<>();
    for (Run run : job.runs()) {
      for (RunEnd end : List.of(run.from(), run.to())) {
        end.head().ifPresent(id -> checkHeadEnd(job.head(id), run, end, taken, findings));
        if (end.place().isPresent() && end.jack().isPresent()) {
          claim(
              "place " + end.place().get() + " " + end.jack().get(),
              "two-runs-on-one-jack",
              end.jack().get(),
              "jack",
              run,
              end,
              taken,
              findings);
        }
      }
    }
  }

  private static void checkPanels(Head head, Findings findings) {
    Set<String> seen = new HashSet<>();
    for (Panel panel : head.panels()) {
      if (!seen.add(panel.id())) {
        findings.add(
            Finding.of(
                    Severity.ERROR,
                    "duplicate-panel",
                    panel.origin().position("id"),
                    "panel",
                    panel.id(),
                    "head",
                    head.name())
                .found(panel.id()));
      }
      if (panel.columns().filter(c -> c > panel.ports()).isPresent()) {
        findings.add(
            Finding.of(
                    Severity.WARNING,
                    "panel-wider-than-its-ports",
                    panel.origin().position("columns"),
                    "panel",
                    panel.name(),
                    "columns",
                    panel.columns().get(),
                    "ports",
                    panel.ports())
                .found(panel.columns().get().toString()));
      }
    }
  }

  private static void checkHeadEnd(
      Head head, Run run, RunEnd end, Map<String, Run> taken, Findings findings) {
    if (end.panel().isEmpty()) {
      checkLooseHeadEnd(head, run, end, findings);
      return;
    }
    Optional<Panel> panel = head.panel(end.panel().get());
    if (panel.isEmpty()) {
      List<String> known = head.panels().stream().map(Panel::id).toList();
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  "unknown-panel",
                  end.origin().position("panel"),
                  "panel",
                  end.panel().get(),
                  "head",
                  head.name())
              .found(end.panel().get())
              .expecting(Phrase.of("expected.one-of", "choices", String.join(", ", known)))
              .nearest(Nearest.to(end.panel().get(), known)));
      return;
    }
    if (end.port().isEmpty()) {
      if (end.isTerminated()) {
        portNotRecorded(head, run, end, findings);
      }
      return;
    }
    int port = end.port().get();
    if (port < 1 || port > panel.get().ports()) {
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  "port-beyond-panel",
                  end.origin().position("port"),
                  "port",
                  port,
                  "panel",
                  panel.get().name(),
                  "ports",
                  panel.get().ports())
              .found(Integer.toString(port))
              .expecting(Phrase.of("expected.port", "ports", panel.get().ports())));
    }
    claim(
        "head " + head.id() + " " + panel.get().id() + " " + port,
        "two-runs-on-one-port",
        Integer.toString(port),
        "port",
        run,
        end,
        taken,
        findings);
  }

  private static void checkLooseHeadEnd(Head head, Run run, RunEnd end, Findings findings) {
    if (end.port().isPresent()) {
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  "port-without-panel",
                  end.origin().position("port"),
                  "port",
                  end.port().get(),
                  "run",
                  run.label())
              .found(end.port().get().toString()));
    } else if (run.condition() == RunCondition.IN_SERVICE
        && end.isTerminated()
        && end.connector().filter(ENDS_WITHOUT_PANEL::contains).isEmpty()
        && !head.panels().isEmpty()) {
      portNotRecorded(head, run, end, findings);
    }
  }

  private static void portNotRecorded(Head head, Run run, RunEnd end, Findings findings) {
    findings.add(
        RunFinding.of(
            Severity.WARNING,
            "port-not-recorded",
            end.origin().position(),
            run,
            "head",
            head.name()));
  }

  private static void claim(
      String where,
      String finding,
      String found,
      String key,
      Run run,
      RunEnd end,
      Map<String, Run> taken,
      Findings findings) {
    Run first = taken.putIfAbsent(where, run);
    if (first != null) {
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  finding,
                  end.origin().position(key),
                  "run",
                  run.label(),
                  "other",
                  first.label(),
                  key,
                  found)
              .found(found));
    }
  }
}
