package wallbook.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.quantity.Length;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.PlaceKind;
import wallbook.record.Run;
import wallbook.record.RunCondition;
import wallbook.record.Space;
import wallbook.record.StubOut;

/** Places that can't be found again, or that several entries claim. */
final class PositionGapChecks implements Check {
  private static final int ENOUGH_TIES = 2;

  /** What arithmetic with inches and feet may be off by. */
  private static final double ROUNDING_M = 1e-9;

  private final Length sameSpot;

  PositionGapChecks(CheckFigures figures) {
    this.sameSpot = figures.length("same-spot");
  }

  @Override
  public boolean needsWholeRecord() {
    return true;
  }

  @Override
  public boolean findsErrors() {
    return false;
  }

  @Override
  public void look(Job job, Findings findings) {
    Set<String> stubOuts = job.stubOuts().stream().map(StubOut::place).collect(Collectors.toSet());
    Map<String, List<Place>> earlier = new HashMap<>();
    for (Place place : job.places()) {
      if (place.kind() == PlaceKind.STUB_OUT || stubOuts.contains(place.id())) {
        checkTies(place, findings);
      } else {
        checkComplete(place, findings);
      }
      checkBlank(job, place, findings);
      List<Place> others = earlier.computeIfAbsent(place.space(), s -> new ArrayList<>());
      others.stream()
          .filter(other -> sameSpot(other, place))
          .findFirst()
          .ifPresent(other -> sameSpot(other, place, findings));
      others.add(place);
    }
    Set<String> onWalls = new HashSet<>();
    job.places().stream().filter(p -> p.wall().isPresent()).forEach(p -> onWalls.add(p.space()));
    job.heads().stream().filter(h -> h.wall().isPresent()).forEach(h -> onWalls.add(h.space()));
    job.spaces().forEach(space -> checkOutline(onWalls, space, findings));
  }

  private static void checkComplete(Place place, Findings findings) {
    boolean onWall =
        place.wall().isPresent() && place.offset().isPresent() && place.height().isPresent();
    boolean found = onWall || place.at().isPresent() || place.ties().size() >= ENOUGH_TIES;
    if (!found) {
      findings.add(
          Finding.of(
              Severity.WARNING,
              "position-incomplete",
              place.origin().position(),
              "place",
              place.name()));
    }
  }

  private static void checkTies(Place place, Findings findings) {
    boolean onWall = place.wall().isPresent() && place.offset().isPresent();
    Set<String> corners = new HashSet<>();
    place.ties().forEach(tie -> corners.add(tie.from()));
    if (!onWall && corners.size() < ENOUGH_TIES) {
      findings.add(
          Finding.of(
                  Severity.WARNING,
                  "stub-out-without-ties",
                  place.origin().position("ties"),
                  "place",
                  place.name(),
                  "count",
                  corners.size())
              .found(Integer.toString(corners.size())));
    }
  }

  private static void checkBlank(Job job, Place place, Findings findings) {
    if (place.kind() != PlaceKind.BLANK_PLATE) {
      return;
    }
    for (Run run : job.runsAt(place)) {
      if (run.condition() == RunCondition.IN_SERVICE) {
        findings.add(
            Finding.of(
                    Severity.WARNING,
                    "blank-plate-in-service",
                    place.origin().position("kind"),
                    "place",
                    place.name(),
                    "run",
                    run.label())
                .found(place.kind().word()));
      }
    }
  }

  private boolean sameSpot(Place a, Place b) {
    return a.wall().isPresent()
        && a.wall().equals(b.wall())
        && a.offset().isPresent()
        && b.offset().isPresent()
        && a.height().isPresent()
        && b.height().isPresent()
        && near(a.offset().get(), b.offset().get())
        && near(a.height().get(), b.height().get());
  }

  private boolean near(Length a, Length b) {
    return Math.abs(a.inMetres() - b.inMetres()) < sameSpot.inMetres() - ROUNDING_M;
  }

  private static void sameSpot(Place other, Place place, Findings findings) {
    findings.add(
        Finding.of(
            Severity.REMARK,
            "two-places-at-one-spot",
            place.origin().position("offset"),
            "place",
            place.name(),
            "other",
            other.name()));
  }

  private static void checkOutline(Set<String> onWalls, Space space, Findings findings) {
    if (onWalls.contains(space.id()) && space.outline().isEmpty()) {
      findings.add(
          Finding.of(
              Severity.REMARK,
              "space-without-outline",
              space.origin().position(),
              "space",
              space.name()));
    }
  }
}
