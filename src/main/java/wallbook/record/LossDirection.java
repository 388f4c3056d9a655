package wallbook.record;

/** Direction of an optical loss reading. */
public enum LossDirection implements Word {
  FROM_TO,
  TO_FROM;
}
