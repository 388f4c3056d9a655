package wallbook.assess.practice;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Count;
import wallbook.record.Cable;
import wallbook.record.Conduit;
import wallbook.record.ConduitEnd;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.record.PairCategory;
import wallbook.record.Place;
import wallbook.record.PlaceUse;
import wallbook.record.Provision;
import wallbook.record.ProvisionGroup;
import wallbook.record.Run;
import wallbook.record.RunCondition;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Standing;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Holds each place against the usual provision for its kind: the table {@code usual-provision}, and
 * what the record states in its place. The result is for information only, whatever it comes to:
 * value is what is there, limit what is usual, margin the difference.
 *
 * <p>Topics: {@code practice.<use>.<group>}. Cables in service and dark ones count, damaged and
 * abandoned ones don't; a conduit counts unless it is crushed or blocked.
 */
public final class PracticeAssessor {
  private final Map<PlaceUse, Map<ProvisionGroup, Integer>> usual = new EnumMap<>(PlaceUse.class);
  private final Source tableSource;

  public PracticeAssessor(Tables tables) {
    this.tableSource = tables.table("usual-provision").source();
    for (Row row : tables.table("usual-provision").rows()) {
      usual
          .computeIfAbsent(word(PlaceUse.class, row.text("use")), u -> new LinkedHashMap<>())
          .put(word(ProvisionGroup.class, row.text("group")), (int) row.number("count"));
    }
  }

  /**
   * One assessment for each place and each thing that is usual there, in the order of the record.
   */
  public List<Assessment> assess(Job job) {
    List<Assessment> assessments = new ArrayList<>();
    for (Place place : job.places()) {
      Map<ProvisionGroup, Integer> expected =
          new LinkedHashMap<>(usual.getOrDefault(place.use(), Map.of()));
      Map<ProvisionGroup, Provision> stated = stated(job, place.use());
      stated.forEach((group, provision) -> expected.put(group, provision.count()));
      expected.forEach(
          (group, count) -> {
            if (count > 0) {
              Source source = stated.containsKey(group) ? ofTheRecord() : tableSource;
              assessments.add(assess(job, place, group, count, source));
            }
          });
    }
    return assessments;
  }

  private static Map<ProvisionGroup, Provision> stated(Job job, PlaceUse use) {
    Map<ProvisionGroup, Provision> stated = new LinkedHashMap<>();
    job.record().provisions().stream()
        .filter(p -> p.use() == use)
        .forEach(p -> stated.put(p.group(), p));
    return stated;
  }

  private static Assessment assess(
      Job job, Place place, ProvisionGroup group, int usual, Source source) {
    int there = count(job, place, group);
    return Assessment.of(
            place.id(),
            "practice." + place.use().word() + "." + group.word(),
            Phrase.of(
                "practice.asked",
                "what",
                Phrase.of("provision-group." + group.word()),
                "use",
                Phrase.of("place-use." + place.use().word())))
        .value(Count.of(there))
        .limit(Count.of(usual), Count.of(there - usual))
        .verdict(Verdict.INFORMATION, source);
  }

  private static int count(Job job, Place place, ProvisionGroup group) {
    return switch (group) {
      case PAIRS -> runs(job, place, c -> c.medium() == Medium.BALANCED_PAIR ? 1 : 0);
      case PAIRS_CAT6A ->
          runs(job, place, c -> c.category().equals(Optional.of(PairCategory.CAT6A)) ? 1 : 0);
      case COAX -> runs(job, place, c -> c.medium() == Medium.COAX ? 1 : 0);
      case FIBRE -> runs(job, place, c -> c.medium() == Medium.FIBRE ? 1 : 0);
      case CONDUIT -> conduits(job, place);
      case FIBRE_OR_CONDUIT ->
          count(job, place, ProvisionGroup.FIBRE) + count(job, place, ProvisionGroup.CONDUIT);
      case SPEAKER_CONDUCTORS ->
          runs(job, place, c -> c.medium() == Medium.SPEAKER ? c.conductors().orElse(0) : 0);
      case CONTROL_OR_PAIRS ->
          runs(
              job,
              place,
              c -> c.medium() == Medium.CONTROL || c.medium() == Medium.BALANCED_PAIR ? 1 : 0);
    };
  }

  private interface Weight {
    int of(Cable cable);
  }

  private static int runs(Job job, Place place, Weight weight) {
    return job.runsAt(place).stream()
        .filter(PracticeAssessor::isWhole)
        .mapToInt(run -> weight.of(job.cableOf(run)))
        .sum();
  }

  private static boolean isWhole(Run run) {
    return run.condition() == RunCondition.IN_SERVICE || run.condition() == RunCondition.DARK;
  }

  private static int conduits(Job job, Place place) {
    return (int)
        job.conduits().stream()
            .filter(PracticeAssessor::isUsable)
            .filter(c -> reaches(job, c.from(), place) || reaches(job, c.to(), place))
            .count();
  }

  private static boolean isUsable(Conduit conduit) {
    return switch (conduit.condition()) {
      case CLEAR, UNKNOWN -> true;
      case CRUSHED, BLOCKED -> false;
    };
  }

  private static boolean reaches(Job job, ConduitEnd end, Place place) {
    boolean samePlace =
        end.place()
            .map(id -> id.equals(place.id()) || job.place(id).space().equals(place.space()))
            .orElse(false);
    boolean sameSpace =
        end.space().equals(Optional.of(place.space()))
            || end.head().map(id -> job.head(id).space().equals(place.space())).orElse(false);
    return samePlace || sameSpace;
  }

  private static Source ofTheRecord() {
    return new Source("usual provision as the record states it", Standing.COMMON_PRACTICE);
  }

  private static <E extends Enum<E>> E word(Class<E> type, String word) {
    return Enum.valueOf(type, word.toUpperCase(Locale.ROOT));
  }
}
