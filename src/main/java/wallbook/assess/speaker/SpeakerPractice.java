package wallbook.assess.speaker;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Factor;
import wallbook.quantity.Length;
import wallbook.quantity.Ratio;
import wallbook.quantity.Resistance;
import wallbook.record.Zone;
import wallbook.record.ZoneKind;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/** The figures that speaker lines are judged by, as the reference tables have them. */
final class SpeakerPractice {
  private static final String USUAL_LOAD = "amplifier-least-load";

  private final Table practice;
  private final Table zones;
  private final Table volumeControls;
  private final List<LossLimit> limits;
  private final List<Row> nominalLoads;
  private final List<Integer> extensionGauges;

  SpeakerPractice(Tables tables) {
    practice = tables.table("speaker-practice");
    zones = tables.table("speaker-zones");
    volumeControls = tables.table("volume-control-settings");
    limits = tables.table("speaker-loss-limits").rows().stream().map(LossLimit::of).toList();
    nominalLoads = tables.table("speaker-nominal-loads").rows();
    extensionGauges =
        tables.table("speaker-extension-gauges").rows().stream()
            .map(row -> Integer.valueOf(row.text("awg")))
            .toList();
  }

  List<LossLimit> limits() {
    return limits;
  }

  /** Rows of nominal loads: name {@code load}, {@code load_ohm}. */
  List<Row> nominalLoads() {
    return nominalLoads;
  }

  /** Gauges in AWG, the thinnest first. */
  List<Integer> extensionGauges() {
    return extensionGauges;
  }

  /** Least load of a zone's amplifier: what the record states, else what is usual. */
  Resistance leastLoad(Zone zone) {
    return stated(zone)
        .orElseGet(() -> Resistance.ohms(practice.row(USUAL_LOAD).number("value_ohm")));
  }

  /** Least load that the record states for a zone's amplifier. */
  Optional<Resistance> stated(Zone zone) {
    return zone.amplifierMinimum().filter(z -> z.inOhms() > 0);
  }

  /** Where {@link #leastLoad} comes from. */
  Source leastLoadSource(Zone zone) {
    return practice.row(stated(zone).isPresent() ? "amplifier-stated-load" : USUAL_LOAD).source();
  }

  /** Load that amplifiers' damping factors are stated for. */
  Resistance dampingReference() {
    return Resistance.ohms(practice.row("damping-reference-load").number("value_ohm"));
  }

  Factor leastDamping() {
    return Factor.of(practice.row("damping-least").number("value_factor"));
  }

  Source dampingSource() {
    return practice.row("damping-least").source();
  }

  boolean judgesDamping(ZoneKind kind) {
    return zones.row(kind.word()).yes("damping_judged");
  }

  /** Most that the taps of a constant-voltage line may be of the amplifier's rating. */
  Ratio tapsOfAmplifier() {
    return Ratio.percent(practice.row("taps-of-amplifier").number("value_percent"));
  }

  Source tapsSource() {
    return practice.row("taps-of-amplifier").source();
  }

  /** Length beyond which resistance alone no longer describes a line. */
  Length resistanceRulesTo() {
    return Length.feet(practice.row("resistance-rules-to").number("value_ft"));
  }

  /** Multiples of the load that a volume control can be set to, rising from 1. */
  List<Double> volumeControlSettings() {
    return volumeControls.rows().stream().map(row -> row.number("multiple")).toList();
  }

  Source volumeControlSource() {
    return volumeControls.source();
  }
}
