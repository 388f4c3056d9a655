package wallbook.compose.disclosure;

import wallbook.record.JobRecord;
import wallbook.record.Origin;

/** Tells the parts of a record, which are made of fields, from plain values. */
final class Parts {
  private static final Package OF_THE_RECORD = JobRecord.class.getPackage();

  private Parts() {}

  /** Whether a value is made of fields that have an origin. */
  static boolean isPart(Object value) {
    return value instanceof Record record
        && record.getClass().getPackage() == OF_THE_RECORD
        && record.getClass().getRecordComponents()[0].getType() == Origin.class;
  }

  /** Where a part stands in its file. */
  static Origin origin(Record part) {
    try {
      return (Origin) part.getClass().getRecordComponents()[0].getAccessor().invoke(part);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("a part of the record can't be read", e);
    }
  }
}
