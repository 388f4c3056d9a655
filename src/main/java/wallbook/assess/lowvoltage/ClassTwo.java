package wallbook.assess.lowvoltage;

import java.util.Optional;
import wallbook.quantity.Current;
import wallbook.quantity.Power;
import wallbook.quantity.Voltage;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/**
 * What a class 2 power source may be rated for on its nameplate, direct current (NEC chapter 9
 * table 11(B), as adopted locally): up to 20 V 5 A and five times the voltage in volt-amperes;
 * above, to 60 V, 100 VA and hence 100/V amperes. So 100 VA and 5 A do not hold together below 20
 * V.
 */
public final class ClassTwo {
  private final Table ranges;
  private final Table wet;

  public ClassTwo(Tables tables) {
    ranges = tables.table("class-2-limits");
    wet = tables.table("class-2-wet-contact");
  }

  /** Largest current at a voltage; empty above 60 V, where class 2 ends. */
  public Optional<Current> largestCurrent(Voltage voltage) {
    return range(voltage)
        .map(
            row ->
                row.numberIfAny("largest_a")
                    .orElseGet(() -> row.number("largest_va") / voltage.inVolts()))
        .map(Current::amperes);
  }

  /** Largest power at a voltage; empty above 60 V, where class 2 ends. */
  public Optional<Power> largestPower(Voltage voltage) {
    return range(voltage)
        .map(
            row ->
                row.numberIfAny("largest_va")
                    .orElseGet(() -> row.number("largest_va_per_v") * voltage.inVolts()))
        .map(Power::watts);
  }

  /** Voltage that class 2 ends at. */
  public Voltage largestVoltage() {
    return Voltage.volts(ranges.rows().get(ranges.rows().size() - 1).number("up_to_v"));
  }

  /** Largest direct voltage where wet contact is likely. */
  public Voltage wetContact() {
    return Voltage.volts(wet.row("direct").number("up_to_v"));
  }

  /** Where the ratings come from. */
  public Source source() {
    return ranges.source();
  }

  /** Where the wet-contact voltage comes from. */
  public Source wetContactSource() {
    return wet.source();
  }

  private Optional<Row> range(Voltage voltage) {
    if (voltage.inVolts() <= 0) {
      throw new IllegalArgumentException("class 2 ratings start above 0 V: " + voltage);
    }
    return ranges.rows().stream()
        .filter(
            row ->
                voltage.inVolts() > row.number("above_v")
                    && voltage.inVolts() <= row.number("up_to_v"))
        .findFirst();
  }
}
