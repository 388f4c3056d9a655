package wallbook.compose.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.Panel;
import wallbook.record.Run;
import wallbook.record.RunEnd;

/**
 * The runs at the ports of one panel.
 *
 * @param used ports in use in their order
 */
public record PanelRuns(List<Used> used) {

  /** A port and the run behind it. */
  public record Used(int port, Run run, RunEnd otherEnd) {}

  /** A run that comes to a head at no port of it: the end there, and the other. */
  public record Loose(Run run, RunEnd near, RunEnd other) {}

  /** The runs that come to a head at no port, in the order of the record. */
  public static List<Loose> loose(Job job, Head head) {
    List<Loose> loose = new ArrayList<>();
    for (Run run : job.runsAt(head)) {
      for (RunEnd end : List.of(run.from(), run.to())) {
        if (end.head().equals(Optional.of(head.id())) && end.port().isEmpty()) {
          loose.add(new Loose(run, end, run.otherThan(end)));
        }
      }
    }
    return loose;
  }

  /** The runs at the ports of a panel. */
  public static PanelRuns of(Job job, Head head, Panel panel) {
    List<Used> used = new ArrayList<>();
    for (Run run : job.runsAt(head)) {
      add(used, head, panel, run, run.from(), run.to());
      add(used, head, panel, run, run.to(), run.from());
    }
    used.sort(Comparator.comparingInt(Used::port));
    return new PanelRuns(List.copyOf(used));
  }

  /** The run behind a port, if there is one. */
  public Optional<Run> at(int port) {
    return used.stream().filter(u -> u.port() == port).map(Used::run).findFirst();
  }

  private static void add(
      List<Used> used, Head head, Panel panel, Run run, RunEnd end, RunEnd other) {
    boolean here =
        end.head().equals(Optional.of(head.id())) && end.panel().equals(Optional.of(panel.id()));
    if (here && end.port().isPresent()) {
      used.add(new Used(end.port().get(), run, other));
    }
  }
}
