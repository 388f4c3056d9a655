package wallbook.record;

/** When a photo was taken. */
public enum PhotoStage implements Word {
  ROUGH_IN,
  TRIM,
  FINAL;
}
