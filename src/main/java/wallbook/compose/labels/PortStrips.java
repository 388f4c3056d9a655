package wallbook.compose.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wallbook.compose.figure.PanelRuns;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.Panel;
import wallbook.record.Run;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Composes the strips of all panels, port beside port; free ports have their number only. */
final class PortStrips {
  private final Job job;
  private final Wording wording;
  private final Guarded guarded;
  private final EndForms ends;

  PortStrips(Job job, Wording wording, Guarded guarded, EndForms ends) {
    this.job = job;
    this.wording = wording;
    this.guarded = guarded;
    this.ends = ends;
  }

  /**
   * @param cells most ports of one strip; a strip never runs over the end of a row of the panel
   */
  List<PortStrip> strips(int cells) {
    List<PortStrip> strips = new ArrayList<>();
    for (Head head : job.heads()) {
      for (Panel panel : head.panels()) {
        List<PortStrip.Port> ports = ports(head, panel);
        int columns = Math.max(1, panel.columns().orElse(panel.ports()));
        for (int row = 0; row < ports.size(); row += columns) {
          int end = Math.min(row + columns, ports.size());
          for (int first = row; first < end; first += cells) {
            strips.add(strip(head, panel, ports.subList(first, Math.min(first + cells, end))));
          }
        }
      }
    }
    return strips;
  }

  private PortStrip strip(Head head, Panel panel, List<PortStrip.Port> ports) {
    String title =
        wording.say(
            Phrase.of(
                "label.strip",
                "head",
                head.name(),
                "panel",
                guarded.mayTell(head, panel) ? panel.name() : panel.id(),
                "first",
                Integer.toString(ports.get(0).number()),
                "last",
                Integer.toString(ports.get(ports.size() - 1).number())));
    return new PortStrip(title, ports, Set.of(panel.id()), panel.origin().position("name"));
  }

  private List<PortStrip.Port> ports(Head head, Panel panel) {
    PanelRuns runs = PanelRuns.of(job, head, panel);
    List<PortStrip.Port> ports = new ArrayList<>();
    for (int number = 1; number <= panel.ports(); number++) {
      int port = number;
      Optional<PanelRuns.Used> used =
          runs.used().stream().filter(u -> u.port() == port).findFirst();
      ports.add(
          new PortStrip.Port(
              number,
              used.map(u -> u.run().label()),
              used.map(u -> otherEnd(u)).orElse(List.of()),
              used.map(u -> u.run().origin().position("label"))
                  .orElseGet(() -> panel.origin().position("name"))));
    }
    return ports;
  }

  private List<String> otherEnd(PanelRuns.Used used) {
    Run run = used.run();
    if (guarded.is(run)) {
      return List.of();
    }
    // There is no room at a port for the fullest form.
    List<String> forms = ends.of(used.otherEnd());
    return forms.subList(forms.size() > 1 ? 1 : 0, forms.size());
  }
}
