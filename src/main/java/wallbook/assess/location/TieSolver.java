package wallbook.assess.location;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.geometry.BuildingPoint;
import wallbook.quantity.Angle;
import wallbook.quantity.Length;
import wallbook.quantity.TapedLength;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.Point;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Finds the point of an outdoor place from its ties: crosses the two that meet at the best angle,
 * adjusts with the others by least squares, and takes the side where the place can be.
 */
public final class TieSolver {
  private final TieFigures figures;

  public TieSolver(Tables tables) {
    this.figures = new TieFigures(tables);
  }

  /** Two ties and what they come to. */
  private record Pair(CornerTie first, CornerTie second, TieFix fix) {}

  /** A point that the ties allow. */
  private record Candidate(Point point, Optional<TieAdjustment> adjustment) {}

  /** The point of a place with ties. */
  public TiedPoint solve(Place place, Job job) {
    List<CornerTie> ties = CornerTie.of(place, job);
    List<Pair> pairs = pairs(ties);
    if (pairs.isEmpty()) {
      return new TiedPoint.Unknown(List.of(Phrase.of("location.missing.ties")));
    }
    Optional<TiedPoint> contradiction =
        pairs.stream().flatMap(pair -> contradiction(pair).stream()).findFirst();
    if (contradiction.isPresent()) {
      return contradiction.get();
    }
    Optional<Pair> best =
        pairs.stream()
            .filter(pair -> pair.fix() instanceof TieFix.Crossing)
            .max(Comparator.comparing(pair -> Math.sin(angle(pair).inRadians())));
    if (best.isEmpty()) {
      TieFix.OnLine touching = (TieFix.OnLine) pairs.get(0).fix();
      return new TiedPoint.Touching(touching.point());
    }
    return choose(best.get(), ties, Surroundings.of(job.space(place.space()), job, tolerance()));
  }

  /** Every two ties from different points; ties from one corner cross nowhere in particular. */
  private List<Pair> pairs(List<CornerTie> ties) {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < ties.size(); i++) {
      for (int j = i + 1; j < ties.size(); j++) {
        CornerTie first = ties.get(i);
        CornerTie second = ties.get(j);
        if (!first.at().equals(second.at())) {
          pairs.add(
              new Pair(
                  first,
                  second,
                  TwoTies.solve(
                      first.at(),
                      first.distance(),
                      second.at(),
                      second.distance(),
                      figures.slack())));
        }
      }
    }
    return pairs;
  }

  private static Optional<TiedPoint> contradiction(Pair pair) {
    if (pair.fix() instanceof TieFix.Contradiction contradiction) {
      Phrase reason =
          Phrase.of(
              "location.ties.contradict",
              "first",
              TapedLength.of(pair.first().distance()),
              "firstCorner",
              pair.first().corner(),
              "second",
              TapedLength.of(pair.second().distance()),
              "secondCorner",
              pair.second().corner(),
              "apart",
              TapedLength.of(BuildingPoint.horizontal(pair.first().at(), pair.second().at())));
      return Optional.of(new TiedPoint.Impossible(reason, Optional.of(contradiction.by())));
    }
    return Optional.empty();
  }

  private TiedPoint choose(Pair best, List<CornerTie> ties, Surroundings surroundings) {
    List<Candidate> possible =
        candidates(best, ties).stream()
            .filter(candidate -> surroundings.allow(candidate.point()))
            .toList();
    if (possible.isEmpty()) {
      return new TiedPoint.Impossible(Phrase.of("location.ties.nowhere"), Optional.empty());
    }
    Optional<Candidate> chosen = decide(possible);
    if (chosen.isEmpty()) {
      return new TiedPoint.Unknown(List.of(Phrase.of("location.missing.side")));
    }
    Candidate found = chosen.get();
    return new TiedPoint.Found(
        found.point(),
        ties,
        angle(best),
        List.of(best.first(), best.second()),
        isLeft(found.point(), best),
        found.adjustment(),
        ErrorEllipse.of(
            found.point(), ties.stream().map(CornerTie::at).toList(), figures.tapeError()));
  }

  /** Both mirror points, each adjusted if there are more ties than two. */
  private static List<Candidate> candidates(Pair best, List<CornerTie> ties) {
    TieFix.Crossing crossing = (TieFix.Crossing) best.fix();
    return Stream.of(crossing.left(), crossing.right())
        .map(guess -> ties.size() == 2 ? plain(guess) : adjusted(guess, ties))
        .toList();
  }

  private static Candidate plain(Point guess) {
    return new Candidate(guess, Optional.empty());
  }

  private static Candidate adjusted(Point guess, List<CornerTie> ties) {
    TieAdjustment adjustment =
        TieAdjustment.from(guess, ties).orElse(TieAdjustment.unadjusted(guess, ties));
    return new Candidate(adjustment.point(), Optional.of(adjustment));
  }

  /** The only candidate, or the one that the other ties fit clearly better. */
  private Optional<Candidate> decide(List<Candidate> possible) {
    if (possible.size() == 1) {
      return Optional.of(possible.get(0));
    }
    Candidate a = possible.get(0);
    Candidate b = possible.get(1);
    if (BuildingPoint.horizontal(a.point(), b.point()).compareTo(figures.tapeError()) < 0) {
      return Optional.of(a);
    }
    double difference = leftOverMetres(a) - leftOverMetres(b);
    if (Math.abs(difference) <= figures.tapeError().inMetres()) {
      return Optional.empty();
    }
    return Optional.of(difference < 0 ? a : b);
  }

  private static double leftOverMetres(Candidate candidate) {
    return candidate.adjustment().map(a -> a.rootMeanSquare().inMetres()).orElse(0.0);
  }

  private static boolean isLeft(Point point, Pair pair) {
    PlanVector from = PlanVector.of(pair.first().at());
    PlanVector along = PlanVector.of(pair.second().at()).minus(from);
    PlanVector way = PlanVector.of(point).minus(from);
    return along.xMetres() * way.yMetres() - along.yMetres() * way.xMetres() > 0;
  }

  private static Angle angle(Pair pair) {
    return ((TieFix.Crossing) pair.fix()).atPoint();
  }

  /** A point may miss its area by as much as a tie may be off without being taken for a mistake. */
  private Length tolerance() {
    return figures.largestResidual();
  }
}
