package wallbook.cli;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import wallbook.assess.Assessments;
import wallbook.assess.Assessor;
import wallbook.assess.outlook.Outlook;
import wallbook.assess.outlook.OutlookAssessor;
import wallbook.assess.outlook.WishAnswer;
import wallbook.assess.outlook.WishAssessor;
import wallbook.compose.CableNames;
import wallbook.compose.Composition;
import wallbook.record.Job;
import wallbook.record.Run;
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
    Job job = job(reading, wording);
    Assessments assessments = new Assessor(tables).assess(job);
    Outlook outlook = new OutlookAssessor(tables).assess(job, assessments);
    List<WishAnswer> wishes = new WishAssessor(tables).answers(job, assessments, outlook);
    return new Composition(job, reading.findings(), assessments, outlook, wishes, wording);
  }

  /**
   * What a later use may rest on in some media, and nothing else.
   *
   * @param reading a job without errors
   * @param media by the first word of their topics
   */
  static Composition ofMedia(
      Reading reading, Tables tables, Wording wording, Function<Job, Set<String>> media) {
    Job job = job(reading, wording);
    Assessments assessments = new Assessor(tables).assessForUse(job, media.apply(job));
    Outlook outlook = new OutlookAssessor(tables).assess(job, assessments);
    return new Composition(job, reading.findings(), assessments, outlook, List.of(), wording);
  }

  /**
   * What is computed of one run and nothing else.
   *
   * @param reading a job without errors
   * @param run the run asked about; nothing is computed if there is none
   */
  static Composition ofRun(
      Reading reading, Tables tables, Wording wording, Function<Job, Optional<Run>> run) {
    Job job = job(reading, wording);
    Optional<Run> asked = run.apply(job);
    Assessments assessments =
        asked.map(r -> new Assessor(tables).assess(job, r)).orElse(new Assessments(List.of()));
    Outlook outlook =
        asked
            .map(r -> new OutlookAssessor(tables).assess(job, assessments, r))
            .orElse(Outlook.EMPTY);
    return new Composition(job, reading.findings(), assessments, outlook, List.of(), wording);
  }

  private static Job job(Reading reading, Wording wording) {
    return CableNames.in(wording, reading.job().orElseThrow());
  }
}
