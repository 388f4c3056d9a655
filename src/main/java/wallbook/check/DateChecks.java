package wallbook.check;

import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.record.Conduit;
import wallbook.record.ExceptionItem;
import wallbook.record.HouseSystem;
import wallbook.record.Job;
import wallbook.record.Origin;
import wallbook.record.Revision;
import wallbook.record.Run;
import wallbook.record.RunTest;
import wallbook.wording.Phrase;

/** Whether the days of tests, proofs and issues can follow each other. */
final class DateChecks implements Check {
  private final Period calibrationInterval;
  private final Period testBeforeHandover;

  DateChecks(CheckFigures figures) {
    this.calibrationInterval = figures.period("calibration-interval");
    this.testBeforeHandover = figures.period("test-before-handover");
  }

  @Override
  public boolean findsErrors() {
    return false;
  }

  @Override
  public void look(Job job, Findings findings) {
    for (RunTest test : job.tests()) {
      checkCalibration(job.run(test.run()), test, findings);
    }
    lastIssue(job).ifPresent(last -> checkAfter(job, last, findings));
    job.facts().handover().ifPresent(day -> checkLongBefore(job, day, findings));
    checkHistory(job, findings);
  }

  /** The day that nothing recorded can lie after: the handover or the last issue of the record. */
  private static Optional<LocalDate> lastIssue(Job job) {
    Optional<LocalDate> issued =
        job.facts().history().stream().map(Revision::date).max(LocalDate::compareTo);
    return job.facts().handover().map(day -> issued.filter(date -> date.isAfter(day)).orElse(day));
  }

  private void checkCalibration(Run run, RunTest test, Findings findings) {
    if (test.calibrated().isEmpty()) {
      return;
    }
    LocalDate calibrated = test.calibrated().get();
    if (calibrated.isAfter(test.date())) {
      findings.add(
          RunFinding.of(
                  Severity.WARNING,
                  "test-older-than-calibration",
                  test.origin().position("calibrated"),
                  run,
                  "calibrated",
                  calibrated,
                  "date",
                  test.date())
              .found(calibrated.toString()));
    } else if (calibrated.plus(calibrationInterval).isBefore(test.date())) {
      findings.add(
          RunFinding.of(
                  Severity.WARNING,
                  "calibration-expired",
                  test.origin().position("calibrated"),
                  run,
                  "calibrated",
                  calibrated,
                  "date",
                  test.date(),
                  "months",
                  (int) calibrationInterval.toTotalMonths())
              .found(calibrated.toString()));
    }
  }

  private static void checkAfter(Job job, LocalDate last, Findings findings) {
    for (RunTest test : job.tests()) {
      after(test.origin(), "date", test.date(), last, "event.test", findings);
    }
    for (Conduit conduit : job.conduits()) {
      conduit
          .proved()
          .ifPresent(p -> after(p.origin(), "date", p.date(), last, "event.proof", findings));
    }
    for (HouseSystem system : job.systems()) {
      system
          .demonstrated()
          .ifPresent(
              d -> after(system.origin(), "demonstrated", d, last, "event.showing", findings));
    }
    for (ExceptionItem exception : job.exceptions()) {
      exception
          .agreed()
          .ifPresent(d -> after(exception.origin(), "agreed", d, last, "event.assent", findings));
    }
  }

  private static void after(
      Origin origin, String key, LocalDate date, LocalDate last, String event, Findings findings) {
    if (date.isAfter(last)) {
      findings.add(
          Finding.of(
                  Severity.WARNING,
                  "date-after-handover",
                  origin.position(key),
                  "event",
                  Phrase.of(event),
                  "date",
                  date,
                  "last",
                  last)
              .found(date.toString()));
    }
  }

  private void checkLongBefore(Job job, LocalDate handover, Findings findings) {
    LocalDate earliest = handover.minus(testBeforeHandover);
    for (RunTest test : job.tests()) {
      if (test.date().isBefore(earliest)) {
        findings.add(
            Finding.of(
                    Severity.WARNING,
                    "test-long-before-handover",
                    test.origin().position("date"),
                    "run",
                    job.run(test.run()).label(),
                    "date",
                    test.date(),
                    "months",
                    (int) testBeforeHandover.toTotalMonths())
                .found(test.date().toString()));
      }
    }
  }

  private static void checkHistory(Job job, Findings findings) {
    Revision before = null;
    for (Revision revision : job.facts().history()) {
      if (before != null
          && (revision.revision() <= before.revision()
              || revision.date().isBefore(before.date()))) {
        findings.add(
            Finding.of(
                    Severity.WARNING,
                    "history-out-of-order",
                    revision.origin().position(),
                    "revision",
                    revision.revision(),
                    "before",
                    before.revision())
                .found(Integer.toString(revision.revision())));
      }
      before = revision;
    }
    int current = job.facts().revision();
    if (before != null && before.revision() != current) {
      findings.add(
          Finding.of(
                  Severity.WARNING,
                  "revision-not-in-history",
                  job.facts().origin().position("revision"),
                  "revision",
                  current,
                  "last",
                  before.revision())
              .found(Integer.toString(current))
              .nearest(Optional.of(Integer.toString(before.revision()))));
    }
  }
}
