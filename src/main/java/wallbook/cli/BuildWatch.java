package wallbook.cli;

import java.io.IOException;
import java.time.Duration;
import java.util.Optional;
import picocli.CommandLine;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.wording.Wording;

/** Builds, and again whenever something is saved that the package is made from. */
final class BuildWatch {
  private final HouseBuild build;
  private final BuildReport report;
  private Wording wording;
  private boolean isToldOf;

  BuildWatch(HouseBuild build, BuildReport report) throws TemplateProblem {
    this.build = build;
    this.report = report;
    this.wording = Readers.OF_THE_RECORD.messages(Optional.empty(), TemplateSource.carried());
  }

  /**
   * Ends by an exception only. What is wrong with the record, a template or the disk is told, and
   * waits to be mended.
   *
   * @throws CommandLine.ParameterException if no package was built yet and none can be by what the
   *     command says
   * @throws IOException if the system can't watch
   */
  void untilInterrupted() throws IOException, InterruptedException {
    try (SourceWatch saves = new SourceWatch(build.sources())) {
      while (true) {
        build(saves);
        if (!saves.isSaved()) {
          report.tellWaiting(wording);
        }
        saves.awaitSave();
      }
    }
  }

  private void build(SourceWatch saves) {
    long begin = System.nanoTime();
    try {
      HouseBuild.Read read = build.read();
      wording = read.wording();
      saves.follow(build.sources());
      if (!saves.isSaved()) { // else documents could be made from one save and carry the next
        tell(build.make(read), Duration.ofNanos(System.nanoTime() - begin));
      }
      saves.follow(build.sources());
    } catch (TemplateProblem | IOException | RuntimeException e) {
      saves.follow(build.sources());
      if (!isToldOf && e instanceof CommandLine.ParameterException wrongCommand) {
        throw wrongCommand;
      } else if (!saves.isSaved()) { // else what failed may be half a save
        report.tellFailure(e);
      }
    }
  }

  private void tell(HouseBuild.Built built, Duration taken) {
    if (isToldOf) {
      report.tellAgain(built, taken);
    } else {
      report.tellAll(built);
      isToldOf = built.isStored();
    }
  }
}
