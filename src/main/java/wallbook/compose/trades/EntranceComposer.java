package wallbook.compose.trades;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.compose.Composition;
import wallbook.compose.disclosure.Part;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.figure.SectionDrawing;
import wallbook.compose.trades.EntranceView.Line;
import wallbook.compose.trades.EntranceView.Point;
import wallbook.compose.trades.EntranceView.SpareConduit;
import wallbook.record.Cable;
import wallbook.record.Conduit;
import wallbook.record.FibreClass;
import wallbook.record.Head;
import wallbook.record.HeadKind;
import wallbook.record.Run;
import wallbook.record.RunEnd;

/**
 * Composes the service provider's sheet: where his line ends, the conduit kept for it, and what its
 * fibre may be joined to.
 */
public final class EntranceComposer {
  private static final List<String> CONDUIT_QUESTIONS =
      List.of(
          "conduit.clear",
          "conduit.bore",
          "conduit.fill.flat-40",
          "conduit.largest-head",
          "conduit.head.sc-simplex",
          "conduit.head.lc-duplex",
          "conduit.bends.tia-569",
          "conduit.section-length.tia-569",
          "conduit.bend-radius.nec");

  private final TradeSheet sheet;
  private final SectionDrawing sections;

  public EntranceComposer(Composition composition) {
    this.sheet = new TradeSheet(composition);
    this.sections = new SectionDrawing(sheet.job, sheet.assessments, sheet.wording);
  }

  /** The sheet. */
  public EntranceView compose() {
    List<Head> heads =
        sheet.job.heads().stream().filter(h -> h.kind() == HeadKind.DEMARCATION).toList();
    return new EntranceView(
        sheet.head(Part.ENTRANCE.toCall()),
        heads.stream().map(this::point).toList(),
        sheet.job.conduits().stream()
            .filter(conduit -> reaches(conduit, heads))
            .map(this::conduit)
            .toList(),
        fibre(),
        sheet.job.runs().stream().anyMatch(this::isSingleMode),
        sheet.assumed(),
        sheet.sources.list(sheet.wording));
  }

  private Point point(Head head) {
    List<Line> lines = new ArrayList<>();
    for (Run run : sheet.job.runsAt(head)) {
      if (!sheet.discretion.isPrivate(run)) {
        lines.add(line(run, head));
      }
    }
    return new Point(
        head.name(),
        sheet.describe.where(head),
        sheet.discretion.tellable(head.note()),
        head.panels().stream()
            .filter(panel -> sheet.discretion.isTellable(panel.name()))
            .map(
                panel ->
                    sheet.say(
                        "entrance.panel",
                        "id",
                        panel.id(),
                        "name",
                        panel.name(),
                        "ports",
                        panel.ports()))
            .toList(),
        lines);
  }

  private Line line(Run run, Head head) {
    boolean begins = run.from().head().equals(Optional.of(head.id()));
    RunEnd here = begins ? run.from() : run.to();
    RunEnd other = begins ? run.to() : run.from();
    return new Line(
        run.label(),
        sheet.describe.cable(run),
        sheet.describe.shortEnd(here) + ", " + sheet.describe.finish(here),
        sheet.end(other),
        run.length().map(sheet.wording::print).orElseGet(sheet::notRecorded),
        sheet.describe.state(run),
        sheet.describe.tested(run));
  }

  private static boolean reaches(Conduit conduit, List<Head> heads) {
    return Stream.of(conduit.from(), conduit.to())
        .flatMap(end -> end.head().stream())
        .anyMatch(id -> heads.stream().anyMatch(head -> head.id().equals(id)));
  }

  private SpareConduit conduit(Conduit conduit) {
    List<String> answers = new ArrayList<>(sheet.lines(conduit.id(), CONDUIT_QUESTIONS));
    sheet.job.cables().stream()
        .filter(EntranceComposer::isSingleMode)
        .forEach(
            cable ->
                answers.addAll(
                    sheet.lines(
                        conduit.id(),
                        List.of(
                            "conduit.more." + cable.id() + ".flat-40",
                            "conduit.pull." + cable.id() + ".dry"))));
    return new SpareConduit(
        conduit.label(),
        conduit.name(),
        sections.of(conduit).map(Drawing.class::cast),
        sheet.conduits.facts(conduit).stream()
            .filter(fact -> sheet.discretion.isTellable(fact.value()))
            .toList(),
        sheet.conduits.path(conduit),
        answers);
  }

  /** One result for each question and answer: the house's fibres of a class answer alike. */
  private List<String> fibre() {
    Map<String, Assessment> alike = new LinkedHashMap<>();
    for (Run run : sheet.job.runs()) {
      Stream.concat(
              sheet.assessments.of(run.id(), "fibre.pon.").stream(),
              sheet.assessments.of(run.id(), "fibre.join.").stream())
          .forEach(
              a ->
                  alike.putIfAbsent(
                      (a.topic().startsWith("fibre.pon.") ? run.id() : "")
                          + a.topic()
                          + a.verdict()
                          + a.value(),
                      a));
    }
    return alike.values().stream().map(sheet::line).toList();
  }

  private boolean isSingleMode(Run run) {
    return isSingleMode(sheet.job.cableOf(run));
  }

  private static boolean isSingleMode(Cable cable) {
    return cable.fibreClass().filter(FibreClass::isSingleMode).isPresent();
  }
}
