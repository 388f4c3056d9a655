package wallbook.record;

/** Order of the pairs on an eight-position jack. */
public enum WiringScheme implements Word {
  T568A,
  T568B;
}
