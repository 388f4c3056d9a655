package wallbook.bundle;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.CountDownLatch;

/**
 * A program that stores a package, says so before one step to the disk, and then stands still until
 * it is ended; when it is told to end, it goes on some moments later. The first argument is the
 * folder, the second the number of steps done before.
 */
final class SteppedWriter {
  static final String STANDING = "standing";
  static final String DONE = "done";

  static final PackageContents CONTENTS =
      new PackageContents("house", "1", LocalDate.of(2026, 3, 14), "0.1.0");

  private SteppedWriter() {}

  /** Stores a package of two files that hold the text. */
  static void store(PackageWriter writer, Path into, String text) throws PackageWriteException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    Storing.store(
        writer,
        into,
        CONTENTS,
        new PackageFile("a.txt", bytes),
        new PackageFile("trades/b.txt", bytes));
  }

  public static void main(String[] args) throws IOException {
    Disk disk = new StandingDisk(Integer.parseInt(args[1]));
    store(new PackageWriter(disk), Path.of(args[0]), "new");
    System.out.println(DONE);
  }

  private static final class StandingDisk extends Disk {
    private static final long MOMENTS_MILLIS = 500;

    private final CountDownLatch told = new CountDownLatch(1);
    private int left;

    private StandingDisk(int steps) {
      this.left = steps;
      Runtime.getRuntime().addShutdownHook(new Thread(told::countDown));
    }

    private void step() {
      if (left-- == 0) {
        System.out.println(STANDING);
        try {
          told.await();
          Thread.sleep(MOMENTS_MILLIS);
        } catch (InterruptedException e) {
          throw new IllegalStateException(e);
        }
      }
    }

    @Override
    void write(Path file, byte[] bytes) throws IOException {
      step();
      super.write(file, bytes);
    }

    @Override
    void sync(Path file) throws IOException {
      step();
      super.sync(file);
    }

    @Override
    void move(Path from, Path to) throws IOException {
      step();
      super.move(from, to);
    }

    @Override
    void delete(Path path) throws IOException {
      step();
      super.delete(path);
    }
  }
}
