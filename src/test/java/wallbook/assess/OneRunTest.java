package wallbook.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.Jobs;
import wallbook.assess.outlook.Outlook;
import wallbook.assess.outlook.OutlookAssessor;
import wallbook.read.JobReader;
import wallbook.record.Job;
import wallbook.record.Run;

/** An answer about one run is that of the whole house. */
class OneRunTest {
  private final Assessor assessor = new Assessor(Jobs.TABLES);
  private final OutlookAssessor outlooks = new OutlookAssessor(Jobs.TABLES);

  @ParameterizedTest
  @ValueSource(strings = {"lakeside", "flat"})
  void isAssessedAsInTheWholeHouse(String sample) {
    Job job = read(sample);
    Assessments whole = assessor.assess(job);
    for (Run run : job.runs()) {
      assertEquals(whole.of(run.id()), assessor.assess(job, run).all(), run.label());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"lakeside", "flat"})
  void hasTheOutlookItHasInTheWholeHouse(String sample) {
    Job job = read(sample);
    Assessments assessments = assessor.assess(job);
    Outlook whole = outlooks.assess(job, assessments);
    for (Run run : job.runs()) {
      Outlook alone = outlooks.assess(job, assessor.assess(job, run), run);
      assertEquals(whole.of(run.id()), alone.of(run.id()), run.label());
      assertEquals(whole.whyNothing(run.id()), alone.whyNothing(run.id()), run.label());
    }
  }

  private static Job read(String sample) {
    Path record = Path.of("sample-jobs", sample, "job.yaml");
    return new JobReader(Jobs.TABLES).read(record).job().orElseThrow();
  }
}
