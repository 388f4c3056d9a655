package wallbook.record;

/** What a run's end is terminated in. */
public enum Connector implements Word {
  EIGHT_POSITION_JACK,
  EIGHT_POSITION_PLUG,
  PUNCH_DOWN,
  F_CONNECTOR,
  N_CONNECTOR,
  LC,
  SC,
  SC_APC,
  BINDING_POST,
  SCREW_TERMINAL,
  BANANA_PLUG,
  HARD_WIRED;
}
