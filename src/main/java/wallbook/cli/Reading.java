package wallbook.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import wallbook.check.Checks;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.read.JobReader;
import wallbook.read.ReadResult;
import wallbook.record.Job;
import wallbook.reference.Tables;

/**
 * A record read and checked.
 *
 * @param job the job, if there is no error
 * @param about the job as far as it could be understood; its facts choose the words of the report
 * @param findings everything found, gravest first
 */
record Reading(Optional<Job> job, Optional<Job> about, List<Finding> findings) {

  /** Reads and checks a record; checks go on over what is sound after mistakes of form. */
  static Reading of(Path record, Tables tables) {
    return of(new JobReader(tables).read(record), tables);
  }

  /**
   * Reads a record for an answer in words, which takes no pictures and rests on a record without
   * errors, whatever else may be said of it.
   *
   * @param checks may still be in the making while the record is read
   * @return the job, if there is no error, with findings that are errors only
   */
  static Reading forAnswer(Path record, Tables tables, CompletableFuture<Checks> checks) {
    ReadResult result = new JobReader(tables).withoutPictures().read(record);
    Findings findings = new Findings();
    result.job().map(checks.join()::errors).ifPresent(findings::addAll);
    Optional<Job> job = result.job().filter(j -> !findings.hasErrors());
    return new Reading(job, result.soundPart(), findings.inReportOrder());
  }

  private static Reading of(ReadResult result, Tables tables) {
    Findings findings = new Findings();
    findings.addAll(result.findings());
    Checks checks = new Checks(tables);
    if (result.job().isPresent()) {
      findings.addAll(checks.check(result.job().get()));
    } else {
      result.soundPart().map(checks::checkSoundPart).ifPresent(findings::addAll);
    }
    Optional<Job> job = result.job().filter(j -> !findings.hasErrors());
    return new Reading(job, result.soundPart(), findings.inReportOrder());
  }

  /** The exit code that the findings call for. */
  int exitCode() {
    if (job.isEmpty()) {
      return ExitCode.ERRORS;
    }
    return findings.stream().anyMatch(f -> f.severity() == Severity.WARNING)
        ? ExitCode.WARNINGS
        : ExitCode.CLEAN;
  }
}
