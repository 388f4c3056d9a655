package wallbook.cli;

import wallbook.check.Checks;
import wallbook.read.JobReader;
import wallbook.reference.Tables;
import wallbook.render.Preparations;

/**
 * What reading and checking take whatever the record is. Another processor can lay it while the
 * command line is understood and the record is read; what is not there when it is needed is made by
 * whoever needs it.
 */
final class Groundwork {
  private final Tables tables;
  private final Once<JobReader, RuntimeException> reader;
  private final Once<Checks, RuntimeException> checks;

  Groundwork(Tables tables) {
    this.tables = tables;
    this.reader = new Once<>(() -> new JobReader(tables));
    this.checks = new Once<>(() -> new Checks(tables));
  }

  /** Begins to lay it, in the order in which it is needed. */
  void begin() {
    Thread layer =
        new Thread(
            () -> {
              reader.get();
              JobReader.prepare();
              checks.get();
              Preparations.words();
            },
            "groundwork");
    layer.setDaemon(true);
    // Whoever needs what could not be made will be told when it fails again.
    layer.setUncaughtExceptionHandler((thread, failure) -> {});
    layer.start();
  }

  Tables tables() {
    return tables;
  }

  JobReader reader() {
    return reader.get();
  }

  Checks checks() {
    return checks.get();
  }
}
