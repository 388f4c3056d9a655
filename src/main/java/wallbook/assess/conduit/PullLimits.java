package wallbook.assess.conduit;

import java.util.Optional;
import wallbook.assess.conductor.CopperConductors;
import wallbook.quantity.Area;
import wallbook.quantity.Force;
import wallbook.record.Cable;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Standing;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/**
 * Largest pulling tension of a cable: by its own description; else for four balanced pairs by the
 * standard; else for speaker, control and supply cable by its copper. Fibre and coax without a
 * description have none: they differ too much by construction.
 */
public final class PullLimits {
  private static final Source DESCRIBED =
      new Source("largest tension in the cable's description", Standing.CONFIRMED);

  /** A circular mil: the area of a circle one thousandth of an inch across. */
  private static final Area CIRCULAR_MIL = Area.squareInches(Math.PI / 4 * 1e-6);

  private final Table limits;
  private final CopperConductors copper;

  public PullLimits(Tables tables) {
    this.limits = tables.table("pulling-limits");
    this.copper = new CopperConductors(tables);
  }

  /** A limit and where it comes from. */
  public record Limit(Force tension, Source source) {}

  /** The limit of one cable; empty if none is known. */
  public Optional<Limit> of(Cable cable) {
    if (cable.maximumTension().isPresent()) {
      return cable.maximumTension().map(tension -> new Limit(tension, DESCRIBED));
    }
    return switch (cable.medium()) {
      case BALANCED_PAIR -> cable.pairs().filter(pairs -> pairs == 4).map(pairs -> fourPairs());
      case SPEAKER, CONTROL, POWER ->
          cable.gauge().flatMap(awg -> cable.conductors().map(count -> byCopper(awg, count)));
      case FIBRE, COAX -> Optional.empty();
    };
  }

  private Limit fourPairs() {
    Row row = limits.row("four-pair");
    return new Limit(Force.poundsForce(row.number("limit_lbf")), row.source());
  }

  /**
   * Tension that the copper of a cable bears, pulled by its conductors: {@code 0.008 lbf · circular
   * mils · conductors}.
   *
   * @param awg gauge of each conductor
   */
  public Limit byCopper(int awg, int conductors) {
    Row row = limits.row("copper");
    double circularMils = copper.solid(awg).area().ratioTo(CIRCULAR_MIL) * conductors;
    return new Limit(
        Force.poundsForce(row.number("lbf_per_circular_mil") * circularMils), row.source());
  }
}
