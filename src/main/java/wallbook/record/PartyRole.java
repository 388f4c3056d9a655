package wallbook.record;

/** Part that somebody plays in the job. */
public enum PartyRole implements Word {
  OWNER,
  INTEGRATOR,
  BUILDER,
  ELECTRICIAN,
  LANDSCAPER,
  PROVIDER,
  OTHER;
}
