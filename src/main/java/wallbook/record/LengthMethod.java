package wallbook.record;

/** How the length of a run was found. */
public enum LengthMethod implements Word {
  FOOT_MARKS,
  TESTER,
  TAPE,
  ESTIMATE;
}
