package wallbook.bundle;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.SecureRandom;
import java.time.Duration;

/**
 * What keeps a second writer away from a package: a hidden file beside it, locked by the system, so
 * that the lock ends with its process however that ends.
 */
final class WriterLock {
  private static final long PAUSE_MILLIS = 50;
  private static final int MOST_BYTES = 1 << 20;

  /** Behind what the file holds, since some systems let nobody write what is locked. */
  private static final long LOCKED_BYTE = MOST_BYTES;

  private final Path file;
  private final FileChannel channel;

  private WriterLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /**
   * Takes the lock of a package.
   *
   * @param patience how long to wait for another writer
   * @throws PackageWriteException if another writer has it, or no file can be made there
   */
  static WriterLock take(Path into, String name, Duration patience) throws PackageWriteException {
    Path file = into.resolve("." + name + "~lock");
    long end = System.nanoTime() + patience.toNanos();
    try {
      while (true) {
        FileChannel channel =
            FileChannel.open(
                file,
                StandardOpenOption.CREATE,
                StandardOpenOption.WRITE,
                LinkOption.NOFOLLOW_LINKS);
        if (isOurs(channel, file)) {
          return new WriterLock(file, channel);
        }
        channel.close();
        if (System.nanoTime() >= end) {
          throw new PackageWriteException(
              into.resolve(name), "another build is storing it at this moment");
        }
        Thread.sleep(PAUSE_MILLIS);
      }
    } catch (PackageWriteException e) {
      throw e;
    } catch (IOException e) {
      throw new PackageWriteException(into, "nothing can be written there", e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new PackageWriteException(into.resolve(name), "it was interrupted", e);
    }
  }

  /**
   * Whether the lock was got, and on the file that others find too: an earlier holder may have
   * removed the file between our opening and our locking it. The file is told by its length, set at
   * random: to open it a second time would undo the lock on some systems.
   */
  private static boolean isOurs(FileChannel channel, Path file) throws IOException {
    try {
      FileLock lock = channel.tryLock(LOCKED_BYTE, 1, false);
      if (lock == null) {
        return false;
      }
      int last = new SecureRandom().nextInt(MOST_BYTES);
      channel.truncate(0);
      channel.write(ByteBuffer.allocate(1), last);
      return Files.size(file) == last + 1;
    } catch (OverlappingFileLockException | NoSuchFileException e) {
      return false;
    }
  }

  /** Gives the lock back; the file goes first, where the system lets go of an open one. */
  void release() throws PackageWriteException {
    try (channel) {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw new PackageWriteException(file, "the lock of the package can't be removed", e);
    }
  }
}
