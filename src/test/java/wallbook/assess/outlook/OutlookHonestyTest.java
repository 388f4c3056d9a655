package wallbook.assess.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.assess.Assessor;
import wallbook.assess.Verdict;
import wallbook.record.Job;

/** Nothing is said to be possible that no assessment holds. */
class OutlookHonestyTest {
  @Test
  void everyWayOfTheSampleHousesRestsOnAssessmentsThatHoldUpToItsVerdict() {
    for (String sample : new String[] {"lakeside", "flat"}) {
      Job job = Jobs.sample(sample);
      Assessments assessments = new Assessor(Jobs.TABLES).assess(job);
      Outlook outlook = new OutlookAssessor(Jobs.TABLES).assess(job, assessments);
      int ways = 0;
      for (WishAnswer answer : new WishAssessor(Jobs.TABLES).answers(job, assessments, outlook)) {
        for (Way way : answer.ways()) {
          ways++;
          for (Assessment basis : way.bases()) {
            assertTrue(assessments.all().contains(basis));
            assertTrue(basis.verdict() != Verdict.BEYOND);
            if (way.verdict() == Verdict.WITHIN || way.verdict() == Verdict.CONDITIONAL) {
              assertTrue(basis.holds(), way.means() + " " + basis.topic());
            }
          }
        }
      }
      assertTrue(ways > 10, sample);
    }
  }

  @Test
  void everyStatementOfTheSampleHousesTakesItsVerdictFromAnAssessment() {
    Job job = Jobs.sample("lakeside");
    Assessments assessments = new Assessor(Jobs.TABLES).assess(job);

    for (Prospect prospect : new OutlookAssessor(Jobs.TABLES).assess(job, assessments).all()) {
      assertTrue(assessments.of(prospect.subject()).containsAll(prospect.bases()));
      assertEquals(
          prospect.possible(),
          prospect.bases().stream().allMatch(Assessment::holds),
          prospect.service());
    }
  }
}
