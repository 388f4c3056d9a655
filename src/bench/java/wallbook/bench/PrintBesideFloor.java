package wallbook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import wallbook.compose.Composition;
import wallbook.compose.DocumentPlan;
import wallbook.render.DocumentRenderer;

/**
 * Prints the technician's as-built of a record, and draws the same rows straight, in turn in one
 * warm process: {@code RECORD PAGE}. Says both medians in seconds, and the number of rows.
 */
public final class PrintBesideFloor {
  private static final int WARM = 6;
  private static final int TIMES = 7;

  private PrintBesideFloor() {}

  /**
   * @param args record, page of HTML with the rows
   */
  public static void main(String[] args) throws IOException {
    MeasuredHouse house = MeasuredHouse.of(Path.of(args[0]));
    Rows rows = Rows.of(Files.readString(Path.of(args[1])));
    Composition composition = house.composition();
    DocumentRenderer renderer = house.renderer();
    DocumentPlan plan = MeasuredHouse.plan("technician-as-built.pdf");
    RowsFloor floor = new RowsFloor();
    double[] ours = new double[TIMES];
    double[] straight = new double[TIMES];
    for (int i = -WARM; i < TIMES; i++) {
      double print = seconds(() -> house.print(renderer, plan, composition));
      double draw = seconds(() -> floor.draw(rows));
      if (i >= 0) {
        ours[i] = print;
        straight[i] = draw;
      }
    }
    System.out.println(median(ours) + " " + median(straight) + " " + rows.rows().size());
  }

  private static double seconds(Runnable work) {
    long start = System.nanoTime();
    work.run();
    return (System.nanoTime() - start) / 1e9;
  }

  private static String median(double[] values) {
    Arrays.sort(values);
    return Decimals.of(values[values.length / 2], 4);
  }
}
