package wallbook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Draws the rows of a page straight, in a process of its own: {@code PAGE PDF}. */
public final class DrawFloor {
  private DrawFloor() {}

  /**
   * @param args page of HTML, file to write
   */
  public static void main(String[] args) throws IOException {
    Rows rows = Rows.of(Files.readString(Path.of(args[0])));
    long start = System.nanoTime();
    byte[] pdf = new RowsFloor().draw(rows);
    System.out.printf("%d rows, %.3f s%n", rows.rows().size(), (System.nanoTime() - start) / 1e9);
    Files.write(Path.of(args[1]), pdf);
  }
}
