package wallbook.record;

/** A choice of the record, written as a lower-case word with underscores. */
public interface Word {

  /** The constant's name, as every enum has it. */
  String name();

  /** The word as written in the record. */
  default String word() {
    return Words.of(this);
  }
}
