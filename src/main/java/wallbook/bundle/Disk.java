package wallbook.bundle;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;

/** What is done to the disk, down to the platter. */
class Disk {
  private static final int PIECE_BYTES = 1 << 16;

  /** Writes a new file and waits until it is stored. */
  void write(Path file, byte[] bytes) throws IOException {
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      // In pieces, since the channel keeps room outside the heap for as much as is written at once.
      for (int at = 0; at < bytes.length; ) {
        at += channel.write(ByteBuffer.wrap(bytes, at, Math.min(PIECE_BYTES, bytes.length - at)));
      }
      channel.force(true);
    }
  }

  /** Waits until a file is stored. */
  void sync(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  /** Waits until the names in a folder are stored, where the system can. */
  void syncFolder(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // Some systems don't open folders; they store names in order by themselves.
      return;
    }
  }

  /** Renames within one file system, at once. */
  void move(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
  }

  /** Deletes a file or a folder with all that is in it, following no links. */
  void delete(Path path) throws IOException {
    Files.walkFileTree(
        path,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path folder, IOException failure)
              throws IOException {
            if (failure != null) {
              throw failure;
            }
            Files.delete(folder);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
