package wallbook.assess.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.assess.Verdict;
import wallbook.record.Cable;
import wallbook.record.Conduit;
import wallbook.record.Job;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * What a conduit could take: the cables of the table {@code outlook-cables} and those of the
 * record's own, by practice and by the code's table together; and the connectors that pass.
 */
final class ConduitProspects {
  /** Prefix of a cable's name as a service. */
  static final String CABLE = "cable.";

  private static final String MORE = "conduit.more.";
  private static final List<String> RULES = List.of(".flat-40", ".table-1");

  private final List<Service> connectors;
  private final List<String> cables;
  private final Tables tables;

  ConduitProspects(List<Service> services, Tables tables) {
    this.connectors = services.stream().filter(s -> s.family() == ServiceFamily.CONNECTOR).toList();
    this.cables = tables.table("outlook-cables").rows().stream().map(r -> r.text("cable")).toList();
    this.tables = tables;
  }

  Stream<Prospect> of(Job job, Conduit conduit, Assessments assessments) {
    Stream<Prospect> taken =
        job.cables().stream()
            .filter(cable -> cables.contains(cable.id()) || job.record().cables().contains(cable))
            .flatMap(cable -> cable(conduit, cable, assessments));
    Stream<Prospect> passing =
        connectors.stream()
            .flatMap(
                service ->
                    assessments.find(conduit.id(), service.topic()).stream()
                        .map(basis -> connector(conduit, service, basis, assessments)));
    return Stream.concat(taken, passing);
  }

  private Stream<Prospect> cable(Conduit conduit, Cable cable, Assessments assessments) {
    List<Assessment> bases =
        RULES.stream()
            .flatMap(rule -> assessments.find(conduit.id(), MORE + cable.id() + rule).stream())
            .toList();
    if (bases.isEmpty()) {
      return Stream.empty();
    }
    return Stream.of(
        new Prospect(
            conduit.id(),
            CABLE + cable.id(),
            ServiceFamily.CABLE,
            Phrase.of("outlook.more-cable", "cable", cable.name()),
            rank(cable),
            bases,
            first(conduit, assessments),
            List.of(Phrase.of("outlook.pull-cable", "cable", cable.name())),
            List.of(Worker.INSTALLER),
            Worker.INSTALLER,
            effort(conduit, assessments),
            !conduit.contents().isEmpty()));
  }

  private int rank(Cable cable) {
    return tables
        .table("outlook-cables")
        .find(cable.id())
        .map(row -> (int) row.number("rank"))
        .orElse(0);
  }

  private static Prospect connector(
      Conduit conduit, Service service, Assessment basis, Assessments assessments) {
    return new Prospect(
        conduit.id(),
        service.name(),
        service.family(),
        service.words(),
        service.rank(),
        List.of(basis),
        first(conduit, assessments),
        service.adds(),
        List.of(Worker.INSTALLER),
        service.by(),
        effort(conduit, assessments),
        !conduit.contents().isEmpty());
  }

  private static List<Phrase> first(Conduit conduit, Assessments assessments) {
    List<Phrase> first = new ArrayList<>();
    if (!isProved(conduit, assessments)) {
      first.add(Phrase.of("outlook.prove-conduit"));
    }
    first.add(Phrase.of("outlook.new-string"));
    conduit.firestop().ifPresent(where -> first.add(Phrase.of("outlook.reseal", "where", where)));
    return first;
  }

  private static Effort effort(Conduit conduit, Assessments assessments) {
    return isProved(conduit, assessments) ? Effort.PULL_CABLE : Effort.PROVE_AND_PULL;
  }

  /** Whether the conduit was shown to be clear for its bore and still was at handover. */
  private static boolean isProved(Conduit conduit, Assessments assessments) {
    return assessments
        .find(conduit.id(), "conduit.clear")
        .filter(a -> a.verdict() == Verdict.WITHIN)
        .isPresent();
  }
}
