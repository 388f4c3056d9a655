package wallbook.bench;

import java.nio.file.Path;
import java.util.Arrays;
import wallbook.compose.Composition;
import wallbook.compose.DocumentPlan;
import wallbook.render.DocumentRenderer;
import wallbook.render.PrintedTables;

/**
 * Prints the technician's as-built of a record, prints its tables alone, and draws the same rows
 * straight, in turn in one warm process: {@code RECORD}. Says the three medians in seconds, and the
 * number of rows.
 */
public final class PrintBesideFloor {
  private static final int WARM = 6;
  private static final int TIMES = 7;

  private PrintBesideFloor() {}

  /**
   * @param args record
   */
  public static void main(String[] args) {
    MeasuredHouse house = MeasuredHouse.of(Path.of(args[0]));
    Composition composition = house.composition();
    DocumentRenderer renderer = house.renderer();
    DocumentPlan plan = MeasuredHouse.plan("technician-as-built.pdf");
    Rows rows = Rows.of(house.html(renderer, plan, composition));
    PrintedTables tables = house.tables(renderer, plan, composition);
    RowsFloor floor = new RowsFloor();
    double[] ours = new double[TIMES];
    double[] alone = new double[TIMES];
    double[] straight = new double[TIMES];
    for (int i = -WARM; i < TIMES; i++) {
      double print = seconds(() -> house.print(renderer, plan, composition));
      double table = seconds(tables::print);
      double draw = seconds(() -> floor.draw(rows));
      if (i >= 0) {
        ours[i] = print;
        alone[i] = table;
        straight[i] = draw;
      }
    }
    System.out.println(
        String.join(
            " ",
            median(ours),
            median(alone),
            median(straight),
            Integer.toString(rows.rows().size())));
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
