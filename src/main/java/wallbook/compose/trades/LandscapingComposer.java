package wallbook.compose.trades;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.compose.Composition;
import wallbook.compose.disclosure.Part;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.drawing.SitePlan;
import wallbook.compose.figure.PlanDrawings;
import wallbook.compose.figure.SitePlanDrawing;
import wallbook.compose.trades.LandscapingView.Buried;
import wallbook.compose.trades.LandscapingView.Duct;
import wallbook.compose.trades.LandscapingView.ExteriorEnd;
import wallbook.record.Coil;
import wallbook.record.Conduit;
import wallbook.record.ConduitEnd;
import wallbook.record.Place;
import wallbook.record.PlaceKind;
import wallbook.record.Run;
import wallbook.record.RunEnvironment;
import wallbook.record.Space;
import wallbook.record.StubOut;
import wallbook.reference.Tables;

/** Composes the landscaper's sheet: what comes out of the house and what lies in the ground. */
public final class LandscapingComposer {
  private static final List<String> PLACE_QUESTIONS = List.of("location.error");
  private static final List<String> COVER_QUESTIONS =
      List.of("outdoor.cover", "outdoor.cover-to-lay.garden", "outdoor.cover-to-lay.driveway");

  /** Leaves room for the warning above and the symbols beneath. */
  private static final double PLAN_MM = 157;

  private final TradeSheet sheet;
  private final Tables tables;
  private final FurtherWire further;

  /**
   * @param tables of the ties' sureness
   */
  public LandscapingComposer(Composition composition, Tables tables) {
    this.sheet = new TradeSheet(composition);
    this.tables = tables;
    this.further = new FurtherWire(sheet);
  }

  /** The sheet. */
  public LandscapingView compose() {
    Optional<SitePlan> plan =
        new SitePlanDrawing(sheet.job, sheet.wording, tables).of(this::isOnPlan, PLAN_MM);
    PlanDrawings drawings = new PlanDrawings(sheet.job, sheet.wording);
    return new LandscapingView(
        sheet.head(Part.LANDSCAPING.toCall()),
        plan.map(Drawing.class::cast),
        plan.map(p -> drawings.legend(p.marks().stream().map(SitePlan.SiteMark::symbol).toList())),
        stubOuts().map(this::end).toList(),
        sheet.job.conduits().stream().filter(this::isOutside).map(this::duct).toList(),
        sheet.job.runs().stream()
            .filter(run -> run.environments().contains(RunEnvironment.BURIED))
            .filter(run -> run.conduits().isEmpty())
            .map(this::buried)
            .toList(),
        sheet.assumed(),
        sheet.sources.list(sheet.wording));
  }

  private Stream<StubOut> stubOuts() {
    return sheet.job.stubOuts().stream()
        .filter(stubOut -> !sheet.discretion.isPrivate(sheet.job.place(stubOut.place())));
  }

  /** Stub-outs and pull boxes; other things outdoors are no business of the garden's. */
  private boolean isOnPlan(Place place) {
    boolean stubOut = stubOuts().anyMatch(s -> s.place().equals(place.id()));
    return !sheet.discretion.isPrivate(place) && (stubOut || place.kind() == PlaceKind.PULL_BOX);
  }

  private ExteriorEnd end(StubOut stubOut) {
    Place place = sheet.job.place(stubOut.place());
    List<FactLines> facts = new ArrayList<>();
    List<String> find = new ArrayList<>();
    sheet
        .said(place.id(), "location.tape")
        .or(() -> Optional.of(sheet.describe.where(place)).filter(where -> !where.isBlank()))
        .ifPresent(find::add);
    find.addAll(sheet.lines(place.id(), PLACE_QUESTIONS));
    fact(facts, "find", find);
    fact(facts, "coiled", stubOut.coiled().stream().map(this::coil).toList());
    fact(facts, "to-lay", toLay(stubOut).stream().toList());
    fact(facts, "obstacles", joined(stubOut.obstacles()));
    fact(facts, "cover", joined(sheet.lines(stubOut.id(), COVER_QUESTIONS)));
    fact(
        facts,
        "further",
        stubOut.coiled().stream()
            .flatMap(coil -> further.of(sheet.job.run(coil.run())).stream())
            .toList());
    fact(facts, "note", sheet.discretion.tellable(stubOut.note()).stream().toList());
    String area = sheet.job.space(place.space()).name();
    return new ExteriorEnd(
        place.name(),
        stubOut
            .zone()
            .map(zone -> sheet.job.zone(zone).name())
            .filter(zone -> !zone.equals(area))
            .map(zone -> sheet.say("landscaping.meant", "area", area, "zone", zone))
            .orElse(area),
        facts);
  }

  /** Short things in one line: the sheet is to be carried about, on few pages. */
  private static List<String> joined(List<String> lines) {
    return lines.isEmpty() ? List.of() : List.of(String.join("; ", lines));
  }

  private void fact(List<FactLines> facts, String name, List<String> lines) {
    if (!lines.isEmpty()) {
      facts.add(new FactLines(sheet.wording.say("landscaping.fact." + name), lines));
    }
  }

  private String coil(Coil coil) {
    Run run = sheet.job.run(coil.run());
    return sheet.say(
        "landscaping.coil",
        "length",
        coil.length(),
        "label",
        run.label(),
        "cable",
        sheet.describe.cable(run),
        "marks",
        marks(run));
  }

  private String marks(Run run) {
    List<String> marks =
        sheet.job.cableOf(run).outdoor().stream().map(sheet.describe::word).toList();
    return marks.isEmpty() ? sheet.wording.say("landscaping.no-marks") : String.join(", ", marks);
  }

  private Optional<String> toLay(StubOut stubOut) {
    return stubOut
        .lineStillToLay()
        .map(
            line ->
                sheet.say(
                    "landscaping.to-lay",
                    "line",
                    line,
                    "by",
                    stubOut.lineBy().map(sheet.describe::word).orElseGet(sheet::notRecorded)));
  }

  private boolean isOutside(Conduit conduit) {
    return Stream.of(conduit.from(), conduit.to())
        .map(this::space)
        .flatMap(Optional::stream)
        .anyMatch(space -> space.kind().isOutdoor());
  }

  private Optional<Space> space(ConduitEnd end) {
    return end.place()
        .map(id -> sheet.job.place(id).space())
        .or(() -> end.head().map(id -> sheet.job.head(id).space()))
        .or(end::space)
        .map(sheet.job::space);
  }

  private Duct duct(Conduit conduit) {
    return new Duct(
        conduit.label(),
        sheet.name(conduit),
        sheet.end(conduit.from()),
        sheet.end(conduit.to()),
        conduit.length().map(sheet.wording::print).orElseGet(sheet::notRecorded),
        sheet.describe.word(conduit.condition()));
  }

  /** A cable to a watching thing is in the ground all the same, but keeps its label. */
  private Buried buried(Run run) {
    return new Buried(
        sheet.discretion.isPrivate(run) ? TradeSheet.NONE : run.label(),
        sheet.end(run.from()),
        sheet.end(run.to()),
        run.length().map(sheet.wording::print).orElseGet(sheet::notRecorded));
  }
}
