package wallbook.cli;

import java.util.List;
import wallbook.assess.Assessments;
import wallbook.assess.Assessor;
import wallbook.assess.outlook.Outlook;
import wallbook.assess.outlook.OutlookAssessor;
import wallbook.assess.outlook.WishAssessor;
import wallbook.compose.CableNames;
import wallbook.compose.Composition;
import wallbook.record.Job;
import wallbook.reference.Tables;
import wallbook.wording.Wording;

/** Computes everything that documents and answers are composed from. */
final class Computation {
  private Computation() {}

  /**
   * What documents are composed from.
   *
   * @param reading a job without errors
   */
  static Composition of(Reading reading, Tables tables, Wording wording) {
    Composition computed = withoutWishes(reading, tables, wording);
    return new Composition(
        computed.job(),
        computed.findings(),
        computed.assessments(),
        computed.outlook(),
        new WishAssessor(tables)
            .answers(computed.job(), computed.assessments(), computed.outlook()),
        wording);
  }

  /**
   * What is computed before any wish is asked for.
   *
   * @param reading a job without errors
   */
  static Composition withoutWishes(Reading reading, Tables tables, Wording wording) {
    Job job = CableNames.in(wording, reading.job().orElseThrow());
    Assessments assessments = new Assessor(tables).assess(job);
    Outlook outlook = new OutlookAssessor(tables).assess(job, assessments);
    return new Composition(job, reading.findings(), assessments, outlook, List.of(), wording);
  }
}
