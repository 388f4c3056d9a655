package wallbook.render.labels;

import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.decoder.Version;
import com.google.zxing.qrcode.encoder.ByteMatrix;

/**
 * What the modules of a code are for: data, which are masked, or patterns and notes on the code,
 * which aren't. ISO/IEC 18004:2015, clauses 6.3 and 7.9. Rows are numbers, as in {@link BestMask}.
 */
final class CodeArea {
  /** Side of a finder pattern with the white beside it and the notes on the format. */
  private static final int CORNER = 9;

  private static final int TIMING = 6;
  private static final int ALIGNMENT = 5;
  private static final int FIRST_WITH_VERSION = 7;
  private static final int VERSION_LONG = 6;
  private static final int VERSION_WIDE = 3;

  private static final int FORMAT_BITS = 15;
  private static final int FORMAT_CHECK_BITS = 10;
  private static final int FORMAT_GENERATOR = 0b101_0011_0111;
  private static final int FORMAT_MASK = 0b101_0100_0001_0010;

  private final int across;
  private final long[] data;

  /**
   * @param version at most {@link BestMask#MOST_ACROSS} modules across
   */
  CodeArea(Version version) {
    this.across = version.getDimensionForVersion();
    this.data = new long[across];
    mark(0, 0, across, across);
    int far = across - CORNER + 1;
    clear(0, 0, CORNER, CORNER);
    clear(far, 0, CORNER - 1, CORNER);
    clear(0, far, CORNER, CORNER - 1);
    clear(0, TIMING, across, 1);
    clear(TIMING, 0, 1, across);
    clearAlignment(version.getAlignmentPatternCenters());
    if (version.getVersionNumber() >= FIRST_WITH_VERSION) {
      clear(far - VERSION_WIDE, 0, VERSION_WIDE, VERSION_LONG);
      clear(0, far - VERSION_WIDE, VERSION_LONG, VERSION_WIDE);
    }
  }

  /** They stand at all crossings of their lines, but for the corners with finder patterns. */
  private void clearAlignment(int[] centres) {
    int last = centres.length - 1;
    for (int i = 0; i <= last; i++) {
      for (int j = 0; j <= last; j++) {
        boolean corner = i == 0 && (j == 0 || j == last) || i == last && j == 0;
        if (!corner) {
          int reach = ALIGNMENT / 2;
          clear(centres[i] - reach, centres[j] - reach, ALIGNMENT, ALIGNMENT);
        }
      }
    }
  }

  private void mark(int x, int y, int width, int height) {
    for (int row = y; row < y + height; row++) {
      data[row] |= columns(x, width);
    }
  }

  private void clear(int x, int y, int width, int height) {
    for (int row = y; row < y + height; row++) {
      data[row] &= ~columns(x, width);
    }
  }

  private static long columns(int x, int width) {
    return -1L >>> Long.SIZE - width << x;
  }

  /** The modules of a row that hold data. */
  long data(int y) {
    return data[y];
  }

  long[] rows(ByteMatrix matrix) {
    long[] rows = new long[across];
    for (int y = 0; y < across; y++) {
      for (int x = 0; x < across; x++) {
        rows[y] |= (long) matrix.get(x, y) << x;
      }
    }
    return rows;
  }

  ByteMatrix matrix(long[] rows) {
    ByteMatrix matrix = new ByteMatrix(across, across);
    for (int y = 0; y < across; y++) {
      for (int x = 0; x < across; x++) {
        matrix.set(x, y, (int) (rows[y] >>> x & 1));
      }
    }
    return matrix;
  }

  /** Writes level and mask in both places, with their check bits (clause 7.9.1, figure 25). */
  void writeFormat(long[] rows, ErrorCorrectionLevel level, int mask) {
    int format = format(level.getBits() << 3 | mask);
    for (int bit = 0; bit < FORMAT_BITS; bit++) {
      boolean dark = (format >>> bit & 1) == 1;
      int along = bit < TIMING ? bit : bit + 1;
      if (bit < CORNER - 1) {
        set(rows, CORNER - 1, along, dark);
        set(rows, across - 1 - bit, CORNER - 1, dark);
      } else {
        int back = FORMAT_BITS - 1 - bit;
        set(rows, back < TIMING ? back : back + 1, CORNER - 1, dark);
        set(rows, CORNER - 1, across - 1 - back, dark);
      }
    }
  }

  private static void set(long[] rows, int x, int y, boolean dark) {
    rows[y] = dark ? rows[y] | 1L << x : rows[y] & ~(1L << x);
  }

  /** Five bits with the ten of their BCH code (annex C). */
  private static int format(int fiveBits) {
    int remainder = fiveBits << FORMAT_CHECK_BITS;
    for (int bit = FORMAT_BITS - 1; bit >= FORMAT_CHECK_BITS; bit--) {
      if ((remainder >>> bit & 1) == 1) {
        remainder ^= FORMAT_GENERATOR << bit - FORMAT_CHECK_BITS;
      }
    }
    return (fiveBits << FORMAT_CHECK_BITS | remainder) ^ FORMAT_MASK;
  }
}
