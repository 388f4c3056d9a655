package wallbook.picture;

import java.util.Arrays;

/**
 * A picture that documents can show: a JPEG or PNG file made by {@link PictureReader}, upright, of
 * moderate size, without metadata.
 */
public final class Picture {
  private final byte[] file;
  private final int widthPx;
  private final int heightPx;

  Picture(byte[] file, int widthPx, int heightPx) {
    this.file = file.clone();
    this.widthPx = widthPx;
    this.heightPx = heightPx;
  }

  /** The JPEG or PNG file; a copy. */
  public byte[] file() {
    return file.clone();
  }

  /** Width as shown, in pixels. */
  public int widthPx() {
    return widthPx;
  }

  /** Height as shown, in pixels. */
  public int heightPx() {
    return heightPx;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Picture picture && Arrays.equals(file, picture.file);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(file);
  }
}
