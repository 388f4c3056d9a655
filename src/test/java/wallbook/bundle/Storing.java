package wallbook.bundle;

import java.io.IOException;
import java.nio.file.Path;

/** Stores packages for tests. */
final class Storing {
  private Storing() {}

  static PackageDraft.Stored store(
      PackageWriter writer, Path into, PackageContents contents, PackageFile... files)
      throws PackageWriteException {
    try (PackageDraft draft = writer.begin(into, contents)) {
      for (PackageFile file : files) {
        draft.add(file);
      }
      return draft.store();
    }
  }

  /** A disk that fails at one of the files written to it, counted from 1, having begun with it. */
  static Disk failingAt(int count, String why) {
    return new Disk() {
      private int writes;

      @Override
      void write(Path file, byte[] bytes) throws IOException {
        if (++writes == count) {
          super.write(file, new byte[] {bytes[0]});
          throw new IOException(why);
        }
        super.write(file, bytes);
      }
    };
  }
}
