package wallbook.assess.copper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wallbook.record.LinkConfiguration;
import wallbook.record.PairCategory;
import wallbook.record.PairParameter;
import wallbook.record.TestStandard;
import wallbook.reference.Row;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/**
 * The limit lines of balanced-pair links and channels: insertion loss, crosstalk and return loss of
 * ANSI/TIA-568.2-D for Category 5e, 6 and 6A, insertion loss of ISO/IEC 11801-1 for classes D, E
 * and EA. Category 8 is not there: its lines could not be confirmed.
 */
public final class LimitLines {
  private final Table losses;
  private final Table crosstalk;
  private final Table logLines;

  public LimitLines(Tables tables) {
    losses = tables.table("pair-insertion-loss");
    crosstalk = tables.table("pair-crosstalk");
    logLines = tables.table("pair-log-lines");
  }

  /** The line of a quantity; empty if the reference tables have none. */
  public Optional<LimitLine> line(
      TestStandard standard,
      PairCategory category,
      LinkConfiguration configuration,
      PairParameter parameter) {
    List<LimitLine.Piece> pieces = new ArrayList<>();
    if (parameter == PairParameter.INSERTION_LOSS) {
      losses
          .find(standard.word(), category.word(), configuration.word())
          .map(row -> piece(row, LineShape.InsertionLoss::of))
          .ifPresent(pieces::add);
    }
    crosstalk
        .find(standard.word(), category.word(), configuration.word(), parameter.word())
        .map(row -> piece(row, LineShape.VoltageSum::of))
        .ifPresent(pieces::add);
    logLines.rows().stream()
        .filter(row -> row.text("standard").equals(standard.word()))
        .filter(row -> row.text("category").equals(category.word()))
        .filter(row -> row.text("configuration").equals(configuration.word()))
        .filter(row -> row.text("parameter").equals(parameter.word()))
        .map(row -> piece(row, LineShape.LogLine::of))
        .forEach(pieces::add);
    return pieces.isEmpty() ? Optional.empty() : Optional.of(new LimitLine(parameter, pieces));
  }

  private static LimitLine.Piece piece(Row row, Function<Row, LineShape> shape) {
    return new LimitLine.Piece(
        row.number("from_mhz"), row.number("to_mhz"), shape.apply(row), row.source());
  }
}
