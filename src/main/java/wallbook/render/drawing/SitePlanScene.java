package wallbook.render.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.compose.drawing.NamedOutline;
import wallbook.compose.drawing.PointM;
import wallbook.compose.drawing.SitePlan;

/** Lays out the grounds: every outdoor place with its tie lines to fixed corners of the house. */
final class SitePlanScene {
  private static final double MARGIN_MM = 12;
  private static final double CORNER_MM = 1.8;
  private static final double[] SHARES = {0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82};

  private final SitePlan plan;

  private SitePlanScene(SitePlan plan) {
    this.plan = plan;
  }

  static Scene draw(SitePlan plan) {
    SitePlanScene layout = new SitePlanScene(plan);
    List<PointM> seen =
        Stream.of(
                Stream.concat(plan.houses().stream(), plan.areas().stream())
                    .flatMap(named -> named.outline().corners().stream()),
                plan.corners().stream().map(SitePlan.FixedCorner::point),
                plan.marks().stream().map(SitePlan.SiteMark::point))
            .flatMap(points -> points)
            .toList();
    PlanSheet sheet =
        new PlanSheet(plan.frame(), plan.unit(), PlanView.ExtentM.of(seen), plan.north());
    for (Naming naming : Naming.values()) {
      Optional<Scene> drawn =
          sheet.draw(
              MARGIN_MM, naming.table(plan), (view, box) -> layout.attempt(view, box, naming));
      if (drawn.isPresent()) {
        return drawn.get();
      }
    }
    throw new IllegalStateException("no room on the sheet for this site");
  }

  /** How places and corners are named, the plainest first. */
  private enum Naming {
    /** Text at each. */
    TEXT,
    /** Numbers at the places, text at the corners. */
    PLACES_NUMBERED,
    /** Numbers at all. */
    ALL_NUMBERED,
    /** Numbers fixed to their symbols, for sites so full that numbers on leaders find no room. */
    TAGGED;

    /** What the numbers stand for. */
    private Optional<KeyTable> table(SitePlan plan) {
      if (this == TEXT) {
        return Optional.empty();
      }
      List<List<String>> rows = new ArrayList<>();
      plan.marks().stream().map(SitePlanScene::tableRow).forEach(rows::add);
      if (this != PLACES_NUMBERED) {
        plan.corners().forEach(corner -> rows.add(List.of(corner.name())));
      }
      return Optional.of(KeyTable.of(rows, plan.frame().widthMm(), plan.frame().maxHeightMm() / 2));
    }
  }

  private static List<String> tableRow(SitePlan.SiteMark mark) {
    List<String> row = new ArrayList<>(mark.label());
    mark.ties().forEach(tie -> row.add(tie.corner() + " " + tie.distance()));
    return row;
  }

  private Optional<Canvas> attempt(PlanView view, Box sheet, Naming naming) {
    Canvas canvas = new Canvas();
    List<Seg> lines = outlines(canvas, view);
    List<SymbolSpots.Wanted> wanted =
        plan.marks().stream()
            .map(mark -> view.at(mark.point()))
            .map(at -> new SymbolSpots.Wanted(at, at, new Pt(1, 0), new Pt(0, 1)))
            .toList();
    Optional<List<SymbolSpots.Placed>> placed =
        SymbolSpots.place(FloorPlanScene.paper(sheet), sheet, wanted, 0);
    if (placed.isEmpty()) {
      return Optional.empty();
    }
    List<SymbolSpots.Placed> spots = placed.get();
    List<Box> symbols = new ArrayList<>();
    spots.forEach(spot -> symbols.add(Symbols.box(spot.centre())));
    plan.corners().forEach(c -> symbols.add(Box.around(view.at(c.point()), CORNER_MM, CORNER_MM)));

    List<Box> taken = new ArrayList<>(symbols);
    List<List<String>> texts = new ArrayList<>();
    for (SitePlan.SiteMark mark : plan.marks()) {
      ellipse(canvas, view, mark);
      List<String> lost = ties(canvas, view, mark, taken, lines);
      texts.add(Stream.concat(mark.label().stream(), lost.stream()).toList());
    }
    List<TextBlock> labels = labels(texts, naming);
    List<Box> solid = taken.subList(symbols.size(), taken.size());
    List<LabelWish> wishes = Labels.wishes(symbols, labels);
    Optional<List<PlacedLabel>> places =
        naming == Naming.TAGGED
            ? Optional.of(Labels.tags(wishes))
            : LabelPlacer.place(new Surroundings(sheet, solid, lines), wishes);
    if (places.isEmpty()) {
      return Optional.empty();
    }
    spots.forEach(spot -> spot.drawTie(canvas));
    places.get().forEach(place -> place.leader().ifPresent(canvas::leader));
    for (int i = 0; i < symbols.size(); i++) {
      if (i < spots.size()) {
        canvas.symbol(plan.marks().get(i).symbol(), spots.get(i).centre());
        canvas.touch(plan.marks().get(i).target(), symbols.get(i), places.get().get(i).box());
      } else {
        canvas.box(Ink.SOLID, symbols.get(i));
      }
      Labels.draw(canvas, labels.get(i), places.get().get(i), symbols.get(i).centre());
    }
    for (PlacedLabel place : places.get()) {
      taken.add(place.box());
      place.leader().ifPresent(lines::add);
    }
    names(canvas, view, taken, lines);
    return Optional.of(canvas);
  }

