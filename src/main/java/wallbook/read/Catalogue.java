package wallbook.read;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import wallbook.finding.SourcePosition;
import wallbook.quantity.Force;
import wallbook.quantity.Length;
import wallbook.quantity.LinearMass;
import wallbook.record.Cable;
import wallbook.record.CoaxSeries;
import wallbook.record.FibreClass;
import wallbook.record.Jacket;
import wallbook.record.Medium;
import wallbook.record.Origin;
import wallbook.record.OutdoorRating;
import wallbook.record.PairCategory;
import wallbook.record.Word;
import wallbook.reference.Row;
import wallbook.reference.Tables;

/** The built-in cable types, from the reference table {@code cable-catalogue}. */
final class Catalogue {
  private static final Origin ORIGIN =
      new Origin(new SourcePosition("cable-catalogue", 1, 1), Map.of());

  private Catalogue() {}

  static List<Cable> cables(Tables tables) {
    return tables.table("cable-catalogue").rows().stream().map(Catalogue::cable).toList();
  }

  private static Cable cable(Row row) {
    return new Cable(
        ORIGIN,
        row.text("id"),
        row.text("name"),
        word(Medium.class, row, "medium").orElseThrow(),
        word(PairCategory.class, row, "category"),
        whole(row, "pairs"),
        row.textIfAny("screened").map(t -> row.yes("screened")),
        word(FibreClass.class, row, "fibre_class"),
        whole(row, "fibres"),
        word(CoaxSeries.class, row, "coax"),
        whole(row, "gauge_awg"),
        whole(row, "conductors"),
        row.textIfAny("stranded").map(t -> row.yes("stranded")),
        number(row, "diameter_in").map(Length::inches),
        number(row, "weight_lb_per_1000ft").map(LinearMass::poundsPerThousandFeet),
        word(Jacket.class, row, "jacket"),
        row.textIfAny("outdoor")
            .map(t -> Arrays.stream(t.split(" ")).map(w -> find(OutdoorRating.class, w)).toList())
            .orElse(List.of()),
        number(row, "max_tension_lbf").map(Force::poundsForce),
        number(row, "bend_radius_in").map(Length::inches),
        Optional.empty());
  }

  private static Optional<Double> number(Row row, String column) {
    OptionalDouble number = row.numberIfAny(column);
    return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
  }

  private static Optional<Integer> whole(Row row, String column) {
    return row.textIfAny(column).map(Integer::valueOf);
  }

  private static <W extends Enum<W> & Word> Optional<W> word(
      Class<W> type, Row row, String column) {
    return row.textIfAny(column).map(text -> find(type, text));
  }

  private static <W extends Enum<W> & Word> W find(Class<W> type, String text) {
    return Arrays.stream(type.getEnumConstants())
        .filter(w -> w.word().equals(text))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalStateException(
                    "cable-catalogue: no " + type.getSimpleName() + " " + text));
  }
}
