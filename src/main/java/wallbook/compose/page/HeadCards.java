package wallbook.compose.page;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wallbook.compose.disclosure.DisclosedJob;
import wallbook.compose.figure.PanelRuns;
import wallbook.compose.page.HeadCard.PanelCard;
import wallbook.compose.page.HeadCard.PortView;
import wallbook.compose.page.RoomCard.CableLine;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.Panel;

/** Makes the cards of the places where cables come home. */
final class HeadCards {
  private static final int USUAL_COLUMNS = 12;

  private final Job job;
  private final DisclosedJob disclosed;
  private final PageWords words;
  private final PagePhotos photos;

  HeadCards(DisclosedJob disclosed, PageWords words, PagePhotos photos) {
    this.job = disclosed.job();
    this.disclosed = disclosed;
    this.words = words;
    this.photos = photos;
  }

  List<HeadCard> all() {
    return job.heads().stream().map(this::card).toList();
  }

  private HeadCard card(Head head) {
    List<CableLine> loose =
        PanelRuns.loose(job, head).stream()
            .map(end -> words.line(end.run(), end.near(), Optional.empty()))
            .toList();
    return new HeadCard(
        words.anchors().of(head),
        head.name(),
        words.describe().word(head.kind()),
        words.link(job.space(head.space())),
        words.where(head),
        photos.of(head),
        head.panels().stream().map(panel -> card(head, panel)).toList(),
        loose,
        head.note());
  }

  private PanelCard card(Head head, Panel panel) {
    PanelRuns runs = PanelRuns.of(job, head, panel);
    Set<Integer> withheld = withheld(head, panel);
    int columns = Math.max(1, panel.columns().orElse(Math.min(panel.ports(), USUAL_COLUMNS)));
    List<List<PortView>> rows = new ArrayList<>();
    for (int first = 1; first <= panel.ports(); first += columns) {
      int last = Math.min(first + columns - 1, panel.ports());
      List<PortView> row = new ArrayList<>();
      for (int port = first; port <= last; ) {
        int next = port + 1;
        if (runs.at(port).isEmpty()) {
          while (next <= last
              && runs.at(next).isEmpty()
              && withheld.contains(next) == withheld.contains(port)) {
            next++;
          }
          row.add(without(head, panel, port, next - 1, withheld.contains(port)));
        } else {
          row.add(with(head, panel, port, runs));
        }
        port = next;
      }
      rows.add(row);
    }
    return new PanelCard(
        words.anchors().of(head, panel),
        panel.name(),
        words.describe().word(panel.kind()),
        panel.rackUnit().map(unit -> words.say("rack-unit", "unit", unit)),
        rows,
        panel.note());
  }

  private PortView with(Head head, Panel panel, int port, PanelRuns runs) {
    PanelRuns.Used used =
        runs.used().stream().filter(u -> u.port() == port).findFirst().orElseThrow();
    return new PortView(
        words.anchors().of(head, panel, port),
        words.print(port),
        words.state(used.run()),
        Optional.of(words.link(used.run())),
        Optional.of(words.end(used.otherEnd())));
  }

  /** Ports side by side of which there is nothing more to say. */
  private PortView without(Head head, Panel panel, int from, int to, boolean withheld) {
    String key = withheld ? "withheld" : "free";
    return new PortView(
        words.anchors().of(head, panel, from),
        from == to ? words.print(from) : words.say("ports", "from", from, "to", to),
        new Sign(key, words.say("port." + key)),
        Optional.empty(),
        Optional.empty());
  }

  /** Ports in use by cables that the reader is not told of. */
  private Set<Integer> withheld(Head head, Panel panel) {
    Set<Integer> ports = new HashSet<>();
    PanelRuns.of(disclosed.whole(), head, panel).used().stream()
        .filter(u -> disclosed.withheldRuns().contains(u.run().id()))
        .forEach(u -> ports.add(u.port()));
    return ports;
  }
}
