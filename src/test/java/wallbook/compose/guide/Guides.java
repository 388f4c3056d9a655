package wallbook.compose.guide;

import java.util.List;
import java.util.Locale;
import wallbook.AllWords;
import wallbook.Jobs;
import wallbook.assess.Assessments;
import wallbook.assess.Assessor;
import wallbook.assess.outlook.Outlook;
import wallbook.assess.outlook.OutlookAssessor;
import wallbook.assess.outlook.WishAssessor;
import wallbook.compose.Composition;
import wallbook.record.Job;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

/** Everything computed of a job, as documents are composed from it, for tests. */
public final class Guides {
  private static final Assessor ASSESSOR = new Assessor(Jobs.TABLES);
  private static final OutlookAssessor OUTLOOKS = new OutlookAssessor(Jobs.TABLES);
  private static final WishAssessor WISHES = new WishAssessor(Jobs.TABLES);

  private Guides() {}

  /** In English, feet and inches. */
  public static Composition of(Job job) {
    return of(job, new Wording(Locale.US, AllWords.ENGLISH, UnitSystem.FEET_AND_INCHES));
  }

  public static Composition of(Job job, Wording wording) {
    Assessments assessments = ASSESSOR.assess(job);
    Outlook outlook = OUTLOOKS.assess(job, assessments);
    return new Composition(
        job, List.of(), assessments, outlook, WISHES.answers(job, assessments, outlook), wording);
  }
}
