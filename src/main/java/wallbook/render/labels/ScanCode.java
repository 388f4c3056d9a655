package wallbook.render.labels;

import com.google.zxing.qrcode.encoder.ByteMatrix;
import wallbook.stock.LabelArea;

/**
 * A QR code (ISO/IEC 18004) at its place on a label.
 *
 * @param text what it says
 * @param modules its squares, without the white border; 1 is dark
 * @param square where it stands with its white border, in millimetres
 * @param moduleMm side of one of its squares
 */
record ScanCode(String text, ByteMatrix modules, LabelArea square, double moduleMm) {
  ScanCode moved(double rightMm, double downMm) {
    return new ScanCode(text, modules, square.moved(rightMm, downMm), moduleMm);
  }

  /** Distance from the edge of the square to the first module. */
  double borderMm() {
    return (square.widthMm() - modules.getWidth() * moduleMm) / 2;
  }
}
