package wallbook.assess.fibre;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Decibels;
import wallbook.record.FibreClass;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Whether a run may be joined, by patch cord or splice, to the other classes of fibre that meet it
 * at a head; a multimode run is always asked about single-mode, which is what a provider brings.
 */
final class JoinJudge {
  private final FibreCores cores;
  private final LossEdition edition;

  JoinJudge(Tables tables) {
    cores = new FibreCores(tables);
    edition = LossEdition.limits(tables).get(0);
  }

  /**
   * @param classes classes of all fibres that end at a head, by its id
   */
  List<Assessment> of(FibreLink link, Map<String, Set<FibreClass>> classes) {
    if (link.fibreClass().isEmpty()) {
      return List.of();
    }
    FibreClass own = link.fibreClass().get();
    Set<FibreClass> others = EnumSet.noneOf(FibreClass.class);
    if (!own.isSingleMode()) {
      others.add(FibreClass.OS2);
    }
    heads(link.run()).forEach(head -> others.addAll(classes.getOrDefault(head, Set.of())));
    others.removeIf(other -> other == own || (other.isSingleMode() && own.isSingleMode()));
    return others.stream().map(other -> judge(link, own, other)).toList();
  }

  /** Classes of the links that end at each head, by its id. */
  static Map<String, Set<FibreClass>> classesAtHeads(List<FibreLink> links) {
    Map<String, Set<FibreClass>> classes = new HashMap<>();
    for (FibreLink link : links) {
      for (String head : heads(link.run())) {
        link.fibreClass()
            .ifPresent(
                c -> classes.computeIfAbsent(head, h -> EnumSet.noneOf(FibreClass.class)).add(c));
      }
    }
    return classes;
  }

  private Assessment judge(FibreLink link, FibreClass own, FibreClass other) {
    Assessment.Builder result =
        Assessment.of(
            link.id(),
            "fibre.join." + other.word(),
            Phrase.of("fibre.asked.join", "own", cores.name(own), "other", cores.name(other)));
    if (!cores.differ(own, other)) {
      return result
          .limitedBy(
              Phrase.of("fibre.limit.lower-class", "lower", cores.name(cores.lower(own, other))))
          .verdict(Verdict.CONDITIONAL, cores.source());
    }
    boolean down = cores.areaLoss(own, other).compareTo(cores.areaLoss(other, own)) >= 0;
    FibreClass from = down ? own : other;
    FibreClass into = down ? other : own;
    Decibels area = cores.areaLoss(from, into);
    Decibels aperture = cores.apertureLoss(from, into);
    Decibels loss = area.plus(aperture);
    Decibels most = edition.connector(own);
    if (from.isSingleMode() != into.isSingleMode()) {
      result.assuming(Phrase.of("fibre.assume.other-way"));
      result.assuming(Phrase.of("fibre.assume.media-conversion"));
    }
    return result
        .value(loss)
        .limit(most, most.minus(loss))
        .limitedBy(
            Phrase.of(
                "fibre.limit.cores",
                "from",
                cores.coreMicrometres(from),
                "into",
                cores.coreMicrometres(into),
                "area",
                area,
                "aperture",
                aperture))
        .assuming(Phrase.of("fibre.assume.overfilled"))
        .verdict(Verdict.BEYOND, cores.source());
  }

  private static List<String> heads(Run run) {
    return Stream.of(run.from(), run.to()).map(RunEnd::head).flatMap(Optional::stream).toList();
  }
}
