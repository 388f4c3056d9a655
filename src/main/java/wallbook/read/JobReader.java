package wallbook.read;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.yaml.snakeyaml.nodes.Node;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;
import wallbook.picture.Picture;
import wallbook.record.Cable;
import wallbook.record.Job;
import wallbook.record.JobRecord;
import wallbook.record.Kind;
import wallbook.record.RunTest;
import wallbook.record.SweepPoint;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Reads a job record: YAML to an immutable {@link Job}, with every mistake of form, type and
 * reference reported at once.
 */
public final class JobReader {
  /** Version of the record's form that this reader takes. */
  public static final int FORMAT = 1;

  private final List<Cable> catalogue;
  private final SoundPart soundPart;
  private final boolean withPictures;

  /**
   * @param tables where the built-in cable types lie
   */
  public JobReader(Tables tables) {
    this(Catalogue.cables(tables), true);
  }

  private JobReader(List<Cable> catalogue, boolean withPictures) {
    this.catalogue = catalogue;
    this.soundPart = new SoundPart(catalogue.stream().map(Cable::id).collect(Collectors.toSet()));
    this.withPictures = withPictures;
  }

  /** Looks ahead at the types that a record is bound to; that is kept, whoever reads. */
  public static void prepare() {
    Binder.prepare(JobRecord.class);
  }

  /** A reader that leaves pictures alone, which take the longest, and tells nothing of them. */
  public JobReader withoutPictures() {
    return new JobReader(catalogue, false);
  }

  /** Reads a record from its file; sweeps and pictures are read from the files beside it. */
  public ReadResult read(Path file) {
    String shown = file.toString().replace('\\', '/');
    Path parent = file.toAbsolutePath().getParent();
    try {
      if (Files.size(file) > YamlSource.MOST_BYTES) {
        return read(shown, new byte[YamlSource.MOST_BYTES + 1], new RecordFolder(parent));
      }
      return read(shown, Files.readAllBytes(file), new RecordFolder(parent));
    } catch (IOException e) {
      Finding finding =
          Finding.of(
              Severity.ERROR,
              "file-unreadable",
              new SourcePosition(shown, 1, 1),
              "why",
              Files.exists(file) ? String.valueOf(e.getMessage()) : "-");
      return new ReadResult(Optional.empty(), Optional.empty(), List.of(finding));
    }
  }

  /**
   * Reads a record from bytes.
   *
   * @param shown name of the file in findings
   * @param folder where the files lie that the record names
   */
  public ReadResult read(String shown, byte[] bytes, RecordFolder folder) {
    Findings findings = new Findings();
    Places places = new Places(shown);
    Optional<JobRecord> record = record(bytes, places, findings);
    Map<String, List<SweepPoint>> sweeps = new HashMap<>();
    Map<String, Picture> pictures = new HashMap<>();
    record.ifPresent(
        r -> {
          checkFormat(r, findings);
          r.tests().parallelStream()
              .filter(test -> test.sweep().isPresent())
              .map(test -> readSweep(test, folder))
              .toList()
              .forEach(
                  sweep -> {
                    findings.addAll(sweep.findings());
                    sweep.points().ifPresent(points -> sweeps.put(sweep.test(), points));
                  });
          if (withPictures) {
            pictures.putAll(new PictureFiles(folder, findings).read(r));
          }
        });
    if (findings.hasErrors()) {
      Optional<Job> sound =
          record.map(soundPart::of).map(r -> new Job(r, catalogue, sweeps, pictures));
      return new ReadResult(Optional.empty(), sound, findings.inReportOrder());
    }
    Optional<Job> job = record.map(r -> new Job(r, catalogue, sweeps, pictures));
    return new ReadResult(job, job, findings.inReportOrder());
  }

  private Optional<JobRecord> record(byte[] bytes, Places places, Findings findings) {
    Findings ofBinding = new Findings();
    IdRegister ids = new IdRegister(ofBinding);
    catalogue.forEach(cable -> ids.provide(Kind.CABLE, cable.id()));
    Binder binder = new Binder(places, ofBinding, ids);
    try (SectionsAhead<JobRecord> sections = new SectionsAhead<>(binder, JobRecord.class)) {
      Optional<Node> whole = new YamlSource(places, findings).nodes(bytes, sections::begin);
      if (whole.isEmpty()) {
        return Optional.empty();
      }
      Optional<JobRecord> record = sections.bind(whole.get());
      ids.reportUnresolved();
      findings.addAll(ofBinding.inReportOrder());
      return record;
    }
  }

  private static void checkFormat(JobRecord record, Findings findings) {
    if (record.format() != FORMAT) {
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  "unsupported-format",
                  record.origin().position("format"),
                  "format",
                  record.format())
              .found(Integer.toString(record.format()))
              .expecting(Phrase.of("expected.format", "format", FORMAT)));
    }
  }

  private record Sweep(String test, Optional<List<SweepPoint>> points, List<Finding> findings) {}

  private static Sweep readSweep(RunTest test, RecordFolder folder) {
    Findings findings = new Findings();
    String name = test.sweep().orElseThrow();
    Optional<Path> file = folder.file(name);
    if (file.isEmpty()) {
      findings.add(
          Finding.of(Severity.ERROR, "missing-file", test.origin().position("sweep"), "file", name)
              .found(name)
              .expecting(Phrase.of("expected.file-beside")));
      return new Sweep(test.id(), Optional.empty(), findings.inReportOrder());
    }
    List<SweepPoint> points = new SweepReader(findings).read(file.get(), name);
    return new Sweep(test.id(), Optional.of(points), findings.inReportOrder());
  }
}
