package wallbook.render.labels;

import com.google.zxing.qrcode.decoder.Version;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.QRCode;

/**
 * Gives a code that was drawn with one mask the best of the eight, by the penalties of ISO/IEC
 * 18004:2015, clause 7.8.3. A row of modules is one number, a bit for each module, so that a rule
 * is tried on a whole row at once; the library that draws the codes comes to the same choice module
 * by module, and slowly.
 *
 * <p>Column {@code x} of a row is bit {@code x}; 1 is dark.
 */
final class BestMask {
  /** Mask of the code that is handed in. */
  static final int DRAWN_WITH = 0;

  private static final int MOST_ACROSS = Long.SIZE;

  private static final int MASKS = 8;

  /** All masks repeat after so many rows and columns. */
  private static final int PERIOD = 12;

  private final long[][] masks = new long[MASKS][PERIOD];

  BestMask() {
    for (int mask = 0; mask < MASKS; mask++) {
      for (int y = 0; y < PERIOD; y++) {
        for (int x = 0; x < MOST_ACROSS; x++) {
          if (turns(mask, x, y)) {
            masks[mask][y] |= 1L << x;
          }
        }
      }
    }
  }

  /** The conditions of table 10 of the standard, where its i is the row and j the column. */
  private static boolean turns(int mask, int x, int y) {
    int remainder =
        switch (mask) {
          case 0 -> (y + x) % 2;
          case 1 -> y % 2;
          case 2 -> x % 3;
          case 3 -> (y + x) % 3;
          case 4 -> (y / 2 + x / 3) % 2;
          case 5 -> y * x % 2 + y * x % 3;
          case 6 -> (y * x % 2 + y * x % 3) % 2;
          default -> ((y + x) % 2 + y * x % 3) % 2;
        };
    return remainder == 0;
  }

  /** Whether a row of such a code has no more modules than a number has bits. */
  static boolean suits(Version version) {
    return version.getDimensionForVersion() <= MOST_ACROSS;
  }

  /**
   * The modules with the mask of least penalty, of equals the first.
   *
   * @param drawn a code with mask {@link #DRAWN_WITH}, of a version that {@link #suits}
   */
  ByteMatrix best(QRCode drawn) {
    CodeArea area = new CodeArea(drawn.getVersion());
    long[] plain = masked(area.rows(drawn.getMatrix()), area, DRAWN_WITH);
    long[] best = plain;
    int least = Integer.MAX_VALUE;
    for (int mask = 0; mask < MASKS; mask++) {
      long[] rows = masked(plain, area, mask);
      area.writeFormat(rows, drawn.getECLevel(), mask);
      int penalty = new MaskPenalty(rows).total();
      if (penalty < least) {
        least = penalty;
        best = rows;
      }
    }
    return area.matrix(best);
  }

  private long[] masked(long[] rows, CodeArea area, int mask) {
    long[] masked = new long[rows.length];
    for (int y = 0; y < rows.length; y++) {
      masked[y] = rows[y] ^ masks[mask][y % PERIOD] & area.data(y);
    }
    return masked;
  }
}
