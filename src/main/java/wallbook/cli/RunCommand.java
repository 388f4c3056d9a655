package wallbook.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import wallbook.compose.Composition;
import wallbook.compose.runsheet.RunSheetComposer;
import wallbook.finding.Nearest;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.render.TemplateProblem;
import wallbook.wording.Phrase;

/** Shows everything known and computed of one run. */
@Command(
    name = "run",
    mixinStandardHelpOptions = true,
    description = {
      "Prints the technician's view of one cable: both ends with their ports, its state, tests,",
      "conduits, every computed answer with value, limit, margin and source, and what it could",
      "carry later. Writes nothing."
    },
    footer = {
      "",
      "  wallbook run job.yaml K-01",
      "",
      "Exit codes: 0 found, 2 errors in the record, 64 no such cable."
    })
final class RunCommand implements Callable<Integer> {
  private final Console console;
  private final Groundwork groundwork;

  @Mixin private Inquiry inquiry;

  @Parameters(
      index = "1",
      paramLabel = "LABEL",
      description = "Label printed on the cable, or the id of its run.")
  private String label;

  RunCommand(Console console, Groundwork groundwork) {
    this.console = console;
    this.groundwork = groundwork;
  }

  @Override
  public Integer call() throws TemplateProblem {
    Optional<Composition> computed =
        inquiry.compute(
            groundwork,
            console,
            (reading, wording) ->
                Computation.ofRun(reading, groundwork.tables(), wording, this::find));
    if (computed.isEmpty()) {
      return ExitCode.ERRORS;
    }
    Composition composition = computed.get();
    Optional<Run> run = find(composition.job());
    if (run.isEmpty()) {
      return unknown(composition);
    }
    print(composition, List.of(run.get()), console.out());
    inquiry.rehearse(groundwork, RunCommand::answerOfEachSort);
    return ExitCode.CLEAN;
  }

  private static void answerOfEachSort(Composition composition, PrintWriter out) {
    Job job = composition.job();
    Map<List<Object>, Run> ofEachSort = new LinkedHashMap<>();
    job.runs().forEach(r -> ofEachSort.put(List.of(job.cableOf(r).medium(), r.condition()), r));
    print(composition, ofEachSort.values(), out);
  }

  private static void print(Composition composition, Iterable<Run> runs, PrintWriter out) {
    RunSheetPrinter printer = new RunSheetPrinter(composition.wording(), out);
    RunSheetComposer composer = new RunSheetComposer(composition);
    runs.forEach(run -> printer.print(composer.compose(run)));
  }

  private Optional<Run> find(Job job) {
    return job.runs().stream()
        .filter(r -> r.label().equalsIgnoreCase(label) || r.id().equals(label))
        .findFirst();
  }

  private int unknown(Composition composition) {
    List<String> names = new ArrayList<>();
    composition.job().runs().forEach(r -> names.addAll(List.of(r.label(), r.id())));
    console.err().println(composition.wording().say(Phrase.of("inquiry.no-run", "text", label)));
    Nearest.to(label, names)
        .map(nearest -> Phrase.of("report.nearest", "text", nearest))
        .map(composition.wording()::say)
        .ifPresent(console.err()::println);
    return ExitCode.USAGE;
  }
}
