package wallbook.check;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.geometry.Wall;
import wallbook.quantity.Length;
import wallbook.record.Job;
import wallbook.record.Opening;
import wallbook.record.Place;
import wallbook.record.PlaceUse;
import wallbook.record.Space;

/** Doors and windows: within their wall, apart from each other, and free of plates. */
final class OpeningChecks implements Check {
  private static final Set<PlaceUse> IN_OPENINGS = Set.of(PlaceUse.CONTACT, PlaceUse.SHADE);
  private static final Length NONE = Length.metres(0);

  private final Length tolerance;

  OpeningChecks(CheckFigures figures) {
    this.tolerance = figures.length("place-tolerance");
  }

  @Override
  public void look(Job job, Findings findings) {
    for (Space space : job.spaces()) {
      List<Opening> openings = space.openings();
      for (int i = 0; i < openings.size(); i++) {
        checkOne(space, openings.get(i), findings);
        for (int j = 0; j < i; j++) {
          compare(space, openings.get(j), openings.get(i), findings);
        }
      }
    }
    job.places().forEach(place -> checkPlate(job.space(place.space()), place, findings));
  }

  private void checkOne(Space space, Opening opening, Findings findings) {
    PlaceChecks.checkWall(opening.origin(), Optional.of(opening.wall()), space, findings);
    Length right = opening.offset().plus(opening.width());
    OutlineChecks.sound(space)
        .flatMap(outline -> outline.wall(opening.wall()))
        .map(Wall::length)
        .filter(length -> right.compareTo(length.plus(tolerance)) > 0)
        .ifPresent(
            length ->
                findings.add(
                    Finding.of(
                        Severity.ERROR,
                        "opening-beyond-wall",
                        opening.origin().position("width"),
                        "space",
                        space.name(),
                        "wall",
                        opening.wall(),
                        "edge",
                        right,
                        "length",
                        length)));
    boolean upsideDown =
        opening.head().isPresent()
            && opening.head().get().compareTo(opening.sill().orElse(NONE)) <= 0;
    if (upsideDown) {
      findings.add(
          Finding.of(
              Severity.ERROR,
              "opening-upside-down",
              opening.origin().position("head"),
              "space",
              space.name(),
              "wall",
              opening.wall()));
    }
    boolean tooHigh =
        opening.head().isPresent()
            && space.ceilingHeight().isPresent()
            && opening.head().get().compareTo(space.ceilingHeight().get()) > 0;
    if (tooHigh) {
      findings.add(
          Finding.of(
              Severity.ERROR,
              "opening-above-ceiling",
              opening.origin().position("head"),
              "space",
              space.name(),
              "wall",
              opening.wall(),
              "height",
              opening.head().get(),
              "ceiling",
              space.ceilingHeight().get()));
    }
  }

  private static void compare(Space space, Opening first, Opening second, Findings findings) {
    boolean overlap =
        first.wall().equals(second.wall())
            && first.offset().compareTo(second.offset().plus(second.width())) < 0
            && second.offset().compareTo(first.offset().plus(first.width())) < 0
            && bottom(first).compareTo(top(second)) < 0
            && bottom(second).compareTo(top(first)) < 0;
    if (overlap) {
      findings.add(
          Finding.of(
              Severity.WARNING,
              "openings-overlap",
              second.origin().position("offset"),
              "space",
              space.name(),
              "wall",
              second.wall(),
              "line",
              first.origin().position().line()));
    }
  }

  private static void checkPlate(Space space, Place place, Findings findings) {
    if (IN_OPENINGS.contains(place.use())
        || place.wall().isEmpty()
        || place.offset().isEmpty()
        || place.height().isEmpty()) {
      return;
    }
    for (Opening opening : space.openings()) {
      boolean inside =
          opening.wall().equals(place.wall().get())
              && within(opening.offset(), place.offset().get(), right(opening))
              && within(bottom(opening), place.height().get(), top(opening))
              && opening.head().isPresent();
      if (inside) {
        findings.add(
            Finding.of(
                Severity.WARNING,
                "place-in-opening",
                place.origin().position("offset"),
                "place",
                place.name(),
                "wall",
                opening.wall(),
                "opening",
                Words.of("opening-kind", opening.kind())));
      }
    }
  }

  private static boolean within(Length least, Length value, Length most) {
    return value.compareTo(least) > 0 && value.compareTo(most) < 0;
  }

  private static Length right(Opening opening) {
    return opening.offset().plus(opening.width());
  }

  private static Length bottom(Opening opening) {
    return opening.sill().orElse(NONE);
  }

  /** Upper edge; without one the opening reaches as high as any room. */
  private static Length top(Opening opening) {
    return opening.head().orElse(Length.kilometres(1));
  }
}
