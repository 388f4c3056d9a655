package wallbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.geometry.RoomOutline;
import wallbook.quantity.Area;
import wallbook.record.Job;
import wallbook.record.Space;

/** Outlines of spaces: closed, clockwise, apart from each other. */
final class OutlineChecks implements Check {
  private static final int LEAST_CORNERS = 3;

  private record Drawn(Space space, RoomOutline outline) {}

  private final Area overlapAllowed;

  OutlineChecks(CheckFigures figures) {
    this.overlapAllowed = figures.area("outline-overlap");
  }

  /** The outline of a space, if it has one that can be reckoned with. */
  static Optional<RoomOutline> sound(Space space) {
    return enough(space)
        .filter(o -> o.repeatedCorner().isEmpty() && !o.crossesItself() && o.isClockwise());
  }

  @Override
  public void look(Job job, Findings findings) {
    List<Drawn> rooms = new ArrayList<>();
    for (Space space : job.spaces()) {
      checkForm(space, findings);
      if (!space.kind().isOutdoor()) {
        sound(space).ifPresent(outline -> rooms.add(new Drawn(space, outline)));
      }
    }
    for (int i = 0; i < rooms.size(); i++) {
      for (int j = i + 1; j < rooms.size(); j++) {
        compare(rooms.get(i), rooms.get(j), findings);
      }
    }
  }

  private static Optional<RoomOutline> enough(Space space) {
    return Optional.of(space.outline())
        .filter(corners -> corners.size() >= LEAST_CORNERS)
        .map(RoomOutline::new);
  }

  private static void checkForm(Space space, Findings findings) {
    if (space.outline().isEmpty()) {
      return;
    }
    Optional<RoomOutline> outline = enough(space);
    if (outline.isEmpty()) {
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  "outline-too-short",
                  space.origin().position("outline"),
                  "space",
                  space.name(),
                  "count",
                  space.outline().size())
              .found(Integer.toString(space.outline().size())));
    } else if (outline.get().repeatedCorner().isPresent()) {
      findings.add(
          Finding.of(
              Severity.ERROR,
              "outline-repeats-corner",
              space.origin().position("outline"),
              "space",
              space.name(),
              "corner",
              outline.get().repeatedCorner().getAsInt() + 1));
    } else if (outline.get().crossesItself()) {
      add("outline-crosses-itself", space, findings);
    } else if (!outline.get().isClockwise()) {
      add("outline-anticlockwise", space, findings);
    }
  }

  private static void add(String name, Space space, Findings findings) {
    findings.add(
        Finding.of(
            Severity.ERROR, name, space.origin().position("outline"), "space", space.name()));
  }

  private void compare(Drawn a, Drawn b, Findings findings) {
    if (!a.space().floor().equals(b.space().floor())) {
      return;
    }
    Area shared = a.outline().areaSharedWith(b.outline());
    if (shared.compareTo(overlapAllowed) > 0) {
      findings.add(
          Finding.of(
              Severity.WARNING,
              "outlines-overlap",
              b.space().origin().position("outline"),
              "space",
              b.space().name(),
              "other",
              a.space().name()));
    }
  }
}
