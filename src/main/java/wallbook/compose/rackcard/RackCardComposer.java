package wallbook.compose.rackcard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallbook.compose.Composition;
import wallbook.compose.ContactView;
import wallbook.compose.Describe;
import wallbook.compose.Discretion;
import wallbook.compose.LabelRanges;
import wallbook.compose.RunState;
import wallbook.compose.figure.PanelRuns;
import wallbook.compose.rackcard.RackCardView.HeadLines;
import wallbook.compose.rackcard.RackCardView.KeepLine;
import wallbook.compose.rackcard.RackCardView.PanelLines;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.Panel;
import wallbook.record.PartyRole;
import wallbook.record.Run;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Composes the card for the rack's door. */
public final class RackCardComposer {
  private static final List<PartyRole> TO_CALL =
      List.of(PartyRole.INTEGRATOR, PartyRole.PROVIDER, PartyRole.ELECTRICIAN);

  /** More lines than these would not leave the card on one sheet. */
  private static final int MOST_TO_KEEP = 6;

  /** With more heads and panels than these each panel gets one line, without its labels. */
  private static final int MOST_IN_TWO_LINES = 13;

  /** Panels that the card has room for in one line each. */
  private static final int MOST_PANELS = 24;

  private final Job job;
  private final Wording wording;
  private final Describe describe;
  private final Discretion discretion;

  public RackCardComposer(Composition composition) {
    this.job = composition.job();
    this.wording = composition.wording();
    this.describe = composition.describe();
    this.discretion = new Discretion(job, wording);
  }

  /** The card. */
  public RackCardView compose() {
    List<Head> heads = job.heads().stream().filter(h -> !discretion.isPrivate(h)).toList();
    int panels = heads.stream().mapToInt(h -> h.panels().size()).sum();
    boolean brief = heads.size() + panels > MOST_IN_TWO_LINES;
    return new RackCardView(
        label(),
        heads(heads, brief),
        panels > MOST_PANELS
            ? Optional.of(wording.say(Phrase.counted("rackcard.more", panels - MOST_PANELS)))
            : Optional.empty(),
        keep(),
        ContactView.of(job, wording, party -> TO_CALL.contains(party.role())),
        List.of(
            wording.say("caution.fibre-light.text"),
            wording.say("caution.poe.text"),
            wording.say("caution.class-2.text"),
            wording.say("rackcard.mains"),
            wording.say("rackcard.bonding")));
  }

  /** A working run from a head to a place makes the plainest example. */
  private Optional<String> label() {
    return job.runs().stream()
        .filter(run -> !discretion.isPrivate(run))
        .min(
            Comparator.comparing((Run run) -> RunState.of(run) != RunState.WORKS)
                .thenComparing(run -> run.from().head().isEmpty())
                .thenComparing(run -> run.to().place().isEmpty()))
        .map(
            run ->
                say(
                    "rackcard.label.example",
                    "label",
                    run.label(),
                    "cable",
                    describe.cable(run),
                    "from",
                    describe.end(run.from()),
                    "to",
                    describe.end(run.to())));
  }

  private List<HeadLines> heads(List<Head> heads, boolean brief) {
    List<HeadLines> lines = new ArrayList<>();
    int room = MOST_PANELS;
    for (Head head : heads) {
      List<Panel> panels = head.panels().subList(0, Math.min(room, head.panels().size()));
      room -= panels.size();
      lines.add(head(head, panels, brief));
    }
    return lines;
  }

  private HeadLines head(Head head, List<Panel> panels, boolean brief) {
    return new HeadLines(
        head.name(),
        describe.where(head),
        panels.stream().map(panel -> panel(head, panel, brief)).toList());
  }

  /** A port of a watching thing is not named, and not called free either. */
  private PanelLines panel(Head head, Panel panel, boolean brief) {
    List<PanelRuns.Used> used = PanelRuns.of(job, head, panel).used();
    List<String> labels =
        used.stream()
            .map(PanelRuns.Used::run)
            .filter(run -> !discretion.isPrivate(run))
            .map(Run::label)
            .distinct()
            .toList();
    int free = panel.ports() - (int) used.stream().map(PanelRuns.Used::port).distinct().count();
    String name = say("rackcard.panel", "name", panel.name(), "ports", panel.ports());
    if (labels.isEmpty()) {
      return new PanelLines(panel.id(), name, Optional.of(say("rackcard.empty", "free", free)));
    }
    return brief
        ? new PanelLines(
            panel.id(),
            say("rackcard.brief", "panel", name, "cables", labels.size(), "free", free),
            Optional.empty())
        : new PanelLines(
            panel.id(),
            name,
            Optional.of(
                say("rackcard.holds", "labels", LabelRanges.byBeginning(labels), "free", free)));
  }

  /** Working cables between heads, and working low-voltage supplies. */
  private List<KeepLine> keep() {
    List<KeepLine> lines = new ArrayList<>();
    for (Run run : job.runs()) {
      boolean trunk = run.from().head().isPresent() && run.to().head().isPresent();
      boolean works = RunState.of(run) == RunState.WORKS && !discretion.isPrivate(run);
      if (works && (trunk || run.feed().isPresent())) {
        String serves =
            discretion.tellable(run.serves()).orElseGet(() -> wording.say("not-recorded"));
        lines.add(
            new KeepLine(
                run.label(), say(trunk ? "rackcard.trunk" : "rackcard.supply", "serves", serves)));
      }
    }
    return lines.subList(0, Math.min(lines.size(), MOST_TO_KEEP));
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
