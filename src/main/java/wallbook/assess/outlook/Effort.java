package wallbook.assess.outlook;

/** How much work a later use takes, the least first. */
public enum Effort {
  /** Equipment is plugged in at both ends. */
  PLUG_IN,
  /** One or both ends must first be terminated. */
  FINISH_ENDS,
  /** A cable must first be pulled through a conduit or laid outdoors. */
  PULL_CABLE,
  /** A conduit must first be proved or cleared, then a cable pulled. */
  PROVE_AND_PULL
}
