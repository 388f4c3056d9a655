package wallbook.compose.disclosure;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import wallbook.record.Conduit;
import wallbook.record.ConduitEnd;
import wallbook.record.ExceptionItem;
import wallbook.record.Job;
import wallbook.record.JobRecord;
import wallbook.record.Photo;
import wallbook.record.Run;
import wallbook.record.RunTest;
import wallbook.record.StubOut;
import wallbook.record.SweepPoint;
import wallbook.record.Zone;

/**
 * A job as one reader may see it. What is kept from the reader is not in {@link #job()}: neither
 * the things themselves nor what refers to them, nor a note of something else that tells of them.
 */
public final class DisclosedJob {
  private final Job whole;
  private final Withheld withheld;
  private final Predicate<String> tellable;
  private final Job job;

  private DisclosedJob(Job whole, Withheld withheld, Predicate<String> tellable) {
    this.whole = whole;
    this.withheld = withheld;
    this.tellable = tellable;
    this.job = withheld.isEmpty() ? whole : without();
  }

  /**
   * The job as the reader may see it.
   *
   * @param tellable whether a free text names nothing that is kept from the reader; not asked if
   *     nothing is
   */
  public static DisclosedJob of(
      Job whole, DisclosureRules rules, Recipient recipient, Predicate<String> tellable) {
    return new DisclosedJob(whole, Withheld.of(whole, rules, recipient), tellable);
  }

  /** The job without what is kept from the reader. */
  public Job job() {
    return job;
  }

  /** Whether anything is kept from the reader. */
  public boolean withholdsSomething() {
    return !withheld.isEmpty();
  }

  /**
   * Runs kept from the reader, by id; a panel that is drawn must not call their ports free, nor a
   * conduit the room that they take.
   */
  public Set<String> withheldRuns() {
    return withheld.runs();
  }

  /** The whole job that this is a part of; for counting only. */
  public Job whole() {
    return whole;
  }

  private Job without() {
    JobRecord all = whole.record();
    JobRecord told =
        new JobRecord(
            all.origin(),
            all.format(),
            all.job(),
            all.floors(),
            all.spaces(),
            all.corners(),
            all.heads().stream().filter(h -> !withheld.heads().contains(h.id())).toList(),
            all.places().stream().filter(p -> !withheld.places().contains(p.id())).toList(),
            all.cables(),
            all.runs().stream().filter(r -> tells(r.id())).map(this::told).toList(),
            all.fibres().stream().filter(f -> tells(f.run())).toList(),
            all.conduits().stream()
                .filter(c -> !withheld.conduits().contains(c.id()))
                .map(this::told)
                .toList(),
            all.stubOuts().stream()
                .filter(s -> !withheld.places().contains(s.place()))
                .map(this::told)
                .toList(),
            all.tests().stream().filter(t -> tells(t.run())).toList(),
            all.zones().stream().map(this::told).toList(),
            all.systems().stream().filter(s -> !withheld.systems().contains(s.id())).toList(),
            all.exceptions().stream().filter(this::tells).toList(),
            all.photos().stream().filter(this::tells).toList(),
            all.provisions());
    told = new FreeTexts(tellable).of(told);
    Map<String, List<SweepPoint>> sweeps = new HashMap<>();
    for (RunTest test : told.tests()) {
      sweeps.put(test.id(), whole.sweepOf(test));
    }
    return new Job(told, List.copyOf(whole.cables()), sweeps, whole.pictures());
  }

  private boolean tells(String run) {
    return !withheld.runs().contains(run);
  }

  private boolean tells(ExceptionItem exception) {
    return tellable.test(exception.what())
        && none(exception.run(), withheld.runs())
        && none(exception.conduit(), withheld.conduits())
        && none(exception.place(), withheld.places())
        && none(exception.system(), withheld.systems());
  }

  /** A picture of a whole wall or room shows whatever hangs there, so only closer ones are told. */
  private boolean tells(Photo photo) {
    boolean close = photo.place().isPresent() || photo.head().isPresent();
    return close
        && !showsWithheldWall(photo)
        && none(photo.place(), withheld.places())
        && none(photo.head(), withheld.heads())
        && tellable.test(photo.caption());
  }

  private boolean showsWithheldWall(Photo photo) {
    Optional<String> space =
        photo.space().or(() -> photo.place().map(id -> whole.place(id).space()));
    return photo.wall().isPresent()
        && whole.places().stream()
            .filter(place -> withheld.places().contains(place.id()))
            .anyMatch(
                place ->
                    place.wall().equals(photo.wall()) && Optional.of(place.space()).equals(space));
  }

  private static boolean none(Optional<String> id, Set<String> withheld) {
    return id.filter(withheld::contains).isEmpty();
  }

  private Run told(Run run) {
    return new Run(
        run.origin(),
        run.id(),
        run.label(),
        run.cable(),
        run.from(),
        run.to(),
        run.length(),
        run.lengthBy(),
        run.condition(),
        run.darkReason(),
        run.system(),
        run.serves(),
        run.conduits().stream().filter(id -> !withheld.conduits().contains(id)).toList(),
        run.environments(),
        run.jacket(),
        run.hottest(),
        run.bundle(),
        run.feed(),
        run.standIn().filter(this::tells),
        run.note());
  }

  private Conduit told(Conduit conduit) {
    return new Conduit(
        conduit.origin(),
        conduit.id(),
        conduit.label(),
        conduit.name(),
        conduit.type(),
        conduit.tradeSize(),
        conduit.bore(),
        told(conduit.from()),
        told(conduit.to()),
        conduit.length(),
        conduit.path(),
        conduit.contents().stream().filter(this::tells).toList(),
        conduit.pullString(),
        conduit.proved(),
        conduit.condition(),
        conduit.spare(),
        conduit.purpose(),
        conduit.firestop(),
        conduit.note());
  }

  /** An end at something kept from the reader is told by its space alone. */
  private ConduitEnd told(ConduitEnd end) {
    Optional<String> space =
        end.place()
            .filter(withheld.places()::contains)
            .map(id -> whole.place(id).space())
            .or(
                () ->
                    end.head()
                        .filter(withheld.heads()::contains)
                        .map(id -> whole.head(id).space()));
    return space.isEmpty()
        ? end
        : new ConduitEnd(end.origin(), Optional.empty(), Optional.empty(), space, Optional.empty());
  }

  private StubOut told(StubOut stubOut) {
    return new StubOut(
        stubOut.origin(),
        stubOut.id(),
        stubOut.place(),
        stubOut.conduit().filter(id -> !withheld.conduits().contains(id)),
        stubOut.cover(),
        stubOut.coiled().stream().filter(coil -> tells(coil.run())).toList(),
        stubOut.zone(),
        stubOut.obstacles(),
        stubOut.lineStillToLay(),
        stubOut.lineBy(),
        stubOut.note());
  }

  private Zone told(Zone zone) {
    Predicate<Optional<String>> place = id -> none(id, withheld.places());
    return new Zone(
        zone.origin(),
        zone.id(),
        zone.name(),
        zone.kind(),
        zone.spaces(),
        zone.speakers().stream()
            .filter(s -> place.test(s.place()) && none(s.run(), withheld.runs()))
            .toList(),
        zone.volumeControl().filter(id -> place.test(Optional.of(id))),
        zone.amplifierMinimum(),
        zone.amplifierDamping(),
        zone.lineVoltage(),
        zone.note());
  }
}
