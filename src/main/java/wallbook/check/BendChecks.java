package wallbook.check;

import java.util.ArrayList;
import java.util.List;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.quantity.Angle;
import wallbook.quantity.Length;
import wallbook.quantity.Ratio;
import wallbook.record.Conduit;
import wallbook.record.Job;
import wallbook.record.PathPiece;
import wallbook.reference.Row;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/** Bends and lengths of conduits between one pull point and the next. */
final class BendChecks implements Check {
  private final Table limits;
  private final Ratio pathDifference;

  BendChecks(Tables tables, CheckFigures figures) {
    this.limits = tables.table("conduit-bend-limits");
    this.pathDifference = figures.share("path-length");
  }

  @Override
  public boolean findsErrors() {
    return false;
  }

  @Override
  public void look(Job job, Findings findings) {
    for (Conduit conduit : job.conduits()) {
      sections(conduit).forEach(section -> checkSection(conduit, section, findings));
      checkSingleBends(conduit, findings);
      compareLength(conduit, findings);
    }
  }

  /** The pieces between one pull point and the next; pull boxes part them. */
  private static List<List<PathPiece>> sections(Conduit conduit) {
    List<List<PathPiece>> sections = new ArrayList<>();
    List<PathPiece> section = new ArrayList<>();
    for (PathPiece piece : conduit.path()) {
      if (piece.pullBox().isPresent()) {
        sections.add(section);
        section = new ArrayList<>();
      } else {
        section.add(piece);
      }
    }
    sections.add(section);
    return sections.stream().filter(s -> !s.isEmpty()).toList();
  }

  private void checkSection(Conduit conduit, List<PathPiece> section, Findings findings) {
    double bentDegrees =
        section.stream().flatMap(p -> p.bend().stream()).mapToDouble(Angle::inDegrees).sum();
    String family = conduit.type().word().replace('_', '-');
    Row practice = limits.row("tia-569", "any");
    double codeDegrees =
        limits
            .find("nec", family)
            .map(row -> row.number("total_deg"))
            .orElse(Double.POSITIVE_INFINITY);
    if (bentDegrees > codeDegrees) {
      bent(
          Severity.WARNING,
          "bends-beyond-code",
          conduit,
          section,
          bentDegrees,
          codeDegrees,
          limits.row("nec", family),
          findings);
    } else if (bentDegrees > practice.number("total_deg")) {
      bent(
          Severity.REMARK,
          "bends-beyond-practice",
          conduit,
          section,
          bentDegrees,
          practice.number("total_deg"),
          practice,
          findings);
    }
    Length length = lengthOf(section);
    Length longest = Length.metres(practice.number("length_m"));
    if (length.compareTo(longest) > 0) {
      findings.add(
          Finding.of(
              Severity.REMARK,
              "section-beyond-practice",
              section.get(0).origin().position(),
              "conduit",
              conduit.label(),
              "length",
              length,
              "limit",
              longest,
              "source",
              practice.source().citation()));
    }
  }

  private static void bent(
      Severity severity,
      String name,
      Conduit conduit,
      List<PathPiece> section,
      double bentDegrees,
      double limitDegrees,
      Row rule,
      Findings findings) {
    findings.add(
        Finding.of(
            severity,
            name,
            section.get(0).origin().position(),
            "conduit",
            conduit.label(),
            "total",
            Angle.degrees(bentDegrees),
            "limit",
            Angle.degrees(limitDegrees),
            "source",
            rule.source().citation()));
  }

  private void checkSingleBends(Conduit conduit, Findings findings) {
    Row practice = limits.row("tia-569", "any");
    Angle limit = Angle.degrees(practice.number("single_deg"));
    for (PathPiece piece : conduit.path()) {
      piece
          .bend()
          .filter(bend -> bend.inDegrees() > limit.inDegrees())
          .ifPresent(
              bend ->
                  findings.add(
                      Finding.of(
                          Severity.REMARK,
                          "bend-beyond-practice",
                          piece.origin().position("bend"),
                          "conduit",
                          conduit.label(),
                          "bend",
                          bend,
                          "limit",
                          limit,
                          "source",
                          practice.source().citation())));
    }
  }

  private void compareLength(Conduit conduit, Findings findings) {
    if (conduit.length().isEmpty() || conduit.path().isEmpty()) {
      return;
    }
    double recorded = conduit.length().get().inMetres();
    Length path = lengthOf(conduit.path());
    boolean complete =
        conduit.path().stream().allMatch(p -> p.bend().isEmpty() || p.radius().isPresent());
    double allowed = recorded * pathDifference.inPercent() / 100 + 1e-9;
    boolean tooLong = path.inMetres() > recorded + allowed;
    boolean tooShort = complete && path.inMetres() < recorded - allowed;
    if (tooLong || tooShort) {
      findings.add(
          Finding.of(
              Severity.WARNING,
              "path-length-differs",
              conduit.origin().position("length"),
              "conduit",
              conduit.label(),
              "recorded",
              conduit.length().get(),
              "path",
              path,
              "share",
              pathDifference));
    }
  }

  /** Straight lengths and, where the radius is known, the arcs of bends. */
  private static Length lengthOf(List<PathPiece> pieces) {
    double metres = 0;
    for (PathPiece piece : pieces) {
      metres += piece.straight().map(Length::inMetres).orElse(0.0);
      if (piece.bend().isPresent() && piece.radius().isPresent()) {
        metres += Math.toRadians(piece.bend().get().inDegrees()) * piece.radius().get().inMetres();
      }
    }
    return Length.metres(metres);
  }
}
