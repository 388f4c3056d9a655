package wallbook.record;

/** Fire rating marked on a cable's jacket. */
public enum Jacket implements Word {
  CMP,
  CMR,
  CM,
  CMX,
  CL3P,
  CL3R,
  CL3,
  CL2P,
  CL2R,
  CL2,
  CL2X,
  CL3X,
  OFNP,
  OFNR,
  OFN,
  CATVP,
  CATVR,
  CATV,
  UNMARKED;
}
