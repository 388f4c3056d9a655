package wallbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wallbook.check.Checks;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.read.JobReader;
import wallbook.read.ReadResult;
import wallbook.read.RecordFolder;
import wallbook.read.ScheduleImport;
import wallbook.read.ScheduleImport.Merged;
import wallbook.read.ScheduleImport.SourceFile;
import wallbook.reference.Tables;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Merges a schedule from a spreadsheet into a record. */
@Command(
    name = "import",
    mixinStandardHelpOptions = true,
    description = {
      "Merges a schedule into a record: rows find things by id, values that differ are written,",
      "new things go to the end of the list; comments and order stay. An empty cell says nothing.",
      "With errors in the schedule or in what would come of it nothing is written."
    })
final class ImportCommand implements Callable<Integer> {
  private static final long MOST_BYTES = 32L << 20;

  private final Console console;
  private final Tables tables = new Tables();

  @Parameters(index = "0", paramLabel = "RECORD", description = "Job record in YAML.")
  private Path record;

  @Parameters(
      index = "1",
      paramLabel = "SCHEDULE",
      description = "Schedule: CSV or a workbook (.xlsx).")
  private Path schedule;

  @Option(
      names = "--list",
      required = true,
      paramLabel = "LIST",
      description = "List of the record that it goes to, such as runs or tests.")
  private String list;

  @Option(
      names = "--mapping",
      paramLabel = "FILE",
      description = "YAML file that says which column is which key.")
  private Optional<Path> mapping = Optional.empty();

  @Option(
      names = "--delimiter",
      paramLabel = "CHAR",
      description = "Character between cells, or tab; usual: found by the header.")
  private Optional<String> delimiter = Optional.empty();

  @Option(
      names = "--encoding",
      paramLabel = "NAME",
      description = "Encoding of the schedule; usual: UTF-8, or what the bytes show.")
  private Optional<String> encoding = Optional.empty();

  @Option(
      names = "--sheet",
      paramLabel = "NAME",
      description = "Sheet of a workbook; usual: the first.")
  private Optional<String> sheet = Optional.empty();

  @Option(names = "--try", description = "Say what would be done; write nothing.")
  private boolean tryOnly;

  ImportCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws TemplateProblem, IOException {
    Optional<SourceFile> columns = Optional.empty();
    if (mapping.isPresent()) {
      columns = Optional.of(file(mapping.get()));
    }
    SourceFile before = file(record);
    if (Files.size(schedule) > MOST_BYTES) {
      throw new IOException(schedule + " is larger than " + (MOST_BYTES >> 20) + " megabytes");
    }
    ScheduleImport.Result result =
        ScheduleImport.merge(
            before,
            file(schedule),
            new ScheduleImport.Request(list, columns, delimiter, encoding, sheet));
    Findings findings = new Findings();
    findings.addAll(result.findings());
    Optional<ReadResult> read =
        result.merged().map(merged -> check(before.shown(), merged, findings));
    Wording wording =
        Readers.OF_THE_RECORD.wording(
            read.flatMap(ReadResult::soundPart), TemplateSource.carried());
    FindingPrinter printer = new FindingPrinter(wording);
    if (result.merged().isEmpty() || findings.hasErrors()) {
      printer.printRefusal(findings.inReportOrder(), console.err());
      console.err().println(wording.say("import.refused"));
      return ExitCode.ERRORS;
    }
    Merged merged = result.merged().get();
    if (!tryOnly && merged.added() + merged.changed() > 0) {
      WholeFile.write(record, merged.bytes());
    }
    console
        .out()
        .println(
            wording.say(
                Phrase.of(
                    tryOnly ? "import.tried" : "import.done",
                    "file",
                    record,
                    "added",
                    merged.added(),
                    "changed",
                    merged.changed(),
                    "same",
                    merged.unchanged())));
    console.out().println(printer.summary(findings.inReportOrder()));
    return ExitCode.CLEAN;
  }

  /** Reads and checks what came of it; a finding about a cell is placed at the cell. */
  private ReadResult check(String shown, Merged merged, Findings findings) {
    RecordFolder folder = new RecordFolder(record.toAbsolutePath().getParent());
    ReadResult read = new JobReader(tables).read(shown, merged.bytes(), folder);
    Findings found = new Findings();
    found.addAll(read.findings());
    read.job().ifPresent(job -> found.addAll(new Checks(tables).check(job)));
    for (Finding finding : found.inReportOrder()) {
      findings.add(
          new Finding(
              finding.severity(),
              finding.name(),
              merged.cause().apply(finding.position()),
              finding.found(),
              finding.expected(),
              finding.nearest(),
              finding.message(),
              finding.remedy()));
    }
    return read;
  }

  private static SourceFile file(Path path) throws IOException {
    return new SourceFile(path.toString().replace('\\', '/'), Files.readAllBytes(path));
  }
}
