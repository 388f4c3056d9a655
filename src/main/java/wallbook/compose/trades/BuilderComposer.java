package wallbook.compose.trades;

import java.util.List;
import java.util.Optional;
import wallbook.compose.Composition;
import wallbook.compose.ExceptionText;
import wallbook.compose.disclosure.Part;
import wallbook.compose.trades.BuilderView.ConduitRow;
import wallbook.compose.trades.BuilderView.ExceptionRow;
import wallbook.compose.trades.BuilderView.Row;
import wallbook.record.Conduit;
import wallbook.record.ConduitCondition;
import wallbook.record.ExceptionItem;
import wallbook.record.Place;
import wallbook.record.PlaceKind;
import wallbook.record.Space;

/** Composes the builder's sheet: what stays covered, what was sealed, what is not as promised. */
public final class BuilderComposer {
  private final TradeSheet sheet;
  private final ExceptionText exceptions;

  public BuilderComposer(Composition composition) {
    this.sheet = new TradeSheet(composition);
    this.exceptions = new ExceptionText(sheet.wording);
  }

  /** The sheet. */
  public BuilderView compose() {
    return new BuilderView(
        sheet.head(Part.BUILDER.toCall()),
        sheet.job.spaces().stream().map(this::wall).flatMap(Optional::stream).toList(),
        places(PlaceKind.BLANK_PLATE),
        places(PlaceKind.IN_WALL_COIL),
        sheet.job.conduits().stream().map(this::seal).flatMap(Optional::stream).toList(),
        sheet.job.conduits().stream()
            .filter(BuilderComposer::isDoubtful)
            .map(this::conduit)
            .toList(),
        sheet.job.exceptions().stream()
            .filter(exception -> !sheet.discretion.isPrivate(exception))
            .map(this::exception)
            .toList());
  }

  private Optional<Row> wall(Space space) {
    return sheet
        .discretion
        .tellable(space.note())
        .map(note -> new Row(space.name(), sheet.job.floor(space.floor()).name(), note));
  }

  private List<Row> places(PlaceKind kind) {
    return sheet.job.places().stream()
        .filter(place -> place.kind() == kind && !sheet.discretion.isPrivate(place))
        .map(this::place)
        .toList();
  }

  private Row place(Place place) {
    return new Row(
        place.label().map(l -> place.name() + " (" + l + ")").orElse(place.name()),
        sheet.job.space(place.space()).name() + ", " + sheet.describe.where(place),
        sheet.discretion.tellable(place.note()).orElse(TradeSheet.NONE));
  }

  private Optional<Row> seal(Conduit conduit) {
    return sheet
        .discretion
        .tellable(conduit.firestop())
        .map(seal -> new Row(name(conduit), ends(conduit), seal));
  }

  private String name(Conduit conduit) {
    return sheet.discretion.isTellable(conduit.name())
        ? conduit.label() + ", " + conduit.name()
        : conduit.label();
  }

  private String ends(Conduit conduit) {
    return sheet.end(conduit.from()) + " – " + sheet.end(conduit.to());
  }

  private static boolean isDoubtful(Conduit conduit) {
    return conduit.condition() != ConduitCondition.CLEAR || conduit.proved().isEmpty();
  }

  private ConduitRow conduit(Conduit conduit) {
    return new ConduitRow(
        conduit.label(),
        sheet.name(conduit),
        sheet.end(conduit.from()),
        sheet.end(conduit.to()),
        sheet.describe.word(conduit.condition()) + "; " + sheet.conduits.proof(conduit),
        sheet.discretion.tellable(conduit.note()).orElse(TradeSheet.NONE));
  }

  private ExceptionRow exception(ExceptionItem exception) {
    return new ExceptionRow(
        exception.what(),
        sheet.describe.word(exception.kind()),
        sheet.discretion.tellable(exception.standsIn()),
        exceptions.state(exception),
        sheet.discretion.tellable(exception.note()));
  }
}
