package wallbook.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import wallbook.assess.outlook.Target;
import wallbook.assess.outlook.Wish;
import wallbook.assess.outlook.WishAssessor;
import wallbook.compose.Composition;
import wallbook.finding.Nearest;
import wallbook.record.Job;
import wallbook.render.TemplateProblem;
import wallbook.wording.Phrase;

/** Asks a house for the ways it offers for a wish. */
@Command(
    name = "wish",
    mixinStandardHelpOptions = true,
    description = {
      "Prints the ways a house offers for a wish without opening a wall, best first: over which",
      "cables or conduits, what each takes, who may do it, and the figures it rests on. Without",
      "--wish it lists the wishes that can be asked for. Writes nothing."
    },
    footer = {
      "",
      "  wallbook wish job.yaml",
      "  wallbook wish job.yaml --wish more-wifi",
      "  wallbook wish job.yaml --wish more-wifi --at kitchen",
      "",
      "Exit codes: 0 answered, 2 errors in the record, 64 no such wish or place."
    })
final class WishCommand implements Callable<Integer> {
  private final Console console;
  private final Groundwork groundwork;

  @Mixin private Inquiry inquiry;

  @Option(
      names = "--wish",
      paramLabel = "WISH",
      description = "What is wished for; without it the wishes are listed.")
  private Optional<String> wish = Optional.empty();

  @Option(
      names = "--at",
      paramLabel = "PLACE",
      description = {
        "Where: the id of a place or space, the label of a plate, or the name of a space.",
        "Usual: everywhere in the house that the wish is usual."
      })
  private Optional<String> at = Optional.empty();

  WishCommand(Console console, Groundwork groundwork) {
    this.console = console;
    this.groundwork = groundwork;
  }

  @Override
  public Integer call() throws TemplateProblem {
    WishAssessor assessor = new WishAssessor(groundwork.tables());
    Optional<Wish> asked = wish.flatMap(assessor::wish);
    Optional<Composition> computed =
        inquiry.compute(
            groundwork,
            console,
            (reading, wording) ->
                Computation.ofMedia(
                    reading,
                    groundwork.tables(),
                    wording,
                    job -> asked.map(w -> assessor.media(job, w)).orElse(Set.of())));
    if (computed.isEmpty()) {
      return ExitCode.ERRORS;
    }
    int code = answer(computed.get(), assessor, asked);
    inquiry.rehearse(groundwork, WishCommand::answerAll);
    return code;
  }

  private static void answerAll(Composition composition, PrintWriter out) {
    WishPrinter printer = new WishPrinter(composition, out);
    composition.wishes().forEach(answer -> printer.print(answer.wish(), List.of(answer)));
  }

  private int answer(Composition composition, WishAssessor assessor, Optional<Wish> asked) {
    WishPrinter printer = new WishPrinter(composition, console.out());
    if (wish.isEmpty()) {
      printer.list(assessor.wishes());
      return ExitCode.CLEAN;
    }
    if (asked.isEmpty()) {
      List<String> names = assessor.wishes().stream().map(Wish::name).toList();
      return unknown(composition, "inquiry.no-wish", wish.get(), names);
    }
    List<Target> targets = assessor.targets(composition.job(), asked.get());
    if (at.isPresent()) {
      Optional<Target> target = target(composition.job(), at.get());
      if (target.isEmpty()) {
        return unknown(composition, "inquiry.no-place", at.get(), places(composition.job()));
      }
      targets = List.of(target.get());
    }
    printer.print(
        asked.get(),
        assessor.answers(
            composition.job(),
            composition.assessments(),
            composition.outlook(),
            asked.get(),
            targets));
    return ExitCode.CLEAN;
  }

  /** A place by id or label, else a space by id or name. */
  private static Optional<Target> target(Job job, String text) {
    Stream<Target> places =
        job.places().stream()
            .filter(
                p -> p.id().equals(text) || p.label().filter(text::equalsIgnoreCase).isPresent())
            .map(p -> new Target.AtPlace(p.id()));
    Stream<Target> spaces =
        job.spaces().stream()
            .filter(s -> s.id().equals(text) || s.name().equalsIgnoreCase(text))
            .map(s -> new Target.InSpace(s.id()));
    return Stream.concat(places, spaces).findFirst();
  }

  private static List<String> places(Job job) {
    List<String> names = new ArrayList<>();
    job.places().forEach(p -> names.add(p.id()));
    job.places().forEach(p -> p.label().ifPresent(names::add));
    job.spaces().forEach(s -> names.add(s.id()));
    job.spaces().forEach(s -> names.add(s.name()));
    return names;
  }

  private int unknown(Composition composition, String key, String text, List<String> names) {
    console.err().println(composition.wording().say(Phrase.of(key, "text", text)));
    Nearest.to(text, names)
        .map(nearest -> Phrase.of("report.nearest", "text", nearest))
        .map(composition.wording()::say)
        .ifPresent(console.err()::println);
    return ExitCode.USAGE;
  }
}
