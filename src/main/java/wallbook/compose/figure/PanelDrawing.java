package wallbook.compose.figure;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wallbook.compose.RunState;
import wallbook.compose.drawing.Frame;
import wallbook.compose.drawing.PanelMap;
import wallbook.compose.drawing.PanelMap.Port;
import wallbook.compose.drawing.PanelMap.PortState;
import wallbook.compose.drawing.PanelMap.StateWord;
import wallbook.record.Head;
import wallbook.record.Panel;
import wallbook.record.Run;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Draws a panel as somebody sees it who stands in front of it. */
public final class PanelDrawing {
  private static final double TALLEST_MM = 90;
  private static final int USUAL_COLUMNS = 12;

  private final Wording wording;

  public PanelDrawing(Wording wording) {
    this.wording = wording;
  }

  /** The panel with what is behind each of its ports. */
  public PanelMap of(Head head, Panel panel, PanelRuns runs) {
    int columns = Math.max(1, panel.columns().orElse(Math.min(panel.ports(), USUAL_COLUMNS)));
    List<List<Port>> rows = new ArrayList<>();
    for (int port = 1; port <= panel.ports(); port++) {
      if ((port - 1) % columns == 0) {
        rows.add(new ArrayList<>());
      }
      rows.get(rows.size() - 1).add(port(port, runs.at(port)));
    }
    String title = say("drawing.panel.title", "head", head.name(), "panel", panel.name());
    String alt =
        say(
            "drawing.panel.alt",
            "head",
            head.name(),
            "panel",
            panel.name(),
            "ports",
            panel.ports(),
            "used",
            runs.used().size());
    return new PanelMap(Frame.pageWide(title, alt, TALLEST_MM), panel.name(), rows, stateWords());
  }

  private static Port port(int number, Optional<Run> run) {
    PortState state =
        run.map(
                r ->
                    switch (RunState.of(r)) {
                      case WORKS -> PortState.IN_SERVICE;
                      case DARK, UNFINISHED -> PortState.DARK;
                      case DEAD, RETIRED -> PortState.DAMAGED;
                    })
            .orElse(PortState.FREE);
    return new Port(
        Integer.toString(number), run.map(r -> List.of(r.label())).orElse(List.of()), state);
  }

  private Map<PortState, StateWord> stateWords() {
    Map<PortState, StateWord> words = new EnumMap<>(PortState.class);
    for (PortState state : PortState.values()) {
      String key = "port-state." + state.name().toLowerCase(Locale.ROOT).replace('_', '-');
      words.put(state, new StateWord(wording.say(key + ".letter"), wording.say(key + ".word")));
    }
    return words;
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
