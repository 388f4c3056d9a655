package wallbook.check;

import java.util.Optional;
import java.util.stream.Stream;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.quantity.Length;
import wallbook.quantity.Ratio;
import wallbook.record.Coil;
import wallbook.record.Conduit;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.record.StubOut;
import wallbook.reference.Row;
import wallbook.reference.Tables;

/** Exterior ends: what is coiled there, how deep, out of which conduit. */
final class StubOutChecks implements Check {
  private final Row leastCover;
  private final Ratio coilDifference;

  StubOutChecks(Tables tables, CheckFigures figures) {
    this.leastCover = tables.table("burial-cover").row("low-voltage", "garden");
    this.coilDifference = figures.share("coil-length");
  }

  @Override
  public void look(Job job, Findings findings) {
    for (StubOut stubOut : job.stubOuts()) {
      stubOut.coiled().forEach(coil -> checkCoil(job, stubOut, coil, findings));
      stubOut.conduit().ifPresent(id -> checkConduit(job, stubOut, job.conduit(id), findings));
      checkCover(job, stubOut, findings);
      checkSpace(job, stubOut, findings);
      if (stubOut.lineStillToLay().isPresent() && stubOut.lineBy().isEmpty()) {
        findings.add(
            Finding.of(
                Severity.WARNING,
                "line-without-layer",
                stubOut.origin().position("line_still_to_lay"),
                "place",
                job.place(stubOut.place()).name()));
      }
    }
  }

  private void checkCoil(Job job, StubOut stubOut, Coil coil, Findings findings) {
    Run run = job.run(coil.run());
    Optional<RunEnd> end =
        Stream.of(run.from(), run.to())
            .filter(e -> e.place().filter(stubOut.place()::equals).isPresent())
            .findFirst();
    if (end.isEmpty()) {
      findings.add(
          RunFinding.of(
                  Severity.ERROR,
                  "coil-of-another-place",
                  coil.origin().position("run"),
                  run,
                  "place",
                  job.place(stubOut.place()).name())
              .found(run.id()));
      return;
    }
    end.get()
        .slack()
        .filter(slack -> differ(slack, coil.length()))
        .ifPresent(
            slack ->
                findings.add(
                    RunFinding.of(
                        Severity.WARNING,
                        "coil-differs-from-slack",
                        coil.origin().position("length"),
                        run,
                        "coil",
                        coil.length(),
                        "slack",
                        slack)));
  }

  private boolean differ(Length slack, Length coil) {
    double apart = Math.abs(slack.inMetres() - coil.inMetres());
    return apart > slack.inMetres() * coilDifference.inPercent() / 100 + 1e-9;
  }

  private static void checkConduit(Job job, StubOut stubOut, Conduit conduit, Findings findings) {
    boolean endsThere =
        Stream.of(conduit.from(), conduit.to())
            .anyMatch(end -> end.place().filter(stubOut.place()::equals).isPresent());
    if (!endsThere) {
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  "stub-out-of-another-conduit",
                  stubOut.origin().position("conduit"),
                  "conduit",
                  conduit.label(),
                  "place",
                  job.place(stubOut.place()).name())
              .found(conduit.id()));
    }
  }

  private void checkCover(Job job, StubOut stubOut, Findings findings) {
    Length least = Length.inches(leastCover.number("cover_in"));
    String place = job.place(stubOut.place()).name();
    if (stubOut.cover().isEmpty()) {
      findings.add(
          Finding.of(
              Severity.REMARK, "cover-not-recorded", stubOut.origin().position(), "place", place));
    } else if (stubOut.cover().get().compareTo(least) < 0) {
      findings.add(
          Finding.of(
              Severity.WARNING,
              "cover-below-least",
              stubOut.origin().position("cover"),
              "place",
              place,
              "cover",
              stubOut.cover().get(),
              "least",
              least,
              "source",
              leastCover.source().citation()));
    }
  }

  private static void checkSpace(Job job, StubOut stubOut, Findings findings) {
    if (!job.space(job.place(stubOut.place()).space()).kind().isOutdoor()) {
      findings.add(
          Finding.of(
                  Severity.WARNING,
                  "stub-out-indoors",
                  stubOut.origin().position("place"),
                  "place",
                  job.place(stubOut.place()).name(),
                  "space",
                  job.space(job.place(stubOut.place()).space()).name())
              .found(stubOut.place()));
    }
  }
}
