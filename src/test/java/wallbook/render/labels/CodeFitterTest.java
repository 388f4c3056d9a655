package wallbook.render.labels;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.reference.Tables;
import wallbook.stock.LabelArea;
import wallbook.stock.Legibility;

class CodeFitterTest {
  private static final LabelArea WIDE = new LabelArea(0, 0, 90, 90);

  private final Legibility legibility = new Legibility(new Tables());

  /** The second is drawn larger than {@link BestMask} is made for. */
  @ParameterizedTest
  @ValueSource(ints = {5, 100})
  void aCodeIsTheOneThatTheLibraryDraws(int times) throws WriterException {
    String text = "K-07 Kitchen ".repeat(times);
    ScanCode code = new CodeFitter(legibility).fit(List.of(text), WIDE).orElseThrow();
    ErrorCorrectionLevel level = ErrorCorrectionLevel.valueOf(legibility.correctionLevels().get(0));
    assertEquals(Encoder.encode(text, level).getMatrix().toString(), code.modules().toString());
  }
}
