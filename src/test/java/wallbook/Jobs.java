package wallbook;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import wallbook.read.JobReader;
import wallbook.read.ReadResult;
import wallbook.read.RecordFolder;
import wallbook.record.Job;
import wallbook.reference.Tables;

/** Jobs for tests, written as a few lines of YAML. */
public final class Jobs {
  /** Tables shared by all tests; they never change. */
  public static final Tables TABLES = new Tables();

  private static final JobReader READER = new JobReader(TABLES);
  private static final Map<String, Job> SAMPLES = new ConcurrentHashMap<>();
  private static final String HEAD =
      """
      format: 1
      job: {id: small, title: Small job, revision: 1, invented: yes}
      """;

  private Jobs() {}

  /** What comes of reading the text as it stands; findings name the file {@code job.yaml}. */
  public static ReadResult read(String yaml) {
    return READER.read(
        "job.yaml",
        yaml.getBytes(StandardCharsets.UTF_8),
        new RecordFolder(Path.of("sample-jobs")));
  }

  /** The job of a record of which the text is everything but {@code format} and {@code job}. */
  public static Job job(String yaml) {
    ReadResult result = read(HEAD + yaml);
    return result
        .job()
        .orElseThrow(
            () ->
                new AssertionError(
                    result.findings().stream()
                        .map(f -> f.position() + " " + f.name() + " " + f.found() + f.nearest())
                        .collect(Collectors.joining("\n", "record with mistakes:\n", ""))));
  }

  /** A sample job by the name of its folder; read once, for it never changes. */
  public static Job sample(String name) {
    return SAMPLES.computeIfAbsent(name, Jobs::readSample);
  }

  private static Job readSample(String name) {
    ReadResult result = READER.read(Path.of("sample-jobs", name, "job.yaml"));
    return result.job().orElseThrow(() -> new AssertionError(result.findings().toString()));
  }
}
