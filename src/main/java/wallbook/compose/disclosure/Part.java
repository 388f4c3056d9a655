package wallbook.compose.disclosure;

import java.util.EnumSet;
import java.util.Set;
import wallbook.record.PartyRole;

/**
 * What of a house is the business of one reader outside the household, and whom that reader may
 * have to call: what the reader's document tells, and what the extract of the record in it holds.
 */
public enum Part {
  /** All that may be told outside the household at all. */
  HOUSE(EnumSet.complementOf(EnumSet.of(PartyRole.OWNER))),
  /** What comes out of the house and what lies in the ground. */
  LANDSCAPING(EnumSet.of(PartyRole.OWNER, PartyRole.INTEGRATOR, PartyRole.ELECTRICIAN)),
  /** Equipment that is plugged in or bonded, low-voltage supplies, conduits. */
  ELECTRICAL(EnumSet.of(PartyRole.OWNER, PartyRole.INTEGRATOR, PartyRole.ELECTRICIAN)),
  /** Where a provider's line ends, the conduits to it, and what its fibre may be joined to. */
  ENTRANCE(
      EnumSet.of(PartyRole.OWNER, PartyRole.INTEGRATOR, PartyRole.PROVIDER, PartyRole.ELECTRICIAN)),
  /** What stays covered, what was sealed, what is not as promised. */
  BUILDER(EnumSet.of(PartyRole.OWNER, PartyRole.INTEGRATOR, PartyRole.BUILDER));

  private final Set<PartyRole> toCall;

  Part(Set<PartyRole> toCall) {
    this.toCall = toCall;
  }

  /** Whose names and numbers the reader is given. */
  public Set<PartyRole> toCall() {
    return EnumSet.copyOf(toCall);
  }
}
