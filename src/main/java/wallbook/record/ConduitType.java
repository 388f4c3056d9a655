package wallbook.record;

/** Family of a conduit; the family decides the bore of a trade size. */
public enum ConduitType implements Word {
  ENT,
  EMT,
  PVC_40,
  PVC_80,
  RMC,
  FMC,
  IEC_PLIABLE,
  IEC_RIGID;
}
