package wallbook.record;

/** What part of the path a limit is for. */
public enum LinkConfiguration implements Word {
  PERMANENT_LINK,
  CHANNEL;
}
