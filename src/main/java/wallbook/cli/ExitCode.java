package wallbook.cli;

/** Exit codes that scripts can rely on. */
final class ExitCode {
  /** Done, and nothing to remark that stands in the way of a handover. */
  static final int CLEAN = 0;

  /** Done, but warnings should be settled before anyone signs. */
  static final int WARNINGS = 1;

  /** The record has errors; nothing was written. */
  static final int ERRORS = 2;

  /** The command line can't be understood; nothing was written. */
  static final int USAGE = 64;

  /** A template, the disk or the program failed; nothing was written. */
  static final int FAILED = 70;

  private ExitCode() {}
}
