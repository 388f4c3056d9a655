package wallbook.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import wallbook.check.Checks;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
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
    return of(record, new Groundwork(tables));
  }

  /** The same, for those who began before they knew the record. */
  static Reading of(Path record, Groundwork groundwork) {
    return of(groundwork.reader().read(record), groundwork);
  }

  /**
   * Reads a record for an answer in words, which takes no pictures and rests on a record without
   * errors, whatever else may be said of it.
   *
   * @return the job, if there is no error, with findings that are errors only
   */
  static Reading forAnswer(Path record, Groundwork groundwork) {
    ReadResult result = groundwork.reader().withoutPictures().read(record);
    Findings findings = new Findings();
    result.job().map(job -> groundwork.checks().errors(job)).ifPresent(findings::addAll);
    Optional<Job> job = result.job().filter(j -> !findings.hasErrors());
    return new Reading(job, result.soundPart(), findings.inReportOrder());
  }

  private static Reading of(ReadResult result, Groundwork groundwork) {
    Findings findings = new Findings();
    findings.addAll(result.findings());
    Checks checks = groundwork.checks();
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
