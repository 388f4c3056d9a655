package wallbook.record;

/** What kind of test was made. */
public enum TestKind implements Word {
  WIRE_MAP,
  LENGTH,
  VERIFICATION,
  QUALIFICATION,
  CERTIFICATION,
  LIGHT_SOURCE,
  TONING,
  CONTINUITY,
  RESISTANCE;
}
