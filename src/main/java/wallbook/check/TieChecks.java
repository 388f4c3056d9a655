package wallbook.check;

import java.util.List;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.quantity.Length;
import wallbook.record.Corner;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.Point;
import wallbook.record.Tie;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/**
 * Ties from fixed corners: whether they can meet, and meet where the plan has the place. Of two
 * ties r and s from corners b apart, none may be longer than the other and b together.
 */
final class TieChecks implements Check {
  private final Length tapeError;
  private final double errorsAllowed;

  TieChecks(Tables tables) {
    Table practice = tables.table("tie-practice");
    this.tapeError = Length.feet(practice.row("tape-error").number("value"));
    this.errorsAllowed = practice.row("residual-tolerance").number("value");
  }

  @Override
  public void look(Job job, Findings findings) {
    for (Place place : job.places()) {
      checkPairs(job, place, findings);
      place.at().ifPresent(at -> compareWithPoint(job, place, at, findings));
    }
  }

  private void checkPairs(Job job, Place place, Findings findings) {
    List<Tie> ties = place.ties();
    for (int i = 0; i < ties.size(); i++) {
      for (int j = i + 1; j < ties.size(); j++) {
        comparePair(job, place, ties.get(i), ties.get(j), findings);
      }
    }
  }

  private void comparePair(Job job, Place place, Tie first, Tie second, Findings findings) {
    Corner a = job.corner(first.from());
    Corner b = job.corner(second.from());
    double r = first.distance().inMetres();
    double s = second.distance().inMetres();
    double base = apart(a.at(), b.at()).inMetres();
    double slip = 2 * tapeError.inMetres();
    boolean meet = r + s + slip >= base && Math.abs(r - s) <= base + slip;
    if (!meet) {
      findings.add(
          Finding.of(
              Severity.ERROR,
              "ties-contradict",
              second.origin().position("distance"),
              "place",
              place.name(),
              "first",
              first.distance(),
              "firstCorner",
              a.name(),
              "second",
              second.distance(),
              "secondCorner",
              b.name(),
              "apart",
              Length.metres(base)));
    }
  }

  private void compareWithPoint(Job job, Place place, Point at, Findings findings) {
    for (Tie tie : place.ties()) {
      Corner corner = job.corner(tie.from());
      Length drawn = apart(corner.at(), at);
      double off = Math.abs(drawn.inMetres() - tie.distance().inMetres());
      if (off > errorsAllowed * tapeError.inMetres()) {
        findings.add(
            Finding.of(
                Severity.WARNING,
                "tie-differs-from-plan",
                tie.origin().position("distance"),
                "place",
                place.name(),
                "tie",
                tie.distance(),
                "corner",
                corner.name(),
                "drawn",
                drawn));
      }
    }
  }

  private static Length apart(Point a, Point b) {
    return Length.metres(
        Math.hypot(a.x().inMetres() - b.x().inMetres(), a.y().inMetres() - b.y().inMetres()));
  }
}
