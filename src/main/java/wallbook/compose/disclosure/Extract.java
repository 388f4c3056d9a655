package wallbook.compose.disclosure;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallbook.record.Head;
import wallbook.record.Job;
import wallbook.record.JobFacts;
import wallbook.record.JobRecord;
import wallbook.record.Panel;
import wallbook.record.Place;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.record.RunTest;
import wallbook.record.Space;
import wallbook.record.Tie;

/**
 * The part of a record that a document for somebody outside the household carries. It reads as a
 * record: nothing in it refers to what was left out. It says in {@code extract_for} whom it was
 * made for.
 *
 * <p>Left out are what the reader may not be told, other readers' parts, photographs, the logo and
 * full sweeps (files beside the record, which don't travel in a document) and whatever mentions
 * what was left out. Counts made from an extract are therefore too favourable: a port or a conduit
 * may look empty.
 */
public final class Extract {
  private static final Set<Part> WITH_TESTS = EnumSet.of(Part.HOUSE, Part.ENTRANCE);
  private static final Set<Part> WITH_NOTES_OF_SPACES = EnumSet.of(Part.HOUSE, Part.BUILDER);

  private final JobRecord all;
  private final Part part;
  private final Kept kept;
  private final Predicate<String> tellable;

  private Extract(Job job, Part part, Predicate<String> tellable) {
    this.all = job.record();
    this.part = part;
    this.kept = Kept.of(job, part);
    this.tellable = tellable;
  }

  /**
   * Makes an extract.
   *
   * @param disclosed the job as the reader may see it
   * @param reader whom it is for, in words
   * @param tellable whether a text names nothing that is kept from the reader; not asked if nothing
   *     is
   */
  public static JobRecord of(
      DisclosedJob disclosed, Part part, String reader, Predicate<String> tellable) {
    Predicate<String> asked = disclosed.withholdsSomething() ? tellable : text -> true;
    JobRecord told = new Extract(disclosed.job(), part, asked).record(reader);
    return new NeutralNames(asked).of(new Unresolved(told).dropped());
  }

  private JobRecord record(String reader) {
    List<Run> runs = all.runs().stream().filter(r -> kept.runs.contains(r.id())).toList();
    List<Place> places = all.places().stream().filter(p -> kept.places.contains(p.id())).toList();
    List<Space> spaces =
        all.spaces().stream().filter(s -> kept.spaces.contains(s.id())).map(this::told).toList();
    Set<String> floors = spaces.stream().map(Space::floor).collect(Collectors.toSet());
    Set<String> corners =
        places.stream().flatMap(p -> p.ties().stream()).map(Tie::from).collect(Collectors.toSet());
    Set<String> cables = runs.stream().map(Run::cable).collect(Collectors.toSet());
    boolean house = part == Part.HOUSE;
    return new JobRecord(
        all.origin(),
        all.format(),
        told(all.job(), reader),
        all.floors().stream().filter(f -> house || floors.contains(f.id())).toList(),
        spaces,
        all.corners().stream().filter(c -> house || corners.contains(c.id())).toList(),
        all.heads().stream()
            .filter(h -> kept.heads.contains(h.id()))
            .map(h -> told(h, runs))
            .toList(),
        places,
        all.cables().stream().filter(c -> cables.contains(c.id())).toList(),
        runs,
        all.fibres().stream().filter(f -> kept.runs.contains(f.run())).toList(),
        all.conduits().stream().filter(c -> kept.conduits.contains(c.id())).toList(),
        all.stubOuts().stream().filter(s -> kept.stubOuts.contains(s.id())).toList(),
        all.tests().stream()
            .filter(t -> WITH_TESTS.contains(part) && kept.runs.contains(t.run()))
            .map(Extract::withoutSweep)
            .toList(),
        all.zones().stream()
            .filter(
                z ->
                    house
                        || all.stubOuts().stream()
                            .anyMatch(
                                s ->
                                    kept.stubOuts.contains(s.id())
                                        && s.zone().equals(Optional.of(z.id()))))
            .toList(),
        house ? all.systems() : List.of(),
        all.exceptions().stream().filter(e -> kept.exceptions.contains(e.id())).toList(),
        List.of(),
        house ? all.provisions() : List.of());
  }

  private JobFacts told(JobFacts facts, String reader) {
    return new JobFacts(
        facts.origin(),
        facts.id(),
        facts.title(),
        facts.address(),
        facts.handover(),
        facts.revision(),
        facts.history().stream().filter(r -> tellable.test(r.what())).toList(),
        facts.units(),
        facts.language(),
        facts.paper(),
        part == Part.HOUSE ? facts.houseArea() : Optional.empty(),
        facts.north(),
        facts.atticHigh(),
        facts.invented(),
        facts.parties().stream().filter(p -> part.toCall().contains(p.role())).toList(),
        facts.jurisdiction(),
        facts.codes(),
        Optional.empty(),
        part == Part.HOUSE ? facts.note() : Optional.empty(),
        Optional.of(reader));
  }

  private Space told(Space space) {
    return new Space(
        space.origin(),
        space.id(),
        space.name(),
        space.floor(),
        space.kind(),
        space.outline(),
        space.ceilingHeight(),
        part == Part.HOUSE ? space.openings() : List.of(),
        space.note().filter(note -> WITH_NOTES_OF_SPACES.contains(part)));
  }

  private Head told(Head head, List<Run> runs) {
    if (kept.wholeHeads.contains(head.id())) {
      return head;
    }
    List<Panel> panels =
        head.panels().stream()
            .filter(
                panel ->
                    runs.stream()
                        .flatMap(run -> Stream.of(run.from(), run.to()))
                        .anyMatch(end -> isAt(end, head, panel)))
            .toList();
    return new Head(
        head.origin(),
        head.id(),
        head.name(),
        head.kind(),
        head.space(),
        head.wall(),
        head.offset(),
        head.height(),
        head.at(),
        panels,
        Optional.empty());
  }

  private static boolean isAt(RunEnd end, Head head, Panel panel) {
    return end.head().equals(Optional.of(head.id())) && end.panel().equals(Optional.of(panel.id()));
  }

  private static RunTest withoutSweep(RunTest test) {
    return new RunTest(
        test.origin(),
        test.id(),
        test.run(),
        test.date(),
        test.kind(),
        test.result(),
        test.limit(),
        test.wireMap(),
        test.shorts(),
        test.splitPairs(),
        test.length(),
        test.delay(),
        test.skew(),
        test.loopResistance(),
        test.worst(),
        test.losses(),
        Optional.empty(),
        test.accuracy(),
        test.instrument(),
        test.calibrated(),
        test.by(),
        test.reason());
  }
}
