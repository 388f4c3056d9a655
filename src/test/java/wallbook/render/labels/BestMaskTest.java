package wallbook.render.labels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.decoder.Version;
import com.google.zxing.qrcode.encoder.Encoder;
import com.google.zxing.qrcode.encoder.QRCode;
import java.util.HashSet;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Held against the ZXing library, which tries the masks of ISO/IEC 18004 module by module. */
class BestMaskTest {
  private static final int LAST_VERSION = 11;
  private static final String LETTERS =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 $%*+-./:abcdefghijklmnopqrstuvwxyz,;()#é";

  private final Random random = new Random(18004);
  private final BestMask masks = new BestMask();

  @ParameterizedTest
  @EnumSource(ErrorCorrectionLevel.class)
  void everyModuleIsAsTheLibraryDrawsIt(ErrorCorrectionLevel level) throws WriterException {
    Set<Integer> versions = new HashSet<>();
    Set<Integer> chosen = new HashSet<>();
    for (int i = 0; i < 400; i++) {
      String text = text(1 + random.nextInt(130));
      QRCode expected = Encoder.encode(text, level);
      assertEquals(
          expected.getMatrix().toString(), masks.best(drawn(text, level)).toString(), text);
      versions.add(expected.getVersion().getVersionNumber());
      chosen.add(expected.getMaskPattern());
    }
    assertTrue(versions.size() > 5, "sizes tried: " + versions);
    assertEquals(8, chosen.size(), "masks chosen: " + chosen);
  }

  @ParameterizedTest
  @EnumSource(ErrorCorrectionLevel.class)
  void everySizeIsAsTheLibraryDrawsIt(ErrorCorrectionLevel level) throws WriterException {
    for (int version = 1; version <= LAST_VERSION; version++) {
      for (int i = 0; i < 10; i++) {
        String text = text(1 + random.nextInt(6));
        Map<EncodeHintType, Object> size = Map.of(EncodeHintType.QR_VERSION, version);
        QRCode expected = Encoder.encode(text, level, size);
        Map<EncodeHintType, Object> hints =
            Map.of(
                EncodeHintType.QR_VERSION,
                version,
                EncodeHintType.QR_MASK_PATTERN,
                BestMask.DRAWN_WITH);
        QRCode drawn = Encoder.encode(text, level, hints);
        assertEquals(
            expected.getMatrix().toString(), masks.best(drawn).toString(), version + " " + text);
      }
    }
  }

  @Test
  void largerCodesAreLeftToTheLibrary() {
    assertTrue(BestMask.suits(Version.getVersionForNumber(LAST_VERSION)));
    assertFalse(BestMask.suits(Version.getVersionForNumber(LAST_VERSION + 1)));
  }

  private static QRCode drawn(String text, ErrorCorrectionLevel level) throws WriterException {
    return Encoder.encode(text, level, Map.of(EncodeHintType.QR_MASK_PATTERN, BestMask.DRAWN_WITH));
  }

  private String text(int length) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < length; i++) {
      text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
    }
    return text.toString();
  }
}
