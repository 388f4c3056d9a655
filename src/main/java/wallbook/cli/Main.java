package wallbook.cli;

import java.io.PrintWriter;
import java.lang.reflect.Constructor;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import wallbook.reference.Tables;
import wallbook.stock.LabelKind;

/** The command line. Only this package prints and decides on an exit code. */
@Command(
    name = "wallbook",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Turns the record of a finished low-voltage job into its handover package.",
      "",
      "The record is one YAML file: rooms, plates, cables, conduits, tests. The package is what",
      "the homeowner, the next technician and each trade need: a manual, a map of every label,",
      "a guide to what the dark cables could carry."
    },
    footer = {
      "",
      "Begin with a look at what is still wrong, then build:",
      "",
      "  wallbook check job.yaml",
      "  wallbook build job.yaml --into handover",
      "",
      "Ask a record about a wish, or about one cable:",
      "",
      "  wallbook wish job.yaml --wish more-wifi",
      "  wallbook run job.yaml K-01",
      "",
      "Exit codes: 0 clean, 1 warnings, 2 errors in the record (nothing written),",
      "64 command not understood, 70 failed (nothing written)."
    })
public final class Main implements Runnable {
  private static final List<Class<?>> COMMANDS =
      List.of(
          CheckCommand.class,
          BuildCommand.class,
          WishCommand.class,
          RunCommand.class,
          LabelsCommand.class,
          RecoverCommand.class,
          ExportCommand.class,
          ImportCommand.class,
          StartCommand.class,
          CompareCommand.class,
          BuildAllCommand.class);

  /** Commands that answer from a record so soon that what they take is begun before all else. */
  private static final Set<String> ANSWERS = Set.of("check", "wish", "run");

  @Spec private CommandSpec spec;

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }

  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    int code = run(out, err, Terminal.attached().isPresent(), args);
    if (code != ExitCode.CLEAN) {
      System.exit(code);
    }
  }

  /**
   * Runs one command.
   *
   * @param interactive whether somebody watches, so that progress is worth printing
   * @return the exit code
   */
  static int run(PrintWriter out, PrintWriter err, boolean interactive, String... args) {
    Console console = new Console(out, err, interactive);
    Groundwork groundwork = new Groundwork(new Tables());
    if (args.length > 0 && ANSWERS.contains(args[0])) {
      groundwork.begin();
    }
    CommandLine line = new CommandLine(new Main(), new Commands(console, groundwork));
    asked(args).forEach(line::addSubcommand);
    line.setOut(out).setErr(err);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.registerConverter(LabelKind.class, Main::labelKind);
    line.getCommandSpec().exitCodeOnInvalidInput(ExitCode.USAGE);
    line.getSubcommands()
        .values()
        .forEach(c -> c.getCommandSpec().exitCodeOnInvalidInput(ExitCode.USAGE));
    line.setParameterExceptionHandler((mistake, all) -> misunderstood(mistake, err));
    line.setExecutionExceptionHandler(
        (exception, failed, parsed) -> {
          err.println("wallbook: " + exception.getMessage());
          return ExitCode.FAILED;
        });
    return line.execute(args);
  }

  /**
   * The one command that is called; all, if none of them is. Each takes its time to look through.
   */
  private static List<Class<?>> asked(String... args) {
    List<Class<?>> called =
        COMMANDS.stream()
            .filter(c -> args.length > 0 && args[0].equals(c.getAnnotation(Command.class).name()))
            .toList();
    return called.isEmpty() ? COMMANDS : called;
  }

  /** Says what was not understood, and where the whole usage stands instead of printing it. */
  private static int misunderstood(CommandLine.ParameterException mistake, PrintWriter err) {
    CommandSpec command = mistake.getCommandLine().getCommandSpec();
    err.println(mistake.getMessage());
    CommandLine.UnmatchedArgumentException.printSuggestions(mistake, err);
    err.println("\"" + command.qualifiedName() + " --help\" says what can be given.");
    return ExitCode.USAGE;
  }

  private static LabelKind labelKind(String name) {
    return LabelKind.named(name)
        .orElseThrow(
            () ->
                new CommandLine.TypeConversionException(
                    "'" + name + "' is none of " + LabelSheetsOption.KINDS));
  }

  /** Hands the console, and the groundwork, to the commands whose constructor takes them. */
  private record Commands(Console console, Groundwork groundwork) implements CommandLine.IFactory {
    @Override
    public <K> K create(Class<K> type) throws Exception {
      for (Constructor<?> constructor : type.getDeclaredConstructors()) {
        List<Class<?>> taken = List.of(constructor.getParameterTypes());
        if (taken.equals(List.of(Console.class))) {
          return type.cast(constructor.newInstance(console));
        } else if (taken.equals(List.of(Console.class, Groundwork.class))) {
          return type.cast(constructor.newInstance(console, groundwork));
        }
      }
      return CommandLine.defaultFactory().create(type);
    }
  }
}
