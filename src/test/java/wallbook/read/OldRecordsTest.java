package wallbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallbook.Jobs;
import wallbook.quantity.Length;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.RunCondition;

/** Records of every version of the form can be read always; the files are never changed. */
class OldRecordsTest {
  private static final Path FOLDER = Path.of("src", "test", "resources", "old-records");

  @Test
  void aRecordOfFormatOneIsReadAndSaysWhatItSaid() throws IOException {
    ReadResult result = Jobs.read(Files.readString(FOLDER.resolve("format-1.yaml")));
    Job job = result.job().orElseThrow(() -> new AssertionError(result.findings().toString()));
    Run run = job.run("l-01");

    assertEquals(Optional.of(LocalDate.of(2026, 3, 20)), job.facts().handover());
    assertEquals("cat6a", run.cable());
    assertEquals(Optional.of("cabinet"), run.from().head());
    assertEquals(Optional.of(Length.metres(2)), run.from().slack());
    assertEquals(RunCondition.IN_SERVICE, run.condition());
  }

  @Test
  void aVersionThatIsNotKnownIsRefusedAndTheKnownOneNamed() throws IOException {
    String later =
        Files.readString(FOLDER.resolve("format-1.yaml")).replace("format: 1", "format: 2");
    ReadResult result = Jobs.read(later);

    assertTrue(result.job().isEmpty());
    assertEquals("unsupported-format", result.findings().get(0).name());
    assertEquals(Optional.of("2"), result.findings().get(0).found());
  }
}
