package wallbook.assess.conductor;

import wallbook.quantity.Area;
import wallbook.quantity.Length;
import wallbook.quantity.LinearResistance;
import wallbook.quantity.Temperature;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Tables;

/**
 * Makes {@linkplain CopperConductor copper conductors} from their gauge, with the constants of the
 * reference table {@code copper-conductor}.
 *
 * <pre>{@code
 * new CopperConductors(tables).solid(23).resistanceAt(Temperature.celsius(45)) // 73.3 Ω/km
 * }</pre>
 */
public final class CopperConductors {
  /** 4/0; gauges 1/0, 2/0, 3/0 and 4/0 are 0, −1, −2 and −3. */
  private static final int LARGEST_AWG = -3;

  private static final int SMALLEST_AWG = 56;

  private final Row solid;
  private final Row stranded;

  public CopperConductors(Tables tables) {
    solid = tables.table("copper-conductor").row("solid");
    stranded = tables.table("copper-conductor").row("stranded");
  }

  /**
   * A solid conductor.
   *
   * @param awg American wire gauge, 56 to −3 (4/0)
   * @throws IllegalArgumentException for a gauge outside ASTM B258
   */
  public CopperConductor solid(int awg) {
    return of(solid, awg);
  }

  /**
   * A concentric-stranded conductor with the copper area of the gauge. Its resistance is 2 % above
   * the solid conductor's, for the lay of the strands; its diameter here is that of the solid
   * conductor, not of the strand.
   *
   * @param awg American wire gauge, 56 to −3 (4/0)
   * @throws IllegalArgumentException for a gauge outside ASTM B258
   */
  public CopperConductor stranded(int awg) {
    return of(stranded, awg);
  }

  /** Whether there is such a gauge: 56 to −3 (4/0). */
  public static boolean isGauge(int awg) {
    return awg >= LARGEST_AWG && awg <= SMALLEST_AWG;
  }

  /** Where the constants of solid conductors come from. */
  public Source source() {
    return solid.source();
  }

  /** Where the constants of stranded conductors come from. */
  public Source strandedSource() {
    return stranded.source();
  }

  private static CopperConductor of(Row constants, int awg) {
    Length diameter = diameter(constants, awg);
    Area area = Area.squareMillimetres(Math.PI / 4 * Math.pow(diameter.inMillimetres(), 2));
    double ohmsPerMetre =
        constants.number("resistance_factor")
            * constants.number("resistivity_ohm_mm2_per_m")
            / area.inSquareMillimetres();
    return new CopperConductor(
        diameter,
        area,
        LinearResistance.ohmsPerMetre(ohmsPerMetre),
        Temperature.celsius(constants.number("reference_celsius")),
        constants.number("coefficient_per_kelvin"));
  }

  /**
   * Diameter of a gauge: {@code d = 0.127 mm · 92^((36 − n)/39)} (ASTM B258), with n the gauge
   * number.
   */
  private static Length diameter(Row constants, int awg) {
    if (!isGauge(awg)) {
      throw new IllegalArgumentException("no American wire gauge " + awg);
    }
    double steps = (36 - awg) / constants.number("awg_steps");
    return Length.millimetres(
        constants.number("awg36_mm") * Math.pow(constants.number("awg_ratio"), steps));
  }
}