  /** What stands at each place, then at each corner. */
  private List<TextBlock> labels(List<List<String>> texts, Naming naming) {
    if (naming == Naming.ALL_NUMBERED || naming == Naming.TAGGED) {
      return Labels.numbers(texts.size() + plan.corners().size());
    }
    List<TextBlock> labels =
        new ArrayList<>(naming == Naming.TEXT ? Labels.texts(texts) : Labels.numbers(texts.size()));
    plan.corners()
        .forEach(
            corner ->
                labels.add(TextBlock.wrapped(List.of(corner.name()), Item.Type.LABEL_BOLD, 24)));
    return labels;
  }

  private List<Seg> outlines(Canvas canvas, PlanView view) {
    List<Seg> lines = new ArrayList<>();
    Ink area = Ink.THIN.dashed(Ink.Dash.DASHED);
    for (NamedOutline outdoors : plan.areas()) {
      List<Pt> polygon = view.polygon(outdoors.outline());
      canvas.polygon(area, polygon);
      canvas.touch(outdoors.target(), polygon);
      lines.addAll(Polygons.sides(polygon));
    }
    for (NamedOutline house : plan.houses()) {
      List<Pt> polygon = view.polygon(house.outline());
      canvas.polygon(Ink.WALL.filled(Ink.Tone.PALE), polygon);
      lines.addAll(Polygons.sides(polygon));
    }
    return lines;
  }

  private static void ellipse(Canvas canvas, PlanView view, SitePlan.SiteMark mark) {
    mark.ellipse()
        .ifPresent(
            ellipse ->
                canvas.oval(
                    Ink.THIN.dashed(Ink.Dash.SHORT),
                    view.at(mark.point()),
                    view.scale().mm(ellipse.semiMajorM()),
                    view.scale().mm(ellipse.semiMinorM()),
                    -ellipse.majorAxisDeg()));
  }

  /** Draws the tie lines of a place; returns the distances that found no room on their line. */
  private List<String> ties(
      Canvas canvas, PlanView view, SitePlan.SiteMark mark, List<Box> taken, List<Seg> lines) {
    List<String> lost = new ArrayList<>();
    for (SitePlan.Tie tie : mark.ties()) {
      PointM corner =
          plan.corners().stream()
              .filter(fixed -> fixed.name().equals(tie.corner()))
              .findFirst()
              .orElseThrow()
              .point();
      Seg line = new Seg(view.at(corner), view.at(mark.point()));
      canvas.line(Ink.THIN.dashed(Ink.Dash.CHAIN), line.a(), line.b());
      lines.add(line);
      if (!write(canvas, line, PlainText.clean(tie.distance()), taken)) {
        lost.add(tie.corner() + " " + tie.distance());
      }
    }
    return lost;
  }

  /** Writes a distance into a gap of its tie line where nothing else stands. */
  private static boolean write(Canvas canvas, Seg line, String text, List<Box> taken) {
    Item.Type type = Item.Type.SMALL;
    Pt along = line.b().minus(line.a()).unit();
    double turn = Math.toDegrees(Math.atan2(along.y(), along.x()));
    turn = turn > 89.999 ? turn - 180 : turn < -90.001 ? turn + 180 : turn;
    double radians = Math.toRadians(turn);
    Pt down = new Pt(-Math.sin(radians), Math.cos(radians)).times(TextMeasure.midMm(type));
    double half = TextMeasure.widthMm(text, type) / 2 + 0.6;
    for (double share : SHARES) {
      Pt middle = line.a().toward(line.b(), share);
      Item.Words words = new Item.Words(middle.plus(down), text, type, Item.Align.CENTRE, turn);
      Box clear = words.bounds().grown(0.4);
      boolean fits = line.length() * Math.min(share, 1 - share) > half + 1;
      if (fits && taken.stream().noneMatch(clear::overlaps)) {
        Pt across = new Pt(-along.y(), along.x()).times(1.3);
        Pt end = along.times(half);
        canvas.polygon(
            new Ink(0, Ink.Tone.NONE, Ink.Tone.WHITE, Ink.Dash.SOLID),
            List.of(
                middle.minus(end).minus(across),
                middle.plus(end).minus(across),
                middle.plus(end).plus(across),
                middle.minus(end).plus(across)));
        canvas.words(words);
        taken.add(words.bounds());
        return true;
      }
    }
    return false;
  }

  private void names(Canvas canvas, PlanView view, List<Box> taken, List<Seg> lines) {
    List<NamedOutline> named =
        Stream.concat(plan.houses().stream(), plan.areas().stream())
            .filter(outline -> !outline.name().isBlank())
            .toList();
    List<Seg> ties = List.copyOf(lines);
    for (NamedOutline outline : named) {
      RoomNames.place(outline.name(), view.polygon(outline.outline()), taken, ties)
          .ifPresent(
              name -> {
                name.draw(canvas);
                taken.add(name.box());
              });
    }
  }
}
