package wallbook.assess.copper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.conductor.CopperConductor;
import wallbook.assess.conductor.CopperConductors;
import wallbook.quantity.Length;
import wallbook.quantity.LinearResistance;
import wallbook.quantity.Resistance;
import wallbook.quantity.Temperature;
import wallbook.record.Cable;
import wallbook.record.LinkConfiguration;
import wallbook.record.RunTest;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Loop resistance of one pair of a run: measured where it was, else by gauge and length. */
final class PairLoop {
  private final CopperConductors conductors;
  private final Table parts;

  /** A loop resistance with what it rests on. */
  record Loop(Resistance resistance, List<Phrase> assumptions, Source source) {
    Loop {
      assumptions = List.copyOf(assumptions);
    }
  }

  PairLoop(Tables tables) {
    conductors = new CopperConductors(tables);
    parts = tables.table("pair-resistance");
  }

  /** The cable alone: {@code 2·r·L} at the run's temperature. The run must have a length. */
  Loop cable(PairRun run) {
    Cable cable = run.cable();
    Length length = run.length().orElseThrow();
    if (cable.gauge().isEmpty()) {
      Row greatest = parts.row("conductor");
      LinearResistance at20 = LinearResistance.ohmsPerMetre(greatest.number("ohm_per_100m") / 100);
      double factor = heat(run.temperature());
      return new Loop(
          at20.times(factor).over(length).times(2),
          List.of(Phrase.of("pairs.gauge-unknown", "resistance", at20)),
          greatest.source().and(conductors.source()));
    }
    int gauge = cable.gauge().get();
    boolean stranded = cable.stranded().orElse(false);
    CopperConductor conductor = stranded ? conductors.stranded(gauge) : conductors.solid(gauge);
    return new Loop(
        conductor.loopOver(length, run.temperature()),
        List.of(),
        stranded ? conductors.strandedSource() : conductors.source());
  }

  /**
   * The channel: link, connections and cords. A measured link is scaled from the 20 °C at which it
   * is taken to have been measured; one measured as a channel has its cords already.
   */
  Loop channel(PairRun run) {
    Optional<RunTest> measured = run.resistanceTest();
    Loop link = measured.map(test -> measured(run, test)).orElseGet(() -> withConnections(run));
    if (measured.filter(PairLoop::isChannel).isPresent()) {
      return link;
    }
    Row cord = parts.row("cord");
    Length cords = Length.metres(cord.number("metres"));
    Resistance ofCords =
        LinearResistance.ohmsPerMetre(cord.number("ohm_per_100m") / 100).over(cords).times(2);
    return plus(link, ofCords, Phrase.of("pairs.cord-resistance", "cords", cords), cord.source());
  }

  private Loop measured(PairRun run, RunTest test) {
    Resistance loop = test.loopResistance().orElseThrow();
    return new Loop(
        loop.times(heat(run.temperature())),
        List.of(Phrase.of("pairs.loop-as-measured", "resistance", loop, "date", test.date())),
        conductors.source());
  }

  private Loop withConnections(PairRun run) {
    Row connection = parts.row("connection");
    int count = (int) connection.number("count");
    Resistance ohms = Resistance.ohms(connection.number("ohm")).times(count);
    Phrase counted = Phrase.of("pairs.connections", "count", count);
    return plus(cable(run), ohms, counted, connection.source());
  }

  private static Loop plus(Loop loop, Resistance more, Phrase assumption, Source source) {
    List<Phrase> assumptions = new ArrayList<>(loop.assumptions());
    assumptions.add(assumption);
    return new Loop(loop.resistance().plus(more), assumptions, loop.source().and(source));
  }

  private static boolean isChannel(RunTest test) {
    return test.limit().filter(l -> l.configuration() == LinkConfiguration.CHANNEL).isPresent();
  }

  /** Resistance of copper at a temperature as a multiple of that at 20 °C, whatever the gauge. */
  private double heat(Temperature temperature) {
    CopperConductor any = conductors.solid(24);
    return any.resistanceAt(temperature).ratioTo(any.resistance());
  }
}
