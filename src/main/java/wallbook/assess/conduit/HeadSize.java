package wallbook.assess.conduit;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Diameter;
import wallbook.quantity.Length;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Tables;

/**
 * Size of a connector that may have to pass through a conduit; from the reference table {@code
 * connector-heads}.
 *
 * @param name key of the table
 * @param width across the cable
 * @param height across the cable, at right angles to the width
 * @param stiffLength along the cable, of the part that does not bend, where known
 * @param round whether it is round, of diameter {@code width}
 */
public record HeadSize(
    String name,
    Diameter width,
    Diameter height,
    Optional<Length> stiffLength,
    boolean round,
    Source source) {

  /** Every connector of the table, in its order. */
  public static List<HeadSize> all(Tables tables) {
    return tables.table("connector-heads").rows().stream().map(HeadSize::of).toList();
  }

  private static HeadSize of(Row row) {
    return new HeadSize(
        row.text("head"),
        Diameter.millimetres(row.number("width_mm")),
        Diameter.millimetres(row.number("height_mm")),
        row.numberIfAny("stiff_length_mm").stream().boxed().map(Length::millimetres).findFirst(),
        row.yes("round"),
        row.source());
  }

  /**
   * Diameter of the smallest straight bore it passes alone: {@code √(a² + b²)}, or its own if
   * round.
   */
  public Diameter diagonal() {
    return round ? width : Diameter.metres(Math.hypot(width.inMetres(), height.inMetres()));
  }
}
