package wallbook.compose.asbuilt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wallbook.Composed;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.compose.Composition;
import wallbook.compose.LabelRanges;
import wallbook.compose.RunState;
import wallbook.compose.asbuilt.AsBuiltView.IndexEntry;
import wallbook.compose.asbuilt.AsBuiltView.OpenEnd;
import wallbook.compose.asbuilt.AsBuiltView.RunRow;
import wallbook.compose.asbuilt.CapacityView.Group;
import wallbook.quantity.Length;
import wallbook.record.Finish;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.record.Run;
import wallbook.record.TestKind;

/** The as-built of the house by the lake, held against its record. */
class AsBuiltComposerTest {
  private static final Composition LAKESIDE = Composed.of(Jobs.sample("lakeside"));
  private static final Job JOB = LAKESIDE.job();
  private static final AsBuiltView VIEW = new AsBuiltComposer(LAKESIDE, Jobs.TABLES).compose();

  private static Stream<RunRow> rows() {
    return Stream.concat(
        VIEW.rooms().stream().flatMap(r -> r.places().stream()).flatMap(p -> p.runs().stream()),
        VIEW.loose().stream());
  }

  @Test
  void everyRunStandsInAScheduleAndTheIndexLeadsToOneOfItsRows() {
    Set<String> labels = JOB.runs().stream().map(Run::label).collect(Collectors.toSet());
    assertEquals(labels, rows().map(RunRow::label).collect(Collectors.toSet()));

    List<String> anchors = rows().flatMap(r -> r.anchor().stream()).toList();
    assertEquals(JOB.runs().size(), new HashSet<>(anchors).size());
    assertEquals(anchors.size(), new HashSet<>(anchors).size(), "no anchor twice");

    List<IndexEntry> index =
        VIEW.index().stream().flatMap(List::stream).filter(e -> e.anchor().isPresent()).toList();
    assertEquals(labels.stream().sorted().toList(), index.stream().map(IndexEntry::label).toList());
    index.forEach(e -> assertTrue(anchors.contains(e.anchor().get()), e.label()));
  }

  @Test
  void everyRunThatEndsAtAPortStandsInItsPanel() {
    Set<String> atPorts =
        JOB.runs().stream()
            .filter(r -> Stream.of(r.from(), r.to()).anyMatch(e -> e.port().isPresent()))
            .map(Run::label)
            .collect(Collectors.toSet());
    Set<String> shown =
        VIEW.heads().stream()
            .flatMap(h -> h.panels().stream())
            .flatMap(p -> p.ports().stream())
            .map(AsBuiltView.PortRow::label)
            .collect(Collectors.toSet());
    assertEquals(atPorts, shown);
  }

  @Test
  void everyRunOfASystemStandsInIt() {
    long shown = VIEW.systems().stream().mapToLong(s -> s.runs().size()).sum();
    assertEquals(JOB.runs().size(), shown);
  }

  @Test
  void everyPairAndFibreRunIsInOneGroupOfItsMedium() {
    for (Map.Entry<String, Medium> medium :
        Map.of("N", Medium.BALANCED_PAIR, "F", Medium.FIBRE).entrySet()) {
      List<Run> runs =
          JOB.runs().stream().filter(r -> JOB.cableOf(r).medium() == medium.getValue()).toList();
      Map<String, List<Run>> byCode = new HashMap<>();
      for (Run run : runs) {
        String code =
            rows()
                .filter(r -> r.label().equals(run.label()))
                .flatMap(r -> r.capacity().stream())
                .findFirst()
                .orElseThrow();
        assertTrue(code.startsWith(medium.getKey()), run.label() + " " + code);
        byCode.computeIfAbsent(code, c -> new ArrayList<>()).add(run);
      }
      byCode.forEach(
          (code, members) ->
              assertEquals(
                  LabelRanges.of(members.stream().map(Run::label).toList(), Composed.WORDING),
                  group(code).runs()));
    }
  }

