package wallbook.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wallbook.compose.disclosure.Recipient;
import wallbook.finding.Finding;
import wallbook.finding.Severity;
import wallbook.record.Job;
import wallbook.reference.Tables;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.render.data.HouseList;
import wallbook.render.data.HouseOutcome;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Builds the packages of many houses. */
@Command(
    name = "build-all",
    mixinStandardHelpOptions = true,
    description = {
      "Builds the package of every record found: each file that ends in .yaml below the folder and",
      "begins as a record does. A record with errors stops no other. Prints what became of each,",
      "and writes index.html and outcomes.csv beside the packages. The worst exit code counts."
    })
final class BuildAllCommand implements Callable<Integer> {
  private static final int MOST_AT_A_TIME = 4;

  private final Console console;
  private final Tables tables = new Tables();
  private final Map<String, Path> claimed = new ConcurrentHashMap<>();

  @Parameters(paramLabel = "FOLDER", description = "Folder searched for records.")
  private Path folder;

  @Option(
      names = "--into",
      required = true,
      paramLabel = "OUT",
      description = "Folder for the packages; made if need be.")
  private Path into;

  @Option(
      names = "--jobs",
      paramLabel = "N",
      description = {
        "Packages made at a time; each may take some 300 megabytes of memory. Usual: as many as there",
        "are processors, at most 4."
      })
  private int jobs = Math.min(MOST_AT_A_TIME, Runtime.getRuntime().availableProcessors());

  BuildAllCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws TemplateProblem, IOException, InterruptedException {
    Wording wording = Readers.OF_THE_RECORD.wording(Optional.empty(), TemplateSource.carried());
    Files.createDirectories(into);
    List<HouseOutcome> outcomes = build(records());
    for (HouseOutcome outcome : outcomes) {
      console.out().println(line(outcome, wording));
      outcome.failure().ifPresent(why -> console.err().println(outcome.record() + ": " + why));
    }
    HouseList list = new HouseList(wording);
    write("index.html", list.page(outcomes));
    write("outcomes.csv", list.table(outcomes));
    return outcomes.stream().mapToInt(HouseOutcome::exitCode).max().orElse(ExitCode.CLEAN);
  }

  private void write(String name, String text) throws IOException {
    WholeFile.write(into.resolve(name), text.getBytes(StandardCharsets.UTF_8));
  }

  private static String line(HouseOutcome outcome, Wording wording) {
    return wording.say(
        Phrase.of(
            outcome.packageName().isPresent() ? "houses.built" : "houses.refused",
            "record",
            outcome.record(),
            "job",
            outcome.job(),
            "revision",
            outcome.revision(),
            "errors",
            outcome.errors(),
            "warnings",
            outcome.warnings()));
  }

  /** Records below the folder by path; packages stored there are not searched. */
  private List<Path> records() throws IOException {
    List<Path> records = new ArrayList<>();
    Path out = into.toRealPath();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        if (file.getFileName().toString().endsWith(".yaml")
            && !file.toRealPath().startsWith(out)
            && isRecord(file)) {
          records.add(file);
        }
      }
    }
    return records;
  }

  private static boolean isRecord(Path file) throws IOException {
    if (file.getFileName().toString().equals("job.yaml")) {
      return true;
    }
    try (Stream<String> lines = Files.lines(file, StandardCharsets.ISO_8859_1)) {
      return lines.limit(200).anyMatch(l -> l.startsWith("format:"));
    }
  }

  private List<HouseOutcome> build(List<Path> records) throws InterruptedException {
    ExecutorService workers = Executors.newFixedThreadPool(Math.max(1, jobs));
    try {
      List<Future<HouseOutcome>> running = new ArrayList<>();
      records.forEach(record -> running.add(workers.submit(() -> one(record))));
      List<HouseOutcome> outcomes = new ArrayList<>();
      for (int i = 0; i < running.size(); i++) {
        outcomes.add(outcome(records.get(i), running.get(i)));
      }
      return outcomes;
    } finally {
      workers.shutdownNow();
    }
  }

  private HouseOutcome outcome(Path record, Future<HouseOutcome> running)
      throws InterruptedException {
    try {
      return running.get();
    } catch (ExecutionException e) {
      return new HouseOutcome(
          shown(record),
          "",
          "",
          "",
          Optional.empty(),
          0,
          0,
          ExitCode.FAILED,
          Optional.of(String.valueOf(e.getCause().getMessage())));
    }
  }

  private HouseOutcome one(Path record) throws TemplateProblem, IOException {
    Reading reading = Reading.of(record, tables);
    TemplateSource templates = TemplateSource.carried();
    if (reading.job().isEmpty()) {
      return outcome(record, reading, Handover.Outcome.NONE, Optional.empty());
    }
    Job job = reading.job().get();
    Readers readers = Readers.OF_THE_RECORD;
    Wording wording = readers.wording(reading.about(), templates);
    claim(job, record, wording);
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    Console silent = new Console(nowhere, nowhere, false);
    OfflinePage page = new OfflinePage(templates, Recipient.PAGE);
    Handover.Outcome made =
        new Handover(tables, templates, readers, Optional.empty(), page, processorsForOne(), silent)
            .make(
                reading,
                WholeRecord.read(record, job.record()),
                into,
                wording,
                LabelOptions.usual(tables, readers.paper(job)));
    Optional<String> failure =
        made.stored().isEmpty()
            ? Optional.of(wording.say(made.onLabels().get(0).message()))
            : Optional.empty();
    return outcome(record, reading, made, failure);
  }

  /** Houses beside one another keep the processors at work by themselves. */
  private int processorsForOne() {
    return Math.max(1, Runtime.getRuntime().availableProcessors() / Math.max(1, jobs));
  }

  private HouseOutcome outcome(
      Path record, Reading reading, Handover.Outcome made, Optional<String> failure) {
    Optional<Job> job = reading.about();
    List<Finding> findings = new ArrayList<>(reading.findings());
    findings.addAll(made.onLabels());
    return new HouseOutcome(
        shown(record),
        job.map(j -> j.facts().id()).orElse(""),
        job.map(j -> j.facts().title()).orElse(""),
        job.map(j -> Integer.toString(j.facts().revision())).orElse(""),
        made.stored().map(stored -> stored.folder().getFileName().toString()),
        count(findings, Severity.ERROR),
        count(findings, Severity.WARNING),
        made.exitCode(reading),
        failure);
  }

  /** Two records of one name would take each other's place without a word. */
  private void claim(Job job, Path record, Wording wording) throws IOException {
    Path first = claimed.putIfAbsent(job.facts().id() + "-r" + job.facts().revision(), record);
    if (first != null) {
      throw new IOException(wording.say(Phrase.of("houses.same", "record", shown(first))));
    }
  }

  private String shown(Path record) {
    return folder.relativize(record).toString().replace('\\', '/');
  }

  private static int count(List<Finding> findings, Severity severity) {
    return (int) findings.stream().filter(f -> f.severity() == severity).count();
  }
}
