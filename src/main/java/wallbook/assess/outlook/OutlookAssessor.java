package wallbook.assess.outlook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.record.Conduit;
import wallbook.record.ConduitCondition;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.RunCondition;
import wallbook.record.RunEnd;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Derives what every cable and conduit could carry later. Claims nothing of its own: each statement
 * rests on an assessment of that cable or conduit, whose verdict it takes over.
 */
public final class OutlookAssessor {
  private static final String MORE_CABLES = "conduit.more.";
  private static final Comparator<Prospect> USEFUL_FIRST =
      Comparator.comparing((Prospect p) -> !p.possible())
          .thenComparing(Prospect::rank, Comparator.reverseOrder())
          .thenComparing(Prospect::service);

  private final List<Service> services;

  public OutlookAssessor(Tables tables) {
    this.services = Service.all(tables);
  }

  /** The outlook of a whole job. */
  public Outlook assess(Job job, Assessments assessments) {
    List<Prospect> prospects = new ArrayList<>();
    for (Run run : job.runs()) {
      services.stream()
          .flatMap(s -> assessments.find(run.id(), s.topic()).map(a -> of(run, s, a)).stream())
          .sorted(USEFUL_FIRST)
          .forEach(prospects::add);
    }
    for (Conduit conduit : job.conduits()) {
      assessments.of(conduit.id(), MORE_CABLES).stream()
          .map(a -> of(job, conduit, a))
          .flatMap(Optional::stream)
          .sorted(USEFUL_FIRST)
          .forEach(prospects::add);
    }
    return new Outlook(prospects);
  }

  private static Prospect of(Run run, Service service, Assessment basis) {
    List<Phrase> adds = new ArrayList<>();
    Set<Worker> by = new LinkedHashSet<>();
    for (RunEnd end : List.of(run.from(), run.to())) {
      if (!end.isTerminated()) {
        by.add(Worker.INSTALLER);
      }
    }
    int open = (run.from().isTerminated() ? 0 : 1) + (run.to().isTerminated() ? 0 : 1);
    if (open > 0) {
      adds.add(Phrase.counted("outlook.finish-ends", open));
    }
    service.adds().forEach(key -> adds.add(Phrase.of("outlook.add." + key)));
    by.add(service.by());
    return new Prospect(
        run.id(),
        service.name(),
        Phrase.of("outlook.service." + service.name()),
        service.rank(),
        basis,
        adds,
        List.copyOf(by),
        open == 0 ? Effort.PLUG_IN : Effort.FINISH_ENDS,
        run.condition() == RunCondition.IN_SERVICE);
  }

  /** A cable of the catalogue that the conduit could take; nothing for a topic of another kind. */
  private static Optional<Prospect> of(Job job, Conduit conduit, Assessment basis) {
    String cable = basis.topic().substring(MORE_CABLES.length());
    if (job.cables().stream().noneMatch(c -> c.id().equals(cable))) {
      return Optional.empty();
    }
    List<Phrase> adds = new ArrayList<>();
    boolean proved = conduit.proved().isPresent() && conduit.condition() == ConduitCondition.CLEAR;
    if (!proved) {
      adds.add(Phrase.of("outlook.prove-conduit"));
    }
    adds.add(Phrase.of("outlook.pull-cable", "cable", job.cable(cable).name()));
    adds.add(Phrase.of("outlook.new-string"));
    conduit.firestop().ifPresent(where -> adds.add(Phrase.of("outlook.reseal", "where", where)));
    return Optional.of(
        new Prospect(
            conduit.id(),
            "cable." + cable,
            Phrase.of("outlook.more-cable", "cable", job.cable(cable).name()),
            0,
            basis,
            adds,
            List.of(Worker.INSTALLER),
            proved ? Effort.PULL_CABLE : Effort.PROVE_AND_PULL,
            !conduit.contents().isEmpty()));
  }
}