  private static Group group(String code) {
    return VIEW.capacity().groups().stream()
        .filter(g -> g.code().equals(code))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aGroupShowsTheRunWithTheLeastMarginOfAllItsRuns() {
    for (Group group : VIEW.capacity().groups()) {
      if (!group.code().startsWith("N")) {
        continue;
      }
      List<Run> members =
          JOB.runs().stream()
              .filter(
                  run ->
                      rows()
                          .anyMatch(
                              r ->
                                  r.label().equals(run.label())
                                      && r.capacity().equals(Optional.of(group.code()))))
              .toList();
      Optional<Run> least =
          members.stream()
              .filter(run -> margin(run).isPresent())
              .min(Comparator.comparing(run -> margin(run).orElseThrow()));
      if (members.size() > 1 && least.isPresent()) {
        CapacityView.GroupRow length =
            group.rows().stream()
                .filter(r -> r.asked().equals("length as a permanent link"))
                .findFirst()
                .orElseThrow();
        assertEquals("+" + Composed.WORDING.print(margin(least.get()).get()), length.margin());
      }
    }
  }

  private static Optional<Length> margin(Run run) {
    return LAKESIDE
        .assessments()
        .find(run.id(), "pairs.length")
        .flatMap(Assessment::margin)
        .map(Length.class::cast);
  }

  @Test
  void runsOfDifferentAnswersAreNotInOneGroup() {
    Map<String, Set<Object>> answers = new HashMap<>();
    for (Run run : JOB.runs()) {
      if (JOB.cableOf(run).medium() == Medium.BALANCED_PAIR) {
        String code =
            rows()
                .filter(r -> r.label().equals(run.label()))
                .flatMap(r -> r.capacity().stream())
                .findFirst()
                .orElseThrow();
        Assessment highest =
            LAKESIDE.assessments().find(run.id(), "pairs.ethernet.highest").orElseThrow();
        answers
            .computeIfAbsent(code, c -> new HashSet<>())
            .add(List.of(highest.verdict(), highest.value()));
      }
    }
    answers.forEach((code, its) -> assertEquals(1, its.size(), code + ": " + its));
  }

  @Test
  void everyCertificationHasARowWithEveryMarginAndItsSource() {
    long certifications =
        JOB.tests().stream().filter(t -> t.kind() == TestKind.CERTIFICATION).count();
    assertEquals(certifications, VIEW.tests().certified().size());
    Set<String> sources = new TreeSet<>();
    VIEW.sources().forEach(s -> sources.add(s.number()));
    for (TestsView.CertifiedRow row : VIEW.tests().certified()) {
      assertEquals(VIEW.tests().parameters().size(), row.cells().size());
      row.cells().forEach(c -> assertTrue(sources.contains(c.source()), row.label()));
    }
  }

  /** Values as the record has them; limits by the published equation at that frequency. */
  @Test
  void aCertifiedMarginIsThatOfTheLimitLine() {
    TestsView.CertifiedRow row =
        VIEW.tests().certified().stream()
            .filter(r -> r.label().equals("GRT-01"))
            .findFirst()
            .orElseThrow();
    TestsView.Cell next = row.cells().get(1);
    // Category 6 permanent link NEXT at 173 MHz: the record's own summary gives 3.3 dB of margin.
    assertTrue(next.margin().startsWith("+3.3"), next.margin());
    assertTrue(next.value().startsWith("41.3"), next.value());
  }

  @Test
  void everySweepIsPlotted() {
    long sweeps = JOB.tests().stream().filter(t -> t.sweep().isPresent()).count();
    assertEquals(sweeps, VIEW.tests().sweeps().size());
  }

  @Test
  void everyTestStandsSomewhere() {
    TestsView tests = VIEW.tests();
    long losses = JOB.tests().stream().filter(t -> !t.losses().isEmpty()).count();
    long plain = JOB.tests().stream().filter(t -> !JudgedTests.hasFigures(t)).count();
    assertEquals(
        JOB.tests().size(), tests.certified().size() + tests.measured().size() + losses + plain);
  }

  @Test
  void everyEndWithoutAConnectorIsListedWithWhereItIs() {
    long open =
        JOB.runs().stream()
            .filter(r -> RunState.of(r).isDark() || RunState.of(r) == RunState.WORKS)
            .flatMap(r -> Stream.of(r.from(), r.to()))
            .filter(e -> e.finish() != Finish.TERMINATED)
            .count();
    List<OpenEnd> listed = VIEW.openEnds().stream().flatMap(p -> p.ends().stream()).toList();
    assertEquals(open, listed.size());
    VIEW.openEnds().forEach(p -> assertTrue(!p.where().isBlank(), p.name()));
    assertTrue(
        listed.stream().anyMatch(e -> e.found().contains("aqua jacket, yellow tape")),
        "the record's words lead to a fibre");
  }

  @Test
  void everyConduitHasASheetAndASectionWhereItsSizesAreKnown() {
    assertEquals(JOB.conduits().size(), VIEW.conduits().size());
    assertTrue(VIEW.conduits().stream().allMatch(c -> c.section().isPresent()));
  }

  @Test
  void everyDamagedRunIsListed() {
    long damaged =
        JOB.runs().stream()
            .filter(r -> RunState.of(r) == RunState.DEAD || RunState.of(r) == RunState.RETIRED)
            .count();
    assertEquals(damaged, VIEW.damaged().size());
  }
}
