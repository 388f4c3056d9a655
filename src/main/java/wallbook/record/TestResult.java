package wallbook.record;

/** Outcome as the instrument or the tester gave it. */
public enum TestResult implements Word {
  PASS,
  FAIL,
  NOT_JUDGED;
}
