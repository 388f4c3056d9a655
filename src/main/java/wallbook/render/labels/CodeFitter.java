package wallbook.render.labels;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.decoder.Version;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import com.google.zxing.qrcode.encoder.QRCode;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallbook.stock.LabelArea;
import wallbook.stock.Legibility;

/**
 * Finds the fullest text whose code can be scanned at the size there is room for. Keeps what it
 * found, as drawing a code is dear.
 */
final class CodeFitter {
  private static final String ALPHANUMERIC = "[0-9A-Z $%*+./:-]*";
  private static final int SMALLEST_VERSION_MODULES = 21;
  private static final int MODULES_PER_VERSION = 4;
  private static final int MOST_VERSIONS = 40;

  private final Legibility legibility;
  private final BestMask masks = new BestMask();
  private final Map<Wanted, Optional<Found>> known = new HashMap<>();

  private record Wanted(List<String> forms, double sideMm) {}

  private record Found(String text, ByteMatrix modules) {}

  CodeFitter(Legibility legibility) {
    this.legibility = legibility;
  }

  /**
   * The code in the middle of a square; empty if not even the shortest text fits.
   *
   * @param forms texts, the fullest first
   */
  Optional<ScanCode> fit(List<String> forms, LabelArea room) {
    return known
        .computeIfAbsent(new Wanted(forms, room.widthMm()), this::find)
        .map(found -> placed(found, room));
  }

  private Optional<Found> find(Wanted wanted) {
    double most = wanted.sideMm() / legibility.leastModuleMm() - 2 * legibility.quietZoneModules();
    int versions =
        Math.min(
            MOST_VERSIONS,
            (int) Math.floor((most - SMALLEST_VERSION_MODULES) / MODULES_PER_VERSION) + 1);
    if (versions < 1) {
      return Optional.empty();
    }
    Version largest = Version.getVersionForNumber(versions);
    for (String text : wanted.forms()) {
      for (String letter : legibility.correctionLevels()) {
        ErrorCorrectionLevel level = ErrorCorrectionLevel.valueOf(letter);
        Optional<QRCode> code =
            mayHold(largest, level, text)
                ? encoded(text, level, Optional.of(BestMask.DRAWN_WITH))
                : Optional.empty();
        if (code.filter(c -> fits(c, largest)).isPresent()) {
          return code.map(c -> new Found(text, modules(text, c)));
        }
      }
    }
    return Optional.empty();
  }

  private ScanCode placed(Found found, LabelArea room) {
    int across = found.modules().getWidth() + 2 * legibility.quietZoneModules();
    double module = Math.min(room.widthMm() / across, legibility.largestModuleMm());
    double side = across * module;
    double inset = (room.widthMm() - side) / 2;
    LabelArea square = new LabelArea(room.xMm() + inset, room.yMm() + inset, side, side);
    return new ScanCode(found.text(), found.modules(), square, module);
  }

  /** Whether so many bytes can go into a code, so that others need not be drawn in vain. */
  private static boolean mayHold(Version version, ErrorCorrectionLevel level, String text) {
    int bytes =
        version.getTotalCodewords() - version.getECBlocksForLevel(level).getTotalECCodewords();
    return text.matches(ALPHANUMERIC) || text.getBytes(StandardCharsets.UTF_8).length <= bytes;
  }

  private static boolean fits(QRCode code, Version largest) {
    return code.getVersion().getVersionNumber() <= largest.getVersionNumber();
  }

  /** The squares with the best mask, which the library looks for more slowly. */
  private ByteMatrix modules(String text, QRCode code) {
    return BestMask.suits(code.getVersion())
        ? masks.best(code)
        : encoded(text, code.getECLevel(), Optional.empty()).orElseThrow().getMatrix();
  }

  private static Optional<QRCode> encoded(
      String text, ErrorCorrectionLevel level, Optional<Integer> mask) {
    Map<EncodeHintType, Object> hints = new EnumMap<>(EncodeHintType.class);
    mask.ifPresent(m -> hints.put(EncodeHintType.QR_MASK_PATTERN, m));
    // Plain ASCII needs no word on its encoding, which some old scanners stumble over.
    if (!StandardCharsets.US_ASCII.newEncoder().canEncode(text)) {
      hints.put(EncodeHintType.CHARACTER_SET, StandardCharsets.UTF_8.name());
    }
    try {
      return Optional.of(Encoder.encode(text, level, hints));
    } catch (WriterException e) {
      // More text than any code holds.
      return Optional.empty();
    }
  }
}
