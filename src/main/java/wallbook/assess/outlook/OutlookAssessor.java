package wallbook.assess.outlook;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.assess.Verdict;
import wallbook.record.Conduit;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.RunCondition;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Derives what every cable and conduit could carry later. Claims nothing of its own: each statement
 * rests on assessments of that cable or conduit, whose verdict it takes over.
 */
public final class OutlookAssessor {
  private static final Comparator<Prospect> USEFUL_FIRST =
      Comparator.comparing(Prospect::verdict, Comparator.comparing(OutlookAssessor::group))
          .thenComparing(Prospect::rank, Comparator.reverseOrder())
          .thenComparing(Prospect::service);

  /** First words of topics that ask what a run carries. */
  private static final Set<String> USES = Set.of("pairs", "fibre", "coax", "speaker", "dc");

  private final RunProspects ofRuns;
  private final ConduitProspects ofConduits;

  public OutlookAssessor(Tables tables) {
    List<Service> services = Service.all(tables);
    this.ofRuns = new RunProspects(services);
    this.ofConduits = new ConduitProspects(services, tables);
  }

  /** The outlook of a whole job, computed on all processors. */
  public Outlook assess(Job job, Assessments assessments) {
    return assess(job, assessments, job.runs(), job.conduits());
  }

  /** The outlook of one run. */
  public Outlook assess(Job job, Assessments assessments, Run run) {
    return assess(job, assessments, List.of(run), List.of());
  }

  private Outlook assess(Job job, Assessments assessments, List<Run> runs, List<Conduit> conduits) {
    StubOuts stubOuts = new StubOuts(job);
    List<Outlook.OfThing> ofRunsInTurn =
        runs.parallelStream()
            .map(
                run -> {
                  List<Prospect> prospects =
                      inOrder(ofRuns.of(job, run, stubOuts.of(run), assessments));
                  List<Phrase> reasons = whyNothing(run, prospects, assessments.of(run.id()));
                  return new Outlook.OfThing(run.id(), prospects, reasons);
                })
            .toList();
    List<Outlook.OfThing> ofConduitsInTurn =
        conduits.parallelStream()
            .map(
                conduit ->
                    new Outlook.OfThing(
                        conduit.id(), inOrder(ofConduits.of(job, conduit, assessments)), List.of()))
            .toList();
    return new Outlook(Stream.concat(ofRunsInTurn.stream(), ofConduitsInTurn.stream()).toList());
  }

  private static List<Prospect> inOrder(Stream<Prospect> prospects) {
    return prospects.sorted(USEFUL_FIRST).toList();
  }

  /** Within and conditional count alike: a useful service goes before a certain but lesser one. */
  private static int group(Verdict verdict) {
    return switch (verdict) {
      case WITHIN, CONDITIONAL -> 0;
      case INFORMATION -> 1;
      case NOT_STATED -> 2;
      case BEYOND -> 3;
    };
  }

  /**
   * Why a run carries nothing, if nothing that was looked at could be: the reasons given for its
   * prospects, or for a damaged or abandoned one without any, those of its assessments.
   */
  private static List<Phrase> whyNothing(
      Run run, List<Prospect> prospects, List<Assessment> assessments) {
    if (prospects.stream().anyMatch(p -> p.possible() || p.equipmentDecides())) {
      return List.of();
    }
    boolean sound =
        run.condition() == RunCondition.IN_SERVICE || run.condition() == RunCondition.DARK;
    Stream<Phrase> reasons =
        prospects.isEmpty() && !sound
            ? assessments.stream()
                .filter(a -> a.verdict() == Verdict.BEYOND && USES.contains(medium(a)))
                .flatMap(a -> a.limitedBy().stream())
            : prospects.stream().flatMap(p -> p.blocker().stream());
    return reasons.distinct().toList();
  }

  private static String medium(Assessment assessment) {
    return assessment.topic().substring(0, assessment.topic().indexOf('.'));
  }
}
