package wallbook.assess.conduit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Length;
import wallbook.record.Conduit;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.PlaceKind;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * How large a pull box has to be for the conduits that end at it or pass it, by NEC 314.28: law for
 * large conductors only, good sense for data cable.
 */
final class BoxQuestions {
  private final PullBoxSize sizes;
  private final Bores bores;

  BoxQuestions(Tables tables) {
    this.sizes = new PullBoxSize(tables);
    this.bores = new Bores(tables);
  }

  List<Assessment> about(Job job) {
    List<Assessment> found = new ArrayList<>();
    for (Place place : job.places()) {
      if (place.kind() == PlaceKind.PULL_BOX) {
        List<Conduit> conduits =
            job.conduits().stream().filter(conduit -> reaches(conduit, place.id())).toList();
        if (!conduits.isEmpty()) {
          found.addAll(about(place, conduits));
        }
      }
    }
    return found;
  }

  private static boolean reaches(Conduit conduit, String place) {
    return conduit.from().place().filter(place::equals).isPresent()
        || conduit.to().place().filter(place::equals).isPresent()
        || conduit.path().stream()
            .anyMatch(piece -> piece.pullBox().filter(place::equals).isPresent());
  }

  private List<Assessment> about(Place place, List<Conduit> conduits) {
    Assessment.Builder straight =
        Assessment.of(place.id(), "conduit.box.straight", Phrase.of("conduit.box.straight.asked"));
    Assessment.Builder angle =
        Assessment.of(place.id(), "conduit.box.angle", Phrase.of("conduit.box.angle.asked"));
    List<Phrase> missing = new ArrayList<>();
    List<Length> known = new ArrayList<>();
    for (Conduit conduit : conduits) {
      Optional<Length> size = bores.tradeSize(conduit.type(), conduit.tradeSize());
      size.ifPresent(known::add);
      if (size.isEmpty()) {
        missing.add(Phrase.of("conduit.missing.trade-size", "conduit", conduit.label()));
      }
    }
    if (!missing.isEmpty()) {
      return List.of(
          straight.notStated(missing, sizes.source()), angle.notStated(missing, sizes.source()));
    }
    known.sort(Comparator.reverseOrder());
    List<Length> others = known.subList(1, known.size());
    return List.of(
        straight
            .value(sizes.straightPull(known.get(0)))
            .verdict(Verdict.INFORMATION, sizes.source()),
        angle
            .value(sizes.anglePull(known.get(0), others))
            .assuming(Phrase.of("conduit.assume.one-wall"))
            .verdict(Verdict.INFORMATION, sizes.source()));
  }
}
