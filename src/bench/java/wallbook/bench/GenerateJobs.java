package wallbook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes invented records: {@code FOLDER RUNS} one of that size, {@code FOLDER RUNS HOUSES}. */
public final class GenerateJobs {
  private GenerateJobs() {}

  /**
   * @param args folder, number of cables of a house, number of houses if more than one
   */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    int runs = Integer.parseInt(args[1]);
    int houses = args.length > 2 ? Integer.parseInt(args[2]) : 1;
    for (int house = 1; house <= houses; house++) {
      String id = "house-%d-%03d".formatted(runs, house);
      Path file = houses == 1 ? folder : folder.resolve(id);
      Files.createDirectories(file);
      Files.writeString(file.resolve("job.yaml"), new JobGenerator(id, runs).yaml());
    }
  }
}
