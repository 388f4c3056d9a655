package wallbook.record;

/** Standard whose limits a test was judged by. */
public enum TestStandard implements Word {
  TIA_568_2_D,
  ISO_11801_1;
}
