package wallbook.compose.guide;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wallbook.assess.outlook.Effort;
import wallbook.assess.outlook.Leg;
import wallbook.assess.outlook.Prospect;
import wallbook.assess.outlook.Way;
import wallbook.assess.outlook.WishAnswer;
import wallbook.compose.Caution;
import wallbook.record.Job;
import wallbook.record.Medium;

/** The cautions that the work of a wish's ways calls for. */
final class WishCautions {
  private final Job job;

  WishCautions(Job job) {
    this.job = job;
  }

  /** In the order in which cautions are told anywhere. */
  List<Caution> of(List<WishAnswer> answers) {
    Set<Caution> cautions = EnumSet.noneOf(Caution.class);
    for (WishAnswer answer : answers) {
      for (Way way : answer.ways()) {
        ofWay(way, cautions);
      }
    }
    return List.copyOf(cautions);
  }

  private void ofWay(Way way, Set<Caution> cautions) {
    way.legs().forEach(leg -> ofLeg(leg, cautions));
    for (var condition : way.conditions()) {
      switch (condition.key()) {
        case "outlook.condition.across" -> cautions.add(Caution.ATTICS);
        case "outlook.condition.local-supply" -> cautions.add(Caution.MAINS);
        default -> {}
      }
    }
  }

  private void ofLeg(Leg leg, Set<Caution> cautions) {
    if (leg.effort() == Effort.PULL_CABLE || leg.effort() == Effort.PROVE_AND_PULL) {
      cautions.add(Caution.CONDUITS);
      job.conduit(leg.subject()).firestop().ifPresent(f -> cautions.add(Caution.FIRESTOP));
    } else if (leg.effort() == Effort.EXTEND_LINE) {
      cautions.add(Caution.DIGGING);
    } else if (job.cableOf(job.run(leg.subject())).medium() == Medium.FIBRE) {
      cautions.add(Caution.FIBRE_LIGHT);
      if (leg.effort() == Effort.FINISH_ENDS) {
        cautions.add(Caution.FIBRE_SHARDS);
      }
    }
    for (Prospect prospect : leg.prospects()) {
      switch (prospect.family()) {
        case POWER -> cautions.add(Caution.POE);
        case SUPPLY -> cautions.add(Caution.CLASS_2);
        case RECEPTION, CELLULAR -> cautions.add(Caution.ANTENNAS);
        default -> {}
      }
    }
  }
}
