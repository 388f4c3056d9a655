package wallbook.render.labels;

/**
 * How hard a masked code would be to scan: the points of ISO/IEC 18004:2015, table 11. Rows are
 * numbers, as in {@link BestMask}; the features are looked for in all columns of a row at once.
 */
final class MaskPenalty {
  private static final int RUN_POINTS = 3;
  private static final int BLOCK_POINTS = 3;
  private static final int FINDER_POINTS = 40;
  private static final int SHARE_POINTS = 10;

  /** Each twentieth that the dark modules are from one half of all costs the points once. */
  private static final int SHARE_STEPS = 20;

  private static final int FINDER_LONG = 7;
  private static final int WHITE_LONG = 4;

  private final long[] rows;
  private final int last;
  private final long all;

  /**
   * @param rows of a square code
   */
  MaskPenalty(long[] rows) {
    this.rows = rows;
    this.last = rows.length - 1;
    this.all = -1L >>> Long.SIZE - rows.length;
  }

  int total() {
    int points = share();
    long runsAbove = 0;
    for (int y = 0; y <= last; y++) {
      long alongRow = runsAlongRow(rows[y]);
      points += runs(alongRow, alongRow << 1);
      points += FINDER_POINTS * Long.bitCount(findersAlongRow(rows[y]));
      points += FINDER_POINTS * Long.bitCount(findersDownFrom(y));
      points += BLOCK_POINTS * Long.bitCount(blocksBelow(y));
      long down = runsDownFrom(y);
      points += runs(down, runsAbove);
      runsAbove = down;
    }
    return points;
  }

  /**
   * Five in line cost three points, each that follows them one more.
   *
   * @param starts where five in line begin
   * @param before where five in line begin one module earlier, so that these only go on
   */
  private static int runs(long starts, long before) {
    return Long.bitCount(starts) + (RUN_POINTS - 1) * Long.bitCount(starts & ~before);
  }

  private long runsAlongRow(long row) {
    long pairs = ~(row ^ row >>> 1) & all >>> 1;
    long threes = pairs & pairs >>> 1;
    return threes & threes >>> 2;
  }

  private long runsDownFrom(int y) {
    return y + 4 > last
        ? 0
        : pairsBelow(y) & pairsBelow(y + 1) & pairsBelow(y + 2) & pairsBelow(y + 3);
  }

  private long pairsBelow(int y) {
    return ~(rows[y] ^ rows[y + 1]) & all;
  }

  /** Left upper corners of squares of two by two. */
  private long blocksBelow(int y) {
    if (y == last) {
      return 0;
    }
    long below = pairsBelow(y);
    return below & below >>> 1 & ~(rows[y] ^ rows[y] >>> 1);
  }

  /** Dark, white, three dark, white, dark, with four white on one side. */
  private long findersAlongRow(long row) {
    long finders =
        row & ~(row >>> 1) & row >>> 2 & row >>> 3 & row >>> 4 & ~(row >>> 5) & row >>> 6;
    long white = ~row & all;
    long fourWhite = white & white >>> 1 & white >>> 2 & white >>> 3;
    return finders & (fourWhite << WHITE_LONG | fourWhite >>> FINDER_LONG);
  }

  private long findersDownFrom(int y) {
    if (y + FINDER_LONG - 1 > last) {
      return 0;
    }
    long dark = rows[y] & rows[y + 2] & rows[y + 3] & rows[y + 4] & rows[y + 6];
    long finders = dark & ~rows[y + 1] & ~rows[y + 5];
    return finders == 0
        ? 0
        : finders & (whiteDownFrom(y - WHITE_LONG) | whiteDownFrom(y + FINDER_LONG));
  }

  private long whiteDownFrom(int y) {
    return y < 0 || y + WHITE_LONG - 1 > last
        ? 0
        : ~(rows[y] | rows[y + 1] | rows[y + 2] | rows[y + 3]);
  }

  private int share() {
    int dark = 0;
    for (long row : rows) {
      dark += Long.bitCount(row);
    }
    int modules = rows.length * rows.length;
    int fromHalf = Math.abs(2 * dark - modules);
    return SHARE_POINTS * (SHARE_STEPS / 2 * fromHalf / modules);
  }
}
