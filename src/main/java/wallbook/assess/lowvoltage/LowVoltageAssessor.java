package wallbook.assess.lowvoltage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.assess.wire.Wire;
import wallbook.assess.wire.WireUse;
import wallbook.assess.wire.Wires;
import wallbook.quantity.Current;
import wallbook.quantity.Voltage;
import wallbook.record.Feed;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Assesses every run that may feed shades, keypads, sensors or other equipment with low-voltage
 * direct current. Where the record states no load, the drop is not stated, and the largest load
 * that each usual supply brings is given instead.
 *
 * <p>Topics, all beginning with {@code dc.}; {@code .doubled} marks the same with the cable's other
 * conductors joined:
 *
 * <ul>
 *   <li>{@code drop.<limit>}, {@code longest.<limit>}, {@code end-voltage}: of a load stated
 *   <li>{@code load.<limit>}: largest current at the voltage stated; {@code load.<limit>.12-v} and
 *       {@code .24-v} at usual supplies
 *   <li>{@code class-2}, {@code wet-contact}: of the source
 *   <li>{@code drop} without more: nothing can be said of the drop, and why
 * </ul>
 */
public final class LowVoltageAssessor {
  private final Wires wires;
  private final ClassTwo classTwo;
  private final Table supplies;
  private final FeedAssessor feeds;
  private final LoadAssessor loads;
  private final SourceAssessor sources;
  private final Source dropSource;

  public LowVoltageAssessor(Tables tables) {
    wires = new Wires(tables);
    classTwo = new ClassTwo(tables);
    supplies = tables.table("dc-supplies");
    Table drops = tables.table("dc-drop-limits");
    List<DropLimit> limits = drops.rows().stream().map(DropLimit::of).toList();
    dropSource = drops.source();
    feeds = new FeedAssessor(limits);
    loads = new LoadAssessor(limits, classTwo);
    sources = new SourceAssessor(classTwo);
  }

  /** What is to be said of the low-voltage feeds of a job, in the order of its runs. */
  public List<Assessment> assess(Job job) {
    List<Assessment> all = new ArrayList<>();
    job.runs().forEach(run -> all.addAll(assess(job, run)));
    return List.copyOf(all);
  }

  /** What is to be said of one run; nothing if it may not feed anything. */
  public List<Assessment> assess(Job job, Run run) {
    return WireUse.forSupply(job, run) ? of(job, run) : List.of();
  }

  private List<Assessment> of(Job job, Run run) {
    Optional<Phrase> unusable = Wires.unusable(run);
    if (unusable.isPresent()) {
      return List.of(headline(run).limitedBy(unusable.get()).verdict(Verdict.BEYOND, dropSource));
    }
    Wire wire = wires.of(job, run);
    Optional<Feed> feed = run.feed().filter(f -> f.voltage().inVolts() > 0);
    int perPole = Math.max(1, feed.flatMap(Feed::conductorsInParallel).orElse(1));
    SupplyPath path = SupplyPath.of(wire, perPole);
    List<Phrase> missing = new ArrayList<>(wire.missing());
    if (wire.conductors().filter(there -> there < 2 * perPole).isPresent()) {
      missing.add(
          Phrase.of(
              "wire.missing.conductors", "needed", 2 * perPole, "there", wire.conductors().get()));
    }
    boolean computable = missing.isEmpty();
    if (feed.isEmpty()) {
      missing.add(Phrase.of("dc.missing.feed"));
    } else if (Demand.of(feed.get()).isEmpty()) {
      missing.add(Phrase.of("dc.missing.load"));
    }
    List<Assessment> all = new ArrayList<>();
    if (!missing.isEmpty()) {
      all.add(headline(run).notStated(missing, dropSource));
    }
    if (computable) {
      all.addAll(over(path, feed));
      if (!WireUse.needsPairForSignal(job, run)) {
        path.doubled().ifPresent(more -> all.addAll(over(more, feed)));
      }
    }
    feed.ifPresent(
        f -> all.addAll(sources.assess(job, run, f.voltage(), drawn(path, f, computable))));
    return all;
  }

  private List<Assessment> over(SupplyPath path, Optional<Feed> feed) {
    List<Assessment> all = new ArrayList<>();
    if (feed.isPresent()) {
      Voltage supply = feed.get().voltage();
      Demand.of(feed.get()).ifPresent(demand -> all.addAll(feeds.assess(path, supply, demand)));
      all.addAll(loads.assess(path, supply, ""));
    } else {
      for (Row row : supplies.rows()) {
        Voltage supply = Voltage.volts(row.number("voltage_v"));
        all.addAll(loads.assess(path, supply, "." + row.text("supply")));
      }
    }
    return all;
  }

  /** Current at the source: as the line has it, or as the record states it. */
  private static Optional<Current> drawn(SupplyPath path, Feed feed, boolean computable) {
    Optional<Demand> demand = Demand.of(feed);
    return computable
        ? demand.flatMap(d -> d.over(path.at(feed.voltage())))
        : demand.flatMap(Demand::current);
  }

  private static Assessment.Builder headline(Run run) {
    return Assessment.of(run.id(), "dc.drop", Phrase.of("dc.asked.any"));
  }
}
