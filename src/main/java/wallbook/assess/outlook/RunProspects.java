package wallbook.assess.outlook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.record.Job;
import wallbook.record.PartyRole;
import wallbook.record.Run;
import wallbook.record.RunCondition;
import wallbook.record.StubOut;
import wallbook.wording.Phrase;

/** What a run could carry: each service whose topic was assessed for it. */
final class RunProspects {
  private final Map<String, List<Service>> servicesOfTopic;

  RunProspects(List<Service> services) {
    this.servicesOfTopic = services.stream().collect(Collectors.groupingBy(Service::topic));
  }

  /**
   * @param stubOut where the run waits to be laid on, if it does
   */
  Stream<Prospect> of(Job job, Run run, Optional<StubOut> stubOut, Assessments assessments) {
    List<Prospect> prospects = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Assessment first : assessments.of(run.id())) {
      List<Service> decided = servicesOfTopic.getOrDefault(first.topic(), List.of());
      if (!decided.isEmpty() && seen.add(first.topic())) {
        decided.forEach(service -> prospects.add(of(job, run, stubOut, service, first)));
      }
    }
    return prospects.stream();
  }

  private static Prospect of(
      Job job, Run run, Optional<StubOut> stubOut, Service service, Assessment basis) {
    boolean occupied = run.condition() == RunCondition.IN_SERVICE;
    List<Phrase> first = new ArrayList<>();
    List<Worker> firstBy = new ArrayList<>();
    Effort effort = occupied ? Effort.SHARE : Effort.PLUG_IN;
    if (occupied) {
      first.add(Phrase.of("outlook.share." + job.cableOf(run).medium().word()));
    }
    if (stubOut.isPresent() && !run.isTerminated()) {
      effort = Effort.EXTEND_LINE;
      first.add(Phrase.of("outlook.extend-line"));
      firstBy.add(layer(stubOut.get()));
    } else if (!run.isTerminated()) {
      effort = Effort.FINISH_ENDS;
      first.add(Phrase.counted("outlook.finish-ends", openEnds(run)));
      firstBy.add(Worker.INSTALLER);
    }
    return new Prospect(
        run.id(),
        service.name(),
        service.family(),
        service.words(),
        service.rank(),
        List.of(basis),
        first,
        service.adds(),
        firstBy,
        service.by(),
        effort,
        occupied);
  }

  private static int openEnds(Run run) {
    return (int) Stream.of(run.from(), run.to()).filter(end -> !end.isTerminated()).count();
  }

  /** Who lays the line on from a stub-out; a landscaper unless the record says otherwise. */
  private static Worker layer(StubOut stubOut) {
    PartyRole role = stubOut.lineBy().orElse(PartyRole.LANDSCAPER);
    return switch (role) {
      case LANDSCAPER -> Worker.LANDSCAPER;
      case ELECTRICIAN -> Worker.ELECTRICIAN;
      case PROVIDER -> Worker.PROVIDER;
      case OWNER -> Worker.HOMEOWNER;
      case INTEGRATOR, BUILDER, OTHER -> Worker.INSTALLER;
    };
  }
}
