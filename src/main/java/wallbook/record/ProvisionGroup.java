package wallbook.record;

/** What the usual provision of a place counts. */
public enum ProvisionGroup implements Word {
  /** Four-pair cables of any category. */
  PAIRS,
  /** Four-pair cables of Category 6A. */
  PAIRS_CAT6A,
  /** Coaxial cables. */
  COAX,
  /** Fibre cables. */
  FIBRE,
  /** Fibre cables and conduits together. */
  FIBRE_OR_CONDUIT,
  /** Conduits that end at the place or open in its space. */
  CONDUIT,
  /** Conductors of speaker cable. */
  SPEAKER_CONDUCTORS,
  /** Control cables and four-pair cables together. */
  CONTROL_OR_PAIRS
}
